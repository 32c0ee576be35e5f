import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { cellAddress } from '../model/address.ts';
import type { CompiledFormula } from '../formula/compiled-formula.ts';
import type { KeptReason } from '../model/kept-reason.ts';
import type { ResultShape } from '../model/result-area.ts';
import type { FormulaCell, Sheet } from '../model/sheet.ts';
import { nameError } from '../model/values.ts';
import type { CellValue } from '../model/values.ts';
import type { Workbook } from '../run/workbook.ts';
import type { CellEntry, FormulaEntry } from './sheet-part.ts';

interface SharedFormula {
  readonly text: string;
  readonly row: number;
  readonly column: number;
  readonly compiled: CompiledFormula;
}

/** What the array formulas of a workbook may claim together. */
export interface ArrayBudget {
  cells: number;
}

/** Cells that array formulas of a file may claim in all; those beyond are kept as they were saved. */
export const arrayCellLimit = 1_000_000;

/** Puts the formulas of one sheet into the workbook as they are met in the file. */
export class FormulaLoader {
  readonly #workbook: Workbook;
  readonly #sheet: Sheet;
  readonly #shared = new Map<string, SharedFormula>();
  readonly #arrays: FormulaCell[] = [];
  readonly #budget: ArrayBudget;

  constructor(workbook: Workbook, sheet: Sheet, budget: ArrayBudget) {
    this.#budget = budget;
    this.#workbook = workbook;
    this.#sheet = sheet;
  }

  add(cell: CellEntry, formula: FormulaEntry, saved: CellValue): void {
    const { row, column } = cell;
    const workbook = this.#workbook;
    const sheet = this.#sheet;
    if (formula.kind === 'dataTable') {
      this.#keep(cell, 'a what-if table', saved, {
        kind: 'unsupported',
        message: 'what-if tables are not worked out by this host',
      });
      return;
    }
    if (formula.kind === 'shared' && formula.text === '') {
      this.#addShared(cell, formula, saved);
      return;
    }
    if (formula.kind !== 'array') {
      const compiled = workbook.compile(formula.text, sheet, row, column, false);
      const text = formula.text;
      if (formula.kind === 'shared' && formula.sharedIndex !== undefined) {
        this.#shared.set(formula.sharedIndex, { text, row, column, compiled });
      }
      workbook.placeFormula({ sheet, row, column, shape: 'single', compiled, text: () => text }, { saved });
      return;
    }
    const area = formula.area ?? { top: row, left: column, bottom: row, right: column };
    const height = area.bottom - row + 1;
    const width = area.right - column + 1;
    if (height < 1 || width < 1 || height * width > this.#budget.cells) {
      this.#keep(cell, formula.text, saved, {
        kind: 'unsupported',
        message:
          'the area of the array formula does not start at its cell, or is too large together with those before it',
      });
      return;
    }
    this.#budget.cells -= height * width;
    const shape: ResultShape = cell.isDynamic ? 'spill' : 'fixed';
    const anchor = workbook.setFormula(sheet, row, column, formula.text, { shape, height, width, saved });
    if (anchor.kept === undefined && height * width > 1) this.#arrays.push(anchor);
  }

  /** Whether a cell without a formula shows a part of an array formula's result. */
  isShown(row: number, column: number): boolean {
    return this.#arrays.length > 0 && this.#sheet.formula(row, column)?.anchor !== undefined;
  }

  #addShared(cell: CellEntry, formula: FormulaEntry, saved: CellValue): void {
    const { row, column } = cell;
    const shared = this.#shared.get(formula.sharedIndex ?? '');
    if (shared === undefined) {
      this.#keep(cell, '', saved, {
        kind: 'unreadable',
        message: 'the formula is shared with a cell that the file does not hold',
      });
      return;
    }
    this.#workbook.placeFormula(
      {
        sheet: this.#sheet,
        row,
        column,
        shape: 'single',
        compiled: shared.compiled,
        text: () => translated(shared, row, column),
      },
      { saved },
    );
  }

  #keep(cell: CellEntry, text: string, saved: CellValue, problem: KeptReason): void {
    const compiled: CompiledFormula = {
      evaluate: () => nameError,
      reads: [],
      isVolatile: false,
      problem,
    };
    this.#workbook.placeFormula(
      { sheet: this.#sheet, row: cell.row, column: cell.column, shape: 'single', compiled, text: () => text },
      { saved },
    );
  }
}

/** A shared formula as the given cell would spell it. */
function translated(shared: SharedFormula, row: number, column: number): string {
  const relative = translateFormulaToR1C1(`=${shared.text}`, cellAddress(shared.row, shared.column));
  return translateFormulaToA1(relative, cellAddress(row, column)).slice(1);
}
