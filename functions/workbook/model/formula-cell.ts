import type { CompiledFormula } from '../formula/compiled-formula.ts';
import type { Sheet } from './sheet.ts';
import type { CellValue, Matrix } from './values.ts';

/** Why a formula is left alone: its cell keeps the value it was saved with. */
export interface KeptReason {
  readonly kind: 'unknown-function' | 'unreadable' | 'other-workbook' | 'unsupported' | 'failure';
  readonly message: string;
}

/**
 * How a formula's array result is shown. `single`: an ordinary cell of a file; ranges are cut to the cell's own row or
 * column (implicit intersection) and of an array the first value shows. `fixed`: an array formula over a set of cells.
 * `spill`: the result takes the cells it needs, if they are free.
 */
export type ResultShape = 'single' | 'fixed' | 'spill';

/** Where a cell stands in the run under way. */
export type RunState = 'settled' | 'due' | 'open';

/** A cell that holds a formula, or a cell that shows a part of another cell's array result. */
export class FormulaCell {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly shape: ResultShape;
  /** Undefined for a cell that only shows a part of `anchor`'s result. */
  readonly compiled: CompiledFormula | undefined;
  readonly anchor: FormulaCell | undefined;
  /** The formula as text without the equals sign, made when asked for. */
  readonly text: () => string;
  /** Size of the area that shows the result. */
  height = 1;
  width = 1;
  kept: KeptReason | undefined;
  state: RunState = 'settled';
  /** Order of discovery and lowest order reachable, for finding cycles. */
  order = 0;
  lowest = 0;
  /** Larger than that of every cell it reads, wherever no cycle is in the way. */
  rank = 0;
  /** Whether something it reads has changed in the run under way. */
  isWanted = false;

  constructor(place: {
    sheet: Sheet;
    row: number;
    column: number;
    shape: ResultShape;
    compiled: CompiledFormula | undefined;
    anchor?: FormulaCell | undefined;
    text: () => string;
  }) {
    this.sheet = place.sheet;
    this.row = place.row;
    this.column = place.column;
    this.shape = place.shape;
    this.compiled = place.compiled;
    this.anchor = place.anchor;
    this.text = place.text;
    this.kept = place.compiled?.problem;
  }

  get value(): CellValue {
    return this.sheet.value(this.row, this.column);
  }
}

/** Value of a matrix at a place in the area that shows it: a single row or column repeats, beyond the edge is #N/A. */
export function shownPart(
  matrix: Matrix,
  row: number,
  column: number,
  beyond: CellValue,
): CellValue | undefined {
  const line = matrix[matrix.length === 1 ? 0 : row];
  if (line === undefined) return beyond;
  return line.length === 1 ? line[0] : column < line.length ? line[column] : beyond;
}

/** The cells that show a formula's result. */
export function* areaOf(cell: FormulaCell): Generator<{ row: number; column: number }> {
  for (let row = cell.row; row < cell.row + cell.height; row++) {
    for (let column = cell.column; column < cell.column + cell.width; column++) yield { row, column };
  }
}
