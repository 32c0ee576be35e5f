import { columnLetters, columnLimit, quoteSheetName, rowLimit } from '../model/address.ts';
import type { Place } from '../formula/compiled-formula.ts';
import { resolvePattern } from '../formula/read-reference.ts';
import { areasOf, asReference, isMatrix } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import { CellError, notAvailable, referenceError, valueError } from '../model/values.ts';
import { placed, pure, volatile } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

function offset(
  place: Place,
  operand: Operand,
  rows: number,
  columns: number,
  height: number | undefined,
  width: number | undefined,
): Operand {
  const base = asReference(operand);
  if (base === undefined) return operand instanceof CellError ? operand : valueError;
  const tall = Math.trunc(height ?? base.height);
  const wide = Math.trunc(width ?? base.width);
  if (tall === 0 || wide === 0) return referenceError;
  const startRow = base.top + Math.trunc(rows);
  const startColumn = base.left + Math.trunc(columns);
  const top = tall > 0 ? startRow : startRow + tall + 1;
  const left = wide > 0 ? startColumn : startColumn + wide + 1;
  const bottom = top + Math.abs(tall) - 1;
  const right = left + Math.abs(wide) - 1;
  if (top < 0 || left < 0 || bottom >= rowLimit || right >= columnLimit) return referenceError;
  const moved = new Reference(base.sheet, top, left, bottom, right);
  place.workbook.requireSettled(moved);
  return moved;
}

/** A reference spelled as text, in A1 spelling. */
function indirect(place: Place, text: string, isA1: boolean | undefined): Operand {
  if (isA1 === false) return new CellError('#REF!', 'INDIRECT with row-and-column spelling is not supported');
  const compiled = place.workbook.compile(text, place.sheet, place.row, place.column, true);
  if (compiled.problem !== undefined) return referenceError;
  const own: Place = { ...place, variables: [] };
  for (const pattern of compiled.reads) {
    const area = resolvePattern(pattern, own);
    if (area instanceof Reference) place.workbook.requireSettled(area);
  }
  const result = compiled.evaluate(own);
  return asReference(result) === undefined ? referenceError : result;
}

/** Numbers of the rows or columns of a reference; the formula's own without one. */
function numbered(direction: 'row' | 'column'): FunctionTable[string] {
  return placed(['operand?'], (place, operand) => {
    if (operand === undefined) return (direction === 'row' ? place.row : place.column) + 1;
    const area = asReference(operand);
    if (area === undefined) return operand instanceof CellError ? operand : valueError;
    if (direction === 'row') {
      if (area.height === 1) return area.top + 1;
      const { height, top } = area.inUse(place.workbook);
      return Array.from({ length: height }, (_, step) => [top + step + 1]);
    }
    if (area.width === 1) return area.left + 1;
    const { width, left } = area.inUse(place.workbook);
    return [Array.from({ length: width }, (_, step) => left + step + 1)];
  });
}

function counted(direction: 'rows' | 'columns'): FunctionTable[string] {
  return pure(['operand'], (operand) => {
    const area = asReference(operand);
    if (area !== undefined) return direction === 'rows' ? area.height : area.width;
    if (isMatrix(operand)) return direction === 'rows' ? operand.length : (operand[0]?.length ?? 0);
    return operand instanceof CellError ? operand : 1;
  });
}

function address(
  row: number,
  column: number,
  kind: number | undefined,
  isA1: boolean | undefined,
  sheet: string | undefined,
): Operand {
  if (row < 1 || column < 1 || row > rowLimit || column > columnLimit) return valueError;
  const fixing = kind ?? 1;
  if (fixing < 1 || fixing > 4) return valueError;
  const rowFixed = fixing === 1 || fixing === 2;
  const columnFixed = fixing === 1 || fixing === 3;
  const prefix = sheet === undefined || sheet === '' ? '' : `${quoteSheetName(sheet)}!`;
  if (isA1 === false) {
    const rowText = rowFixed ? `R${Math.trunc(row)}` : `R[${Math.trunc(row)}]`;
    const columnText = columnFixed ? `C${Math.trunc(column)}` : `C[${Math.trunc(column)}]`;
    return prefix + rowText + columnText;
  }
  const letters = columnLetters(Math.trunc(column) - 1);
  return `${prefix}${columnFixed ? '$' : ''}${letters}${rowFixed ? '$' : ''}${Math.trunc(row)}`;
}

function sheetNumber(place: Place, operand: Operand): Operand {
  if (operand === undefined) return place.sheet.index + 1;
  if (typeof operand === 'string') {
    const sheet = place.workbook.findSheet(operand);
    return sheet === undefined ? notAvailable : sheet.index + 1;
  }
  const area = asReference(operand);
  return area === undefined ? valueError : area.sheet.index + 1;
}

/** Functions about references rather than values. */
export const referenceFunctions: FunctionTable = {
  OFFSET: volatile(placed(['operand', 'number', 'number', 'number?', 'number?'], offset)),
  INDIRECT: volatile(placed(['text', 'boolean?'], indirect)),
  ROW: numbered('row'),
  COLUMN: numbered('column'),
  ROWS: counted('rows'),
  COLUMNS: counted('columns'),
  AREAS: pure(['operand'], (operand) => {
    const count = areasOf(operand).length;
    return count === 0 ? valueError : count;
  }),
  ADDRESS: pure(['number', 'number', 'number?', 'boolean?', 'text?'], address),
  SHEET: placed(['operand?'], sheetNumber),
  SHEETS: placed([], (place) => place.workbook.sheets.length),
  FORMULATEXT: placed(['operand'], (_place, operand) => {
    const area = asReference(operand);
    if (area === undefined) return operand instanceof CellError ? operand : valueError;
    const cell = area.sheet.formula(area.top, area.left);
    if (cell === undefined) return notAvailable;
    const text = cell.text();
    return text.startsWith('=') ? text : `=${text}`;
  }),
  HYPERLINK: pure(['text', 'any?'], (target, label) => (label === undefined ? target : label)),
};
