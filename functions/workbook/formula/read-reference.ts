import { columnLimit, rowLimit } from '../model/address.ts';
import type { Contents, Operand } from '../model/operand.ts';
import { isMatrix, LambdaValue } from '../model/operand.ts';
import { Reference, ReferenceList } from '../model/reference.ts';
import type { CellError, CellValue } from '../model/values.ts';
import { emptyArrayError, referenceError, valueError } from '../model/values.ts';
import type { Place, ReferencePattern } from './compiled-formula.ts';

/** The rectangle a pattern means in a cell; #REF! when it falls off the sheet. */
export function resolvePattern(pattern: ReferencePattern, place: Place): Reference | CellError {
  const top = pattern.topFixed ? pattern.top : pattern.top + place.row;
  const bottom = pattern.bottomFixed ? pattern.bottom : pattern.bottom + place.row;
  const left = pattern.leftFixed ? pattern.left : pattern.left + place.column;
  const right = pattern.rightFixed ? pattern.right : pattern.right + place.column;
  if (Math.min(top, bottom, left, right) < 0) return referenceError;
  if (Math.max(top, bottom) >= rowLimit || Math.max(left, right) >= columnLimit) return referenceError;
  return new Reference(
    pattern.sheet ?? place.sheet,
    Math.min(top, bottom),
    Math.min(left, right),
    Math.max(top, bottom),
    Math.max(left, right),
  );
}

/** Values of a reference: one value for a single cell, else rows. */
function readReference(reference: Reference, place: Place): Contents {
  if (reference.isSingle) return reference.first();
  return reference.toMatrix(place.workbook);
}

/**
 * The one cell of a range that lies in the formula's own row or column: what a formula of an ordinary cell means when it
 * names a range where a single value belongs.
 */
export function intersect(reference: Reference, place: Place): CellValue {
  if (reference.isSingle) return reference.first();
  const { sheet, top, left, bottom, right } = reference;
  if (left === right && place.row >= top && place.row <= bottom) return sheet.value(place.row, left);
  if (top === bottom && place.column >= left && place.column <= right) return sheet.value(top, place.column);
  return valueError;
}

/** An operand with its references read: whole, or cut to the formula's own row or column. */
export function readOperand(operand: Operand, place: Place, whole: boolean): Contents | undefined {
  if (operand instanceof Reference) {
    return whole ? readReference(operand, place) : intersect(operand, place);
  }
  if (operand instanceof ReferenceList) {
    const [only] = operand.areas;
    if (only === undefined || operand.areas.length > 1) return valueError;
    return readOperand(only, place, whole);
  }
  if (operand instanceof LambdaValue) return emptyArrayError;
  return operand;
}

/** The first value of an operand. */
export function firstValue(operand: Operand): CellValue {
  if (operand instanceof Reference) return operand.first();
  if (operand instanceof ReferenceList) return operand.areas[0]?.first() ?? null;
  if (operand instanceof LambdaValue) return emptyArrayError;
  if (operand === undefined) return null;
  return isMatrix(operand) ? (operand[0]?.[0] ?? null) : operand;
}
