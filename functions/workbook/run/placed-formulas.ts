import type { Place, Surroundings } from '../formula/compiled-formula.ts';
import { areaOf } from '../model/result-area.ts';
import type { Sheet } from '../model/sheet.ts';
import type { CellValue } from '../model/values.ts';
import { nameError } from '../model/values.ts';
import { Dependants } from './dependants.ts';
import { RunCell, runSheet } from './run-cell.ts';
import type { PlaceOfCell, RunSheet } from './run-cell.ts';
import type { RunState } from './run-state.ts';

/** Puts formulas into cells and takes them out, and keeps what runs know of them in step. */
export class PlacedFormulas {
  readonly #sheets: readonly RunSheet[];
  readonly #state: RunState;
  readonly #surroundings: Surroundings;

  constructor(sheets: readonly RunSheet[], state: RunState, surroundings: Surroundings) {
    this.#sheets = sheets;
    this.#state = state;
    this.#surroundings = surroundings;
  }

  /** Puts a compiled formula into a cell and marks the cells that will show parts of its result. */
  put(place: PlaceOfCell, options: { height?: number; width?: number; saved?: CellValue }): RunCell {
    const { sheet, row, column } = place;
    this.clear(sheet, row, column);
    const cell = new RunCell(place);
    runSheet(sheet).storeFormula(row, column, cell);
    this.#state.ranksHold = false;
    if (cell.kept !== undefined) {
      sheet.store(row, column, options.saved === undefined ? nameError : options.saved);
    } else {
      if (options.saved !== undefined) sheet.store(row, column, options.saved);
      if (cell.compiled?.isVolatile === true) this.#state.volatileCells.add(cell);
      this.resizeArea(cell, options.height ?? 1, options.width ?? 1);
    }
    this.#state.dependants?.add(cell, this.#placeAt(cell));
    this.note(sheet, row, column);
    return cell;
  }

  /** Takes the formula out of a cell, if there is one. */
  clear(sheet: Sheet, row: number, column: number): void {
    const old = runSheet(sheet).formula(row, column);
    if (old === undefined) return;
    sheet.storeFormula(row, column, undefined);
    this.#state.ranksHold = false;
    this.#state.volatileCells.delete(old);
    this.#state.cycleCells.delete(old);
    const source = old.anchor ?? old;
    if (source !== old) this.note(sheet, source.row, source.column);
    if (source === old || source.shape === 'spill') {
      // The result has to find its cells anew, or has gone; either way the cells it filled change.
      for (const cell of areaOf(source)) this.note(sheet, cell.row, cell.column);
      this.resizeArea(source, 1, 1);
    }
  }

  /** Changes the cells that show parts of an array result. */
  resizeArea(cell: RunCell, height: number, width: number): void {
    const { sheet } = cell;
    for (const { row, column } of areaOf(cell)) {
      if (row === cell.row && column === cell.column) continue;
      if (row - cell.row < height && column - cell.column < width) continue;
      if (sheet.formula(row, column)?.anchor !== cell) continue;
      sheet.storeFormula(row, column, undefined);
      sheet.store(row, column, null);
    }
    cell.height = height;
    cell.width = width;
    for (const { row, column } of areaOf(cell)) {
      if (row === cell.row && column === cell.column) continue;
      if (sheet.formula(row, column)?.anchor === cell) continue;
      const { shape, text } = cell;
      const member = new RunCell({ sheet, row, column, shape, compiled: undefined, anchor: cell, text });
      sheet.storeFormula(row, column, member);
      this.#state.dependants?.add(member, this.#placeAt(member));
    }
  }

  /** Notes a cell as changed since the last run. */
  note(sheet: Sheet, row: number, column: number): void {
    this.#state.changed?.push({ sheet, row, column });
  }

  /** Which formulas read a cell: found out when first asked for, kept in step afterwards. */
  get dependants(): Dependants {
    let { dependants } = this.#state;
    if (dependants === undefined) {
      dependants = new Dependants();
      for (const sheet of this.#sheets) {
        for (const cell of sheet.formulaCells()) dependants.add(cell, this.#placeAt(cell));
      }
      this.#state.dependants = dependants;
    }
    return dependants;
  }

  #placeAt(cell: RunCell): Place {
    const { sheet, row, column } = cell;
    return { workbook: this.#surroundings, sheet, row, column, variables: [] };
  }
}
