import type { AstExpression } from '@borgar/fx/xlsx';
import type { Sheet } from '../model/sheet.ts';
import type { Book } from '../model/book.ts';
import type { CustomFunctions } from '../model/custom-functions.ts';
import type { CompiledFormula, Evaluate, ReferencePattern } from '../formula/compiled-formula.ts';

/** An argument of a call, or undefined where it was left out between two commas. */
export type Argument = AstExpression | null | undefined;

/** What the names, sheets and functions in a formula mean. */
export interface Meanings extends Pick<Book, 'dateSystem' | 'findSheet' | 'findTable' | 'tableAt'> {
  readonly customFunctions: CustomFunctions;
  /** The formula behind a name as seen from a sheet, ready to be worked out. */
  compiledName(name: string, sheet: Sheet): CompiledFormula | undefined;
}

/** What is gathered while one formula is compiled. */
export interface Compilation {
  readonly workbook: Meanings;
  /** The cell whose spelling of the formula is being read. */
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly reads: ReferencePattern[];
  /** Slots of the LET names and LAMBDA parameters visible here, by lower-case name. */
  names: ReadonlyMap<string, number>;
  slotCount: number;
  isVolatile: boolean;
  /** Defined names met so far, those behind other names included. */
  nameSteps: number;
}

/** How parts of a formula are compiled; handed to the special forms so that they can compile their own arguments. */
export interface Compiler {
  readonly compilation: Compilation;
  /** Leaves references as references. */
  operand(node: Argument, whole: boolean): Evaluate;
  /** Reads references: `whole` gives a range as a matrix, otherwise it is cut to the formula's own row or column. */
  contents(node: Argument, whole: boolean): Evaluate;
}
