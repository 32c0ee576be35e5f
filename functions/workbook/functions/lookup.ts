import type { Place } from '../formula/compiled-formula.ts';
import { asReference } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, notAvailable, referenceError, valueError } from '../model/values.ts';
import { findAscending, findDescending, findExact, findLast, findNearest, findPattern } from './search.ts';
import { placed } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';
import { columnOf, gridOf, rowOf, vectorOf } from './vector.ts';
import type { Grid, Vector } from './vector.ts';

function failureOf(operand: Operand): CellError {
  return operand instanceof CellError ? operand : valueError;
}

/** Row or column of a grid by number; number 0 means all of it. */
function part(grid: Grid, row: number, column: number): Operand {
  if (row < 0 || column < 0) return valueError;
  if (row > grid.rows || column > grid.columns) return referenceError;
  const top = row === 0 ? 0 : row - 1;
  const bottom = row === 0 ? grid.rows - 1 : row - 1;
  const left = column === 0 ? 0 : column - 1;
  const right = column === 0 ? grid.columns - 1 : column - 1;
  const { reference } = grid;
  if (reference !== undefined) {
    return new Reference(
      reference.sheet,
      reference.top + top,
      reference.left + left,
      reference.top + bottom,
      reference.left + right,
    );
  }
  if (top === bottom && left === right) return grid.at(top, left);
  const rows: CellValue[][] = [];
  for (let line = top; line <= bottom; line++) {
    const values: CellValue[] = [];
    for (let across = left; across <= right; across++) values.push(grid.at(line, across));
    rows.push(values);
  }
  return rows;
}

function index(place: Place, operand: Operand, row: number, column: number | undefined): Operand {
  const whole = asReference(operand);
  const grid = gridOf(operand, place);
  if (grid === undefined) return failureOf(operand);
  const wantedRow = Math.trunc(row);
  if (column === undefined && grid.rows === 1 && grid.columns > 1) return part(grid, 1, wantedRow);
  const wantedColumn = Math.trunc(column ?? (grid.columns === 1 ? 1 : 0));
  // Below what is in use a range has blank cells, which other functions still take as cells: SUM(F1:INDEX(F1:F6,2)).
  if (whole !== undefined && wantedRow > grid.rows && wantedRow <= whole.height && wantedColumn > 0) {
    if (wantedColumn > whole.width) return referenceError;
    const [cellRow, cellColumn] = [whole.top + wantedRow - 1, whole.left + wantedColumn - 1];
    return new Reference(whole.sheet, cellRow, cellColumn, cellRow, cellColumn);
  }
  return part(grid, wantedRow, wantedColumn);
}

/** Position by MATCH's kinds of match: 0 equal, 1 ascending, -1 descending. */
function position(vector: Vector, wanted: CellValue, kind: number, place: Place): number {
  if (kind === 0) return findPattern(vector, wanted, place);
  return kind > 0 ? findAscending(vector, wanted) : findDescending(vector, wanted);
}

function match(place: Place, wanted: CellValue, operand: Operand, kind: number | undefined): Operand {
  const grid = gridOf(operand, place);
  const vector = grid === undefined ? undefined : vectorOf(grid);
  if (vector === undefined) return operand instanceof CellError ? operand : notAvailable;
  const found = position(vector, wanted, kind ?? 1, place);
  return found < 0 ? notAvailable : found + 1;
}

function tableLookup(direction: 'down' | 'across'): FunctionTable[string] {
  return placed(['value', 'operand', 'number', 'boolean?'], (place, wanted, operand, number, sorted) => {
    const grid = gridOf(operand, place);
    if (grid === undefined) return failureOf(operand);
    const offset = Math.trunc(number) - 1;
    if (offset < 0) return valueError;
    if (offset >= (direction === 'down' ? grid.columns : grid.rows)) return referenceError;
    const keys = direction === 'down' ? columnOf(grid, 0) : rowOf(grid, 0);
    const found = position(keys, wanted, sorted === false ? 0 : 1, place);
    if (found < 0) return notAvailable;
    return direction === 'down' ? grid.at(found, offset) : grid.at(offset, found);
  });
}

function lookup(place: Place, wanted: CellValue, operand: Operand, results: Operand): Operand {
  const grid = gridOf(operand, place);
  if (grid === undefined) return failureOf(operand);
  const isDown = grid.rows >= grid.columns;
  const found = findAscending(isDown ? columnOf(grid, 0) : rowOf(grid, 0), wanted);
  if (found < 0) return notAvailable;
  if (results === undefined) {
    return isDown ? grid.at(found, grid.columns - 1) : grid.at(grid.rows - 1, found);
  }
  const target = gridOf(results, place);
  const vector = target === undefined ? undefined : vectorOf(target);
  if (vector === undefined) return results instanceof CellError ? results : notAvailable;
  return found < vector.length ? vector.at(found) : notAvailable;
}

/** Position by XLOOKUP's kinds of match: 0 equal, -1 or next smaller, 1 or next larger, 2 pattern. */
function findBy(
  vector: Vector,
  wanted: CellValue,
  kind: number,
  order: number,
  place: Place,
): number | CellError {
  const fromEnd = order === -1;
  switch (kind) {
    case 0:
      return fromEnd ? findLast(vector, wanted, place) : findExact(vector, wanted, place);
    case -1:
      return findNearest(vector, wanted, 'below', fromEnd);
    case 1:
      return findNearest(vector, wanted, 'above', fromEnd);
    case 2:
      return findPattern(vector, wanted, place);
    default:
      return valueError;
  }
}

const flexibleLookup: FunctionTable[string] = placed(
  ['value', 'operand', 'operand', 'operand?', 'number?', 'number?'],
  (place, wanted, keys, results, absent, kind, order) => {
    const keyGrid = gridOf(keys, place);
    const resultGrid = gridOf(results, place);
    if (keyGrid === undefined) return failureOf(keys);
    if (resultGrid === undefined) return failureOf(results);
    const vector = vectorOf(keyGrid);
    if (vector === undefined) return valueError;
    const isDown = keyGrid.columns === 1;
    const resultLength = isDown ? resultGrid.rows : resultGrid.columns;
    const wholeKeys = asReference(keys);
    const wholeResults = asReference(results);
    const fullKeys = (isDown ? wholeKeys?.height : wholeKeys?.width) ?? vector.length;
    const fullResults = (isDown ? wholeResults?.height : wholeResults?.width) ?? resultLength;
    if (fullKeys !== fullResults) return valueError;
    const found = findBy(vector, wanted, Math.trunc(kind ?? 0), Math.trunc(order ?? 1), place);
    if (found instanceof CellError) return found;
    if (found < 0) return absent === undefined ? notAvailable : absent;
    return isDown ? part(resultGrid, found + 1, 0) : part(resultGrid, 0, found + 1);
  },
);

const flexibleMatch: FunctionTable[string] = placed(
  ['value', 'operand', 'number?', 'number?'],
  (place, wanted, keys, kind, order) => {
    const grid = gridOf(keys, place);
    const vector = grid === undefined ? undefined : vectorOf(grid);
    if (vector === undefined) return failureOf(keys);
    const found = findBy(vector, wanted, Math.trunc(kind ?? 0), Math.trunc(order ?? 1), place);
    if (found instanceof CellError) return found;
    return found < 0 ? notAvailable : found + 1;
  },
);

/** Finding and picking values in ranges and arrays. */
export const lookupFunctions: FunctionTable = {
  INDEX: placed(['operand', 'number?', 'number?'], (place, operand, row, column) =>
    index(place, operand, row ?? 0, column),
  ),
  MATCH: placed(['value', 'operand', 'number?'], match),
  VLOOKUP: tableLookup('down'),
  HLOOKUP: tableLookup('across'),
  LOOKUP: placed(['value', 'array', 'operand?'], lookup),
  XLOOKUP: flexibleLookup,
  XMATCH: flexibleMatch,
};
