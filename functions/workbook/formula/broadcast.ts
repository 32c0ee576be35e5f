import type { Contents } from '../model/operand.ts';
import { isMatrix } from '../model/operand.ts';
import { shownPart } from '../model/result-area.ts';
import { requireTime } from '../model/time-allowance.ts';
import { requireArea } from '../model/too-large.ts';
import type { CellValue, Matrix } from '../model/values.ts';
import { notAvailable } from '../model/values.ts';

/** Value at a place of contents stretched over a larger area; beyond a matrix that is too small it is #N/A. */
export function stretchedValue(contents: Contents, row: number, column: number): CellValue {
  if (!isMatrix(contents)) return contents;
  return shownPart(contents, row, column, notAvailable) ?? null;
}

/** Size of the area that several contents stretch over. */
export function stretchedSize(all: readonly (Contents | undefined)[]): { rows: number; columns: number } {
  let rows = 1;
  let columns = 1;
  for (const contents of all) {
    if (contents === undefined || !isMatrix(contents)) continue;
    rows = Math.max(rows, contents.length);
    columns = Math.max(columns, contents[0]?.length ?? 1);
  }
  return { rows, columns };
}

/** Matrix of a size, filled by a function of the place. */
export function buildMatrix(
  rows: number,
  columns: number,
  at: (row: number, column: number) => CellValue,
): Matrix {
  requireArea(rows, columns);
  const matrix: Matrix = [];
  for (let row = 0; row < rows; row++) {
    const line: CellValue[] = [];
    // Each place may be a search through a million cells; asking for every one would cost plain sums a tenth.
    if ((row & 15) === 0) requireTime();
    for (let column = 0; column < columns; column++) {
      if ((column & 15) === 15) requireTime();
      line.push(at(row, column));
    }
    matrix.push(line);
  }
  return matrix;
}

/** One operation on two contents, value by value when either is a matrix. */
export function combine(
  left: Contents,
  right: Contents,
  operation: (left: CellValue, right: CellValue) => CellValue,
): Contents {
  if (!isMatrix(left) && !isMatrix(right)) return operation(left, right);
  const { rows, columns } = stretchedSize([left, right]);
  return buildMatrix(rows, columns, (row, column) =>
    operation(stretchedValue(left, row, column), stretchedValue(right, row, column)),
  );
}

/** One operation on contents, value by value. */
export function mapContents(contents: Contents, operation: (value: CellValue) => CellValue): Contents {
  return isMatrix(contents) ? contents.map((line) => line.map(operation)) : operation(contents);
}
