import { compareValues } from '../model/compare.ts';
import { buildMatrix } from '../formula/broadcast.ts';
import { readOperand } from '../formula/read-reference.ts';
import { toBoolean } from '../model/coerce.ts';
import type { Place } from '../formula/compiled-formula.ts';
import { isMatrix, LambdaValue } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import type { CellValue, Matrix } from '../model/values.ts';
import { CellError, emptyArrayError, notAvailable, numberError, valueError } from '../model/values.ts';
import { valueKey } from '../lookup/criteria.ts';
import { jointKey } from '../lookup/lookup-caches.ts';
import { placed, pure, repeated } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/** More cells than any sheet result sensibly has; asking for more is refused instead of exhausting memory. */
const cellLimit = 5_000_000;

function transpose(matrix: Matrix): Matrix {
  return buildMatrix(matrix[0]?.length ?? 0, matrix.length, (row, column) => matrix[column]?.[row] ?? null);
}

function filter(matrix: Matrix, keep: Matrix, absent: Operand): Operand {
  const truths = keep.flat().map(toBoolean);
  const failure = truths.find((truth) => truth instanceof CellError);
  if (failure !== undefined) return failure;
  const isDown = keep[0]?.length === 1 && keep.length === matrix.length;
  const isAcross = keep.length === 1 && keep[0]?.length === matrix[0]?.length;
  if (!isDown && !isAcross) return valueError;
  const kept = isDown
    ? matrix.filter((_, row) => truths[row] === true)
    : matrix.map((line) => line.filter((_, column) => truths[column] === true));
  if (kept.length > 0 && (kept[0]?.length ?? 0) > 0) return kept;
  return absent === undefined ? emptyArrayError : absent;
}

/** Order for sorting: numbers, texts, booleans, errors; blanks always last. */
function sortOrder(left: CellValue, right: CellValue, direction: number): number {
  if (left === null || right === null) return left === right ? 0 : left === null ? 1 : -1;
  const leftFails = left instanceof CellError;
  const rightFails = right instanceof CellError;
  if (leftFails || rightFails) return direction * (Number(leftFails) - Number(rightFails));
  return direction * compareValues(left, right);
}

interface SortKey {
  readonly at: (row: number) => CellValue;
  readonly direction: number;
}

function sortRows(matrix: Matrix, keys: readonly SortKey[]): Matrix {
  const order = matrix.map((_, row) => row);
  order.sort((one, other) => {
    for (const key of keys) {
      const result = sortOrder(key.at(one), key.at(other), key.direction);
      if (result !== 0) return result;
    }
    return one - other;
  });
  return order.map((row) => matrix[row] as CellValue[]);
}

function sort(
  matrix: Matrix,
  by: Matrix | undefined,
  orders: Matrix | undefined,
  byColumn?: boolean,
): Operand {
  const table = byColumn === true ? transpose(matrix) : matrix;
  const width = table[0]?.length ?? 0;
  const columns = (by ?? [[1]]).flat();
  const directions = (orders ?? [[1]]).flat();
  const keys: SortKey[] = [];
  for (const [position, column] of columns.entries()) {
    const direction = directions[position] ?? directions[0];
    if (typeof column !== 'number' || column < 1 || Math.trunc(column) > width) return valueError;
    if (direction !== 1 && direction !== -1) return valueError;
    const index = Math.trunc(column) - 1;
    keys.push({ at: (row) => table[row]?.[index] ?? null, direction });
  }
  const sorted = sortRows(table, keys);
  return byColumn === true ? transpose(sorted) : sorted;
}

function sortBy(matrix: Matrix, pairs: readonly Matrix[]): Operand {
  const keys: SortKey[] = [];
  for (let index = 0; index < pairs.length; index += 2) {
    const key = pairs[index] as Matrix;
    const direction = pairs[index + 1]?.[0]?.[0] ?? 1;
    if (direction !== 1 && direction !== -1) return valueError;
    if (key.length !== matrix.length || key[0]?.length !== 1) return valueError;
    keys.push({ at: (row) => key[row]?.[0] ?? null, direction });
  }
  return sortRows(matrix, keys);
}

function unique(matrix: Matrix, byColumn?: boolean, onlyOnce?: boolean): Operand {
  const table = byColumn === true ? transpose(matrix) : matrix;
  const groups = new Map<string, { line: CellValue[]; count: number }>();
  for (const line of table) {
    const key = jointKey(
      line.map((value) => (value === null ? '' : value instanceof CellError ? value.code : valueKey(value))),
    );
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { line, count: 1 });
    else group.count++;
  }
  const kept = [...groups.values()].filter((group) => onlyOnce !== true || group.count === 1);
  if (kept.length === 0) return emptyArrayError;
  const lines = kept.map((group) => group.line);
  return byColumn === true ? transpose(lines) : lines;
}

function sequence(rows: number, columns?: number, start?: number, step?: number): Operand {
  const height = Math.trunc(rows);
  const width = Math.trunc(columns ?? 1);
  if (height < 1 || width < 1) return emptyArrayError;
  if (height * width > cellLimit) return numberError;
  return buildMatrix(height, width, (row, column) => (start ?? 1) + (row * width + column) * (step ?? 1));
}

/** First (or, negative, last) rows and columns; `drop` gives the rest instead. */
function cut(isTake: boolean): FunctionTable[string] {
  return pure(['array', 'number?', 'number?'], (matrix, rows, columns) => {
    const slice = <Item>(items: Item[], count: number | undefined): Item[] => {
      if (count === undefined) return items;
      const whole = Math.trunc(count);
      if (isTake) return whole >= 0 ? items.slice(0, whole) : items.slice(whole);
      return whole >= 0 ? items.slice(whole) : items.slice(0, whole);
    };
    const kept = slice(matrix, rows).map((line) => slice(line, columns));
    return kept.length === 0 || kept[0]?.length === 0 ? emptyArrayError : kept;
  });
}

function choose(direction: 'rows' | 'columns'): FunctionTable[string] {
  return repeated(['array'], 'array', (_place, [matrix], picks) => {
    const table = direction === 'rows' ? matrix : transpose(matrix);
    const lines: Matrix = [];
    for (const pick of picks.flatMap((matrixOfPicks) => matrixOfPicks.flat())) {
      if (typeof pick !== 'number') return pick instanceof CellError ? pick : valueError;
      const line = table.at(pick > 0 ? Math.trunc(pick) - 1 : Math.trunc(pick));
      if (line === undefined || Math.trunc(pick) === 0) return valueError;
      lines.push(line);
    }
    return direction === 'rows' ? lines : transpose(lines);
  });
}

function stack(direction: 'down' | 'across'): FunctionTable[string] {
  return repeated([], 'array', (_place, _first, parts) => {
    const turned = direction === 'down' ? parts : parts.map(transpose);
    const width = Math.max(...turned.map((matrix) => matrix[0]?.length ?? 0));
    const lines = turned.flatMap((matrix) =>
      matrix.map((line) => [...line, ...new Array<CellValue>(width - line.length).fill(notAvailable)]),
    );
    return direction === 'down' ? lines : transpose(lines);
  });
}

/** A LAMBDA applied to every value, row or column. */
function single(result: Operand, place: Place): CellValue {
  const contents = readOperand(result, place, true) ?? 0;
  if (!isMatrix(contents)) return contents;
  return contents.length === 1 && contents[0]?.length === 1 ? (contents[0][0] ?? 0) : emptyArrayError;
}

function each(direction: 'rows' | 'columns'): FunctionTable[string] {
  return placed(['array', 'operand'], (place, matrix, lambda) => {
    if (!(lambda instanceof LambdaValue)) return valueError;
    if (direction === 'rows') return matrix.map((line) => [single(lambda.call([[line]]), place)]);
    return [transpose(matrix).map((line) => single(lambda.call([transpose([line])]), place))];
  });
}

function map(place: Place, parts: readonly Operand[]): Operand {
  const lambda = parts[parts.length - 1];
  if (!(lambda instanceof LambdaValue)) return valueError;
  const inputs = parts.slice(0, -1).map((part) => {
    const contents = readOperand(part, place, true) ?? null;
    return isMatrix(contents) ? contents : [[contents]];
  });
  const rows = Math.max(...inputs.map((matrix) => matrix.length));
  const columns = Math.max(...inputs.map((matrix) => matrix[0]?.length ?? 0));
  return buildMatrix(rows, columns, (row, column) =>
    single(lambda.call(inputs.map((matrix) => matrix[row]?.[column] ?? notAvailable)), place),
  );
}

/** Arrays: picking, ordering, joining, and LAMBDA helpers. */
export const arrayFunctions: FunctionTable = {
  TRANSPOSE: pure(['array'], transpose),
  FILTER: pure(['array', 'array', 'operand?'], filter),
  SORT: pure(['array', 'array?', 'array?', 'boolean?'], sort),
  SORTBY: repeated(['array'], 'array', (_place, [matrix], pairs) => sortBy(matrix, pairs)),
  UNIQUE: pure(['array', 'boolean?', 'boolean?'], unique),
  SEQUENCE: pure(['number', 'number?', 'number?', 'number?'], sequence),
  TAKE: cut(true),
  DROP: cut(false),
  CHOOSEROWS: choose('rows'),
  CHOOSECOLS: choose('columns'),
  VSTACK: stack('down'),
  HSTACK: stack('across'),
  TOCOL: pure(['array'], (matrix) => matrix.flat().map((value) => [value])),
  TOROW: pure(['array'], (matrix) => [matrix.flat()]),
  BYROW: each('rows'),
  BYCOL: each('columns'),
  MAP: repeated([], 'operand', (place, _first, parts) => map(place, parts)),
  REDUCE: placed(['operand', 'array', 'operand'], (_place, start, matrix, lambda) => {
    if (!(lambda instanceof LambdaValue)) return valueError;
    return matrix.flat().reduce<Operand>((result, value) => lambda.call([result, value]), start);
  }),
};
