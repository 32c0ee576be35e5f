import type { CompiledFormula } from '../formula/compiled-formula.ts';
import { relativeKey } from '../formula/relative-key.ts';
import type { Book } from '../model/book.ts';
import type { CustomFunctions } from '../model/custom-functions.ts';
import type { Sheet } from '../model/sheet.ts';
import { nameError } from '../model/values.ts';
import type { Meanings } from './compilation.ts';
import { compileFormula } from './compile.ts';

/** Compiles the formulas and names of one workbook, each spelling once. */
export class FormulaCompiler {
  readonly #book: Book;
  readonly #meanings: Meanings;
  readonly #names = new Map<string, CompiledFormula>();
  readonly #formulas = new Map<string, CompiledFormula>();

  constructor(book: Book, customFunctions: CustomFunctions) {
    this.#book = book;
    this.#meanings = {
      customFunctions,
      dateSystem: book.dateSystem,
      findSheet: (name) => book.findSheet(name),
      findTable: (name) => book.findTable(name),
      tableAt: (sheet, row, column) => book.tableAt(sheet, row, column),
      compiledName: (name, sheet) => this.compiledName(name, sheet),
    };
  }

  /** The formula behind a name as seen from a sheet, ready to be worked out. */
  compiledName(name: string, sheet: Sheet): CompiledFormula | undefined {
    const named = this.#book.formulaOfName(name, sheet);
    if (named === undefined) return undefined;
    const key = `${named.key}\u0000${sheet.index}`;
    const known = this.#names.get(key);
    if (known !== undefined) return known;
    // A name that leads back to itself finds this stopgap.
    this.#names.set(key, {
      evaluate: () => nameError,
      reads: [],
      isVolatile: false,
      problem: undefined,
    });
    const compiled = compileFormula(named.formula, {
      workbook: this.#meanings,
      sheet,
      row: 0,
      column: 0,
      whole: true,
    });
    this.#names.set(key, compiled);
    return compiled;
  }

  /** Compiles a formula for a cell; cells that spell it alike relative to themselves share the work. */
  compile(formula: string, sheet: Sheet, row: number, column: number, whole: boolean): CompiledFormula {
    const table = formula.includes('[') ? (this.#book.tableAt(sheet, row, column)?.name ?? '') : '';
    const key = `${sheet.index}${whole ? 'w' : 's'}${table}\u0000${relativeKey(formula, row, column)}`;
    let compiled = this.#formulas.get(key);
    if (compiled === undefined) {
      compiled = compileFormula(formula, { workbook: this.#meanings, sheet, row, column, whole });
      this.#formulas.set(key, compiled);
    }
    return compiled;
  }
}
