import type { CustomFunctions } from '../model/custom-functions.ts';
import { noCustomFunctions } from '../model/custom-functions.ts';
import type { CompiledFormula, Place } from '../formula/compiled-formula.ts';
import { compileFormula } from '../compile/compile.ts';
import { relativeKey } from '../formula/relative-key.ts';
import type { ResultShape } from '../model/formula-cell.ts';
import { areaOf, FormulaCell } from '../model/formula-cell.ts';
import type { DueCells } from './due-cells.ts';
import { Dependants } from './dependants.ts';
import { LookupCaches } from '../functions/lookup-caches.ts';
import { NotSettled } from './not-settled.ts';
import type { RunReport } from './run.ts';
import { runWorkbook } from './run.ts';
import type { Reference } from '../model/reference.ts';
import type { DateSystem } from '../model/serial-date.ts';
import { Sheet } from '../model/sheet.ts';
import type { Table } from '../model/table.ts';
import { nameError, sameValue } from '../model/values.ts';
import type { CellValue } from '../model/values.ts';

export interface WorkbookOptions {
  readonly customFunctions?: CustomFunctions | undefined;
  readonly dateSystem?: DateSystem | undefined;
  /** The present moment for TODAY and NOW. */
  readonly now?: (() => Date) | undefined;
  /** Chance between 0 and 1 for RAND and RANDBETWEEN. */
  readonly random?: (() => number) | undefined;
}

/** A workbook in memory: values, formulas, names and tables, and the means to keep the formulas' values right. */
export class Workbook {
  readonly sheets: Sheet[] = [];
  readonly customFunctions: CustomFunctions;
  readonly dateSystem: DateSystem;
  readonly now: () => Date;
  readonly random: () => number;
  /** Indexes over columns; they live as long as one run. */
  readonly caches = new LookupCaches();
  /** The cells a run has still to work out, while one is under way. */
  due: Pick<DueCells, 'hasAny'> | undefined;
  /** Formulas to be worked out in every run. */
  readonly volatileCells = new Set<FormulaCell>();
  /** Cells found to wait for each other, since each of them was last worked out. */
  readonly cycleCells = new Set<FormulaCell>();
  /** Whether every formula is ranked above those it reads, so that changes can be followed from one to the next. */
  ranksHold = false;
  nextRank = 1;
  /** Cells changed since the last run; undefined when everything is to be worked out. */
  changed: { sheet: Sheet; row: number; column: number }[] | undefined;
  readonly #sheetsByName = new Map<string, Sheet>();
  readonly #tables = new Map<string, Table>();
  readonly #names = new Map<string, string>();
  readonly #compiledNames = new Map<string, CompiledFormula | undefined>();
  readonly #compiled = new Map<string, CompiledFormula>();
  #dependants: Dependants | undefined;

  constructor(options: WorkbookOptions = {}) {
    this.customFunctions = options.customFunctions ?? noCustomFunctions;
    this.dateSystem = options.dateSystem ?? 1900;
    this.now = options.now ?? (() => new Date());
    this.random = options.random ?? Math.random;
  }

  addSheet(name: string): Sheet {
    const sheet = new Sheet(name, this.sheets.length);
    this.sheets.push(sheet);
    this.#sheetsByName.set(name.toLowerCase(), sheet);
    return sheet;
  }

  findSheet(name: string): Sheet | undefined {
    return this.#sheetsByName.get(name.toLowerCase());
  }

  /** Adds a table. Tables and names come before the formulas that use them. */
  addTable(table: Table): void {
    this.#tables.set(table.name.toLowerCase(), table);
  }

  get tables(): Iterable<Table> {
    return this.#tables.values();
  }

  findTable(name: string): Table | undefined {
    return this.#tables.get(name.toLowerCase());
  }

  tableAt(sheet: Sheet, row: number, column: number): Table | undefined {
    for (const table of this.#tables.values()) if (table.contains(sheet, row, column)) return table;
    return undefined;
  }

  /** Gives a formula a name, for the whole workbook or for one sheet. */
  defineName(name: string, formula: string, scope?: Sheet): void {
    this.#names.set(nameKey(name, scope), formula);
  }

  /** Names with their formulas; the sheet is that of a name valid on one sheet only. */
  *names(): Generator<{ name: string; formula: string; sheet: Sheet | undefined }> {
    for (const [key, formula] of this.#names) {
      const [scope = '', name = ''] = key.split('\u0000');
      yield { name, formula, sheet: scope === '' ? undefined : this.sheets[Number(scope)] };
    }
  }

  /** The formula behind a name as seen from a sheet, ready to be worked out. */
  compiledName(name: string, sheet: Sheet): CompiledFormula | undefined {
    const local = nameKey(name, sheet);
    const key = this.#names.has(local) ? local : nameKey(name, undefined);
    const formula = this.#names.get(key);
    if (formula === undefined) return undefined;
    const cacheKey = `${key}\u0000${sheet.index}`;
    const known = this.#compiledNames.get(cacheKey);
    if (known !== undefined) return known;
    // A name that leads back to itself finds this stopgap.
    const stopgap: CompiledFormula = {
      evaluate: () => nameError,
      reads: [],
      isVolatile: false,
      problem: undefined,
    };
    this.#compiledNames.set(cacheKey, stopgap);
    const compiled = compileFormula(formula, { workbook: this, sheet, row: 0, column: 0, whole: true });
    this.#compiledNames.set(cacheKey, compiled);
    return compiled;
  }

  /** Compiles a formula for a cell; cells that spell it alike relative to themselves share the work. */
  compile(formula: string, sheet: Sheet, row: number, column: number, whole: boolean): CompiledFormula {
    const table = formula.includes('[') ? (this.tableAt(sheet, row, column)?.name ?? '') : '';
    const key = `${sheet.index}${whole ? 'w' : 's'}${table}\u0000${relativeKey(formula, row, column)}`;
    let compiled = this.#compiled.get(key);
    if (compiled === undefined) {
      compiled = compileFormula(formula, { workbook: this, sheet, row, column, whole });
      this.#compiled.set(key, compiled);
    }
    return compiled;
  }

  /** Puts a value into a cell, in place of whatever was there. */
  setValue(sheet: Sheet, row: number, column: number, value: CellValue): void {
    if (sheet.formula(row, column) === undefined && sameValue(sheet.value(row, column), value)) return;
    this.#clear(sheet, row, column);
    sheet.store(row, column, value);
    this.#note(sheet, row, column);
  }

  /**
   * Puts a formula into a cell, with or without its equals sign. `saved` is the value to keep should the formula turn out
   * to be one this host cannot work out.
   */
  setFormula(
    sheet: Sheet,
    row: number,
    column: number,
    formula: string,
    options: { shape?: ResultShape; height?: number; width?: number; saved?: CellValue } = {},
  ): FormulaCell {
    const shape = options.shape ?? 'single';
    const compiled = this.compile(formula, sheet, row, column, shape !== 'single');
    return this.placeFormula({ sheet, row, column, shape, compiled, text: () => formula }, options);
  }

  /** Puts a compiled formula into a cell and marks the cells that will show parts of its result. */
  placeFormula(
    place: ConstructorParameters<typeof FormulaCell>[0],
    options: { height?: number; width?: number; saved?: CellValue } = {},
  ): FormulaCell {
    const { sheet, row, column } = place;
    this.#clear(sheet, row, column);
    const cell = new FormulaCell(place);
    sheet.storeFormula(row, column, cell);
    this.ranksHold = false;
    if (cell.kept !== undefined) {
      sheet.store(row, column, options.saved === undefined ? nameError : options.saved);
    } else {
      if (options.saved !== undefined) sheet.store(row, column, options.saved);
      if (cell.compiled?.isVolatile === true) this.volatileCells.add(cell);
      this.resizeArea(cell, options.height ?? 1, options.width ?? 1);
    }
    if (this.#dependants !== undefined) this.#dependants.add(cell, this.placeAt(cell));
    this.#note(sheet, row, column);
    return cell;
  }

  /** Changes the cells that show parts of an array result. */
  resizeArea(cell: FormulaCell, height: number, width: number): void {
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
      const member = new FormulaCell({
        sheet,
        row,
        column,
        shape: cell.shape,
        compiled: undefined,
        anchor: cell,
        text: cell.text,
      });
      sheet.storeFormula(row, column, member);
      if (this.#dependants !== undefined) this.#dependants.add(member, this.placeAt(member));
    }
  }

  /** Works out what has to be: everything the first time, afterwards what depends on changed cells, the clock or chance. */
  recalculate(options: { everything?: boolean } = {}): RunReport {
    if (options.everything === true) this.changed = undefined;
    const report = runWorkbook(this);
    this.changed = [];
    return report;
  }

  get dependants(): Dependants {
    if (this.#dependants === undefined) {
      const dependants = new Dependants();
      for (const sheet of this.sheets) {
        for (const cell of sheet.formulaCells()) dependants.add(cell, this.placeAt(cell));
      }
      this.#dependants = dependants;
    }
    return this.#dependants;
  }

  /** Makes sure that a range found while working out a formula is settled; otherwise the formula has to wait. */
  requireSettled(reference: Reference): void {
    if (this.due?.hasAny(reference) === true) throw new NotSettled(reference);
  }

  /** One more than the last row and column in use on any sheet. */
  get rowCount(): number {
    let count = 1;
    for (const sheet of this.sheets) count = Math.max(count, sheet.rowCount);
    return count;
  }

  get columnCount(): number {
    let count = 1;
    for (const sheet of this.sheets) count = Math.max(count, sheet.columnCount);
    return count;
  }

  placeAt(cell: FormulaCell): Place {
    return { workbook: this, sheet: cell.sheet, row: cell.row, column: cell.column, variables: [] };
  }

  #clear(sheet: Sheet, row: number, column: number): void {
    const old = sheet.formula(row, column);
    if (old === undefined) return;
    sheet.storeFormula(row, column, undefined);
    this.ranksHold = false;
    this.volatileCells.delete(old);
    this.cycleCells.delete(old);
    const source = old.anchor ?? old;
    if (source !== old) this.#note(sheet, source.row, source.column);
    if (source === old || source.shape === 'spill') {
      // The result has to find its cells anew, or has gone; either way the cells it filled change.
      for (const cell of areaOf(source)) this.#note(sheet, cell.row, cell.column);
      this.resizeArea(source, 1, 1);
    }
  }

  #note(sheet: Sheet, row: number, column: number): void {
    this.changed?.push({ sheet, row, column });
  }
}

function nameKey(name: string, scope: Sheet | undefined): string {
  return `${scope === undefined ? '' : String(scope.index)}\u0000${name.toLowerCase()}`;
}
