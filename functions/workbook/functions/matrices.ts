import { buildMatrix } from '../formula/broadcast.ts';
import type { Operand } from '../model/operand.ts';
import { requireTime } from '../model/time-allowance.ts';
import type { Matrix } from '../model/values.ts';
import { CellError, numberError, valueError } from '../model/values.ts';
import { numbersIn } from './numbers-in.ts';
import { placed, pure } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/** Rows of numbers, or undefined when anything else is among them. */
function numeric(matrix: Matrix): number[][] | undefined {
  return matrix.every((line) => line.every((value) => typeof value === 'number')) ? matrix : undefined;
}

function product(left: Matrix, right: Matrix): Operand {
  const first = numeric(left);
  const second = numeric(right);
  if (first === undefined || second === undefined || first[0]?.length !== second.length) return valueError;
  return buildMatrix(first.length, second[0]?.length ?? 0, (row, column) =>
    (first[row] ?? []).reduce((sum, value, index) => sum + value * (second[index]?.[column] ?? 0), 0),
  );
}

/** Gauss elimination with the largest pivot; works on `rows` and whatever stands beside the square in them. */
function eliminate(rows: number[][]): number {
  const size = rows.length;
  let determinant = 1;
  for (let pivot = 0; pivot < size; pivot++) {
    requireTime();
    let best = pivot;
    for (let row = pivot + 1; row < size; row++) {
      if (Math.abs(rows[row]?.[pivot] ?? 0) > Math.abs(rows[best]?.[pivot] ?? 0)) best = row;
    }
    const line = rows[best] as number[];
    const head = line[pivot] as number;
    if (head === 0) return 0;
    if (best !== pivot) {
      rows[best] = rows[pivot] as number[];
      rows[pivot] = line;
      determinant = -determinant;
    }
    determinant *= head;
    for (let row = 0; row < size; row++) {
      const other = rows[row] as number[];
      const factor = row === pivot ? 0 : (other[pivot] as number) / head;
      if (factor === 0) continue;
      for (let column = pivot; column < other.length; column++) {
        other[column] = (other[column] as number) - factor * (line[column] as number);
      }
    }
  }
  return determinant;
}

function determinant(matrix: Matrix): Operand {
  const rows = numeric(matrix);
  if (rows?.length !== rows?.[0]?.length || rows === undefined) return valueError;
  return eliminate(rows.map((line) => [...line]));
}

function inverse(matrix: Matrix): Operand {
  const rows = numeric(matrix);
  if (rows?.length !== rows?.[0]?.length || rows === undefined) return valueError;
  const size = rows.length;
  const beside = rows.map((line, row) => [
    ...line,
    ...Array.from({ length: size }, (_, column) => (row === column ? 1 : 0)),
  ]);
  if (eliminate(beside) === 0) return numberError;
  return beside.map((line, row) => line.slice(size).map((value) => value / (line[row] as number)));
}

/** How many numbers fall up to each bound, and how many lie above the last. */
function frequency(numbers: readonly number[], bounds: readonly number[]): Matrix {
  const order = bounds
    .map((bound, index) => ({ bound, index }))
    .sort((one, other) => one.bound - other.bound);
  const counts = new Array<number>(bounds.length + 1).fill(0);
  for (const value of numbers) {
    // The first bound that is not below the value.
    let low = 0;
    let high = order.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((order[middle]?.bound ?? 0) < value) low = middle + 1;
      else high = middle;
    }
    const place = order[low]?.index ?? bounds.length;
    counts[place] = (counts[place] ?? 0) + 1;
  }
  return counts.map((count) => [count]);
}

/** Matrix algebra and counting by classes. */
export const matrixFunctions: FunctionTable = {
  MMULT: pure(['array', 'array'], product),
  MDETERM: pure(['array'], determinant),
  MINVERSE: pure(['array'], inverse),
  FREQUENCY: placed(['operand', 'operand'], (place, values, bounds) => {
    const system = place.workbook.dateSystem;
    const numbers = numbersIn([values], system);
    if (numbers instanceof CellError) return numbers;
    const classes = numbersIn([bounds], system);
    return classes instanceof CellError ? classes : frequency(numbers, classes);
  }),
};
