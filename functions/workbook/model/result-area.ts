import type { CellValue, Matrix } from './values.ts';

/**
 * How a formula's array result is shown. `single`: an ordinary cell of a file; ranges are cut to the cell's own row or
 * column (implicit intersection) and of an array the first value shows. `fixed`: an array formula over a set of cells.
 * `spill`: the result takes the cells it needs, if they are free.
 */
export type ResultShape = 'single' | 'fixed' | 'spill';

/** Where a formula stands and how many cells its result takes. */
interface ResultArea {
  readonly row: number;
  readonly column: number;
  readonly height: number;
  readonly width: number;
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
export function* areaOf(cell: ResultArea): Generator<{ row: number; column: number }> {
  for (let row = cell.row; row < cell.row + cell.height; row++) {
    for (let column = cell.column; column < cell.column + cell.width; column++) yield { row, column };
  }
}
