import { toBoolean } from '../model/coerce.ts';
import { Reference } from '../model/reference.ts';
import type { Operand } from '../model/operand.ts';
import { CellError, notAvailable, valueError } from '../model/values.ts';
import type { CellValue } from '../model/values.ts';
import { visitValues } from './numbers-in.ts';
import { isMatrix } from '../model/operand.ts';
import { placed, pure, repeated } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/** Folds the truth of all arguments; text in ranges does not count, text given directly must be TRUE or FALSE. */
function folded(fold: (truths: readonly boolean[]) => boolean): FunctionTable[string] {
  return repeated([], 'operand', (_place, _first, operands) => {
    const truths: boolean[] = [];
    let failure: CellError | undefined;
    for (const operand of operands) {
      visitValues(operand, (value, direct) => {
        if (value instanceof CellError) failure ??= value;
        else if (typeof value === 'boolean' || typeof value === 'number') truths.push(Boolean(value));
        else if (direct) {
          const truth = toBoolean(value);
          if (typeof truth === 'boolean') truths.push(truth);
          else failure ??= truth;
        }
      });
    }
    if (failure !== undefined) return failure;
    return truths.length === 0 ? valueError : fold(truths);
  });
}

function asks(test: (value: CellValue) => boolean): FunctionTable[string] {
  return pure(['any'], test);
}

function isError(value: CellValue): value is CellError {
  return value instanceof CellError;
}

const errorNumbers: Readonly<Record<string, number>> = {
  '#NULL!': 1,
  '#DIV/0!': 2,
  '#VALUE!': 3,
  '#REF!': 4,
  '#NAME?': 5,
  '#NUM!': 6,
  '#N/A': 7,
  '#GETTING_DATA': 8,
};

function typeNumber(operand: Operand): number {
  if (operand instanceof Reference && !operand.isSingle) return 64;
  const value = operand instanceof Reference ? operand.first() : operand;
  if (isMatrix(value)) return 64;
  if (typeof value === 'string') return 2;
  if (typeof value === 'boolean') return 4;
  return value instanceof CellError ? 16 : 1;
}

/** Truth values and questions about the kind of a value. IF and its relatives are special forms. */
export const logicFunctions: FunctionTable = {
  TRUE: pure([], () => true),
  FALSE: pure([], () => false),
  NOT: pure(['boolean'], (value) => !value),
  AND: folded((truths) => truths.every(Boolean)),
  OR: folded((truths) => truths.some(Boolean)),
  XOR: folded((truths) => truths.filter(Boolean).length % 2 === 1),
  ISBLANK: asks((value) => value === null),
  ISNUMBER: asks((value) => typeof value === 'number'),
  ISTEXT: asks((value) => typeof value === 'string'),
  ISNONTEXT: asks((value) => typeof value !== 'string'),
  ISLOGICAL: asks((value) => typeof value === 'boolean'),
  ISERROR: asks(isError),
  ISERR: asks((value) => isError(value) && value.code !== '#N/A'),
  ISNA: asks((value) => isError(value) && value.code === '#N/A'),
  ISEVEN: pure(['number'], (value) => Math.trunc(value) % 2 === 0),
  ISODD: pure(['number'], (value) => Math.trunc(value) % 2 !== 0),
  ISREF: pure(['operand'], (operand) => operand instanceof Reference),
  ISFORMULA: placed(['operand'], (_place, operand) =>
    operand instanceof Reference
      ? operand.sheet.formula(operand.top, operand.left) !== undefined
      : operand instanceof CellError
        ? operand
        : valueError,
  ),
  NA: pure([], () => notAvailable),
  N: pure(['any'], (value) =>
    isError(value) || typeof value === 'number' ? value : typeof value === 'boolean' ? Number(value) : 0,
  ),
  T: pure(['any'], (value) => (isError(value) || typeof value === 'string' ? value : '')),
  TYPE: pure(['operand'], typeNumber),
  'ERROR.TYPE': pure(['any'], (value) =>
    isError(value) ? (errorNumbers[value.code] ?? notAvailable) : notAvailable,
  ),
};
