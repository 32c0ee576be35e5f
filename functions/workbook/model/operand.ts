import { Reference, ReferenceList } from './reference.ts';
import type { CellValue, Matrix } from './values.ts';
import { CellError } from './values.ts';

/** A function made by LAMBDA. */
export class LambdaValue {
  readonly parameterCount: number;
  readonly call: (args: readonly Operand[]) => Operand;

  constructor(parameterCount: number, call: (args: readonly Operand[]) => Operand) {
    this.parameterCount = parameterCount;
    this.call = call;
  }
}

/** What a part of a formula can evaluate to; undefined is an argument left out. */
export type Operand = CellValue | Matrix | Reference | ReferenceList | LambdaValue | undefined;

/** An operand whose references have been read. */
export type Contents = CellValue | Matrix;

export function isMatrix(operand: Operand): operand is Matrix {
  return Array.isArray(operand);
}

export function isError(operand: Operand): operand is CellError {
  return operand instanceof CellError;
}

/** The reference in an operand, if it is a single rectangle. */
export function asReference(operand: Operand): Reference | undefined {
  if (operand instanceof Reference) return operand;
  if (operand instanceof ReferenceList && operand.areas.length === 1) return operand.areas[0];
  return undefined;
}

/** The rectangles of a reference operand; none for anything else. */
export function areasOf(operand: Operand): readonly Reference[] {
  if (operand instanceof Reference) return [operand];
  return operand instanceof ReferenceList ? operand.areas : [];
}
