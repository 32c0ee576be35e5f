import { FormulaCompiler } from '../compile/formula-compiler.ts';
import type { CompiledFormula, Surroundings } from '../formula/compiled-formula.ts';
import type { LookupCaches } from '../lookup/lookup-caches.ts';
import { Book } from '../model/book.ts';
import type { CustomFunctions } from '../model/custom-functions.ts';
import { noCustomFunctions } from '../model/custom-functions.ts';
import type { Reference } from '../model/reference.ts';
import type { ResultShape } from '../model/result-area.ts';
import type { DateSystem } from '../model/serial-date.ts';
import type { FormulaCell, Sheet } from '../model/sheet.ts';
import { sameValue } from '../model/values.ts';
import type { CellValue } from '../model/values.ts';
import { NotSettled } from './not-settled.ts';
import { PlacedFormulas } from './placed-formulas.ts';
import type { PlaceOfCell, RunCell } from './run-cell.ts';
import { RunState } from './run-state.ts';
import type { RunReport } from './run.ts';
import { runWorkbook } from './run.ts';

export interface WorkbookOptions {
  readonly customFunctions?: CustomFunctions | undefined;
  readonly dateSystem?: DateSystem | undefined;
  /** The present moment for TODAY and NOW. */
  readonly now?: (() => Date) | undefined;
  /** Chance between 0 and 1 for RAND and RANDBETWEEN. */
  readonly random?: (() => number) | undefined;
}

/** A workbook in memory: values, formulas, names and tables, and the means to keep the formulas' values right. */
export class Workbook extends Book<RunCell> implements Surroundings {
  readonly customFunctions: CustomFunctions;
  readonly now: () => Date;
  readonly random: () => number;
  readonly #state = new RunState();
  readonly #compiler: FormulaCompiler;
  readonly #formulas: PlacedFormulas;

  constructor(options: WorkbookOptions = {}) {
    super(options.dateSystem ?? 1900);
    this.customFunctions = options.customFunctions ?? noCustomFunctions;
    this.now = options.now ?? (() => new Date());
    this.random = options.random ?? Math.random;
    this.#compiler = new FormulaCompiler(this, this.customFunctions);
    this.#formulas = new PlacedFormulas(this.sheets, this.#state, this);
  }

  get caches(): LookupCaches {
    return this.#state.caches;
  }

  /** Compiles a formula for a cell; cells that spell it alike relative to themselves share the work. */
  compile(formula: string, sheet: Sheet, row: number, column: number, whole: boolean): CompiledFormula {
    return this.#compiler.compile(formula, sheet, row, column, whole);
  }

  /** The formula behind a name as seen from a sheet, ready to be worked out. */
  compiledName(name: string, sheet: Sheet): CompiledFormula | undefined {
    return this.#compiler.compiledName(name, sheet);
  }

  /** Puts a value into a cell, in place of whatever was there. */
  setValue(sheet: Sheet, row: number, column: number, value: CellValue): void {
    if (sheet.formula(row, column) === undefined && sameValue(sheet.value(row, column), value)) return;
    this.#formulas.clear(sheet, row, column);
    sheet.store(row, column, value);
    this.#formulas.note(sheet, row, column);
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
    place: PlaceOfCell,
    options: { height?: number; width?: number; saved?: CellValue } = {},
  ): FormulaCell {
    return this.#formulas.put(place, options);
  }

  /** Works out what has to be: everything the first time, afterwards what depends on changed cells, the clock or chance. */
  recalculate(options: { everything?: boolean } = {}): RunReport {
    if (options.everything === true) this.#state.changed = undefined;
    const report = runWorkbook({
      sheets: this.sheets,
      state: this.#state,
      formulas: this.#formulas,
      surroundings: this,
    });
    this.#state.changed = [];
    return report;
  }

  /** Whether any formula reads a cell. */
  isRead(sheet: Sheet, row: number, column: number): boolean {
    const { dependants } = this.#formulas;
    let found = false;
    dependants.beginSurvey();
    dependants.visit(sheet, row, column, () => {
      found = true;
    });
    return found;
  }

  requireSettled(reference: Reference): void {
    if (this.#state.due?.hasAny(reference) === true) throw new NotSettled(reference);
  }
}
