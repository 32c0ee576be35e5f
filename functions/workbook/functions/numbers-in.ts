import { toNumber } from '../model/coerce.ts';
import { areasOf, isMatrix, LambdaValue } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { Reference, ReferenceList } from '../model/reference.ts';
import type { DateSystem } from '../model/serial-date.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, valueError } from '../model/values.ts';

/**
 * Visits every number among arguments such as those of SUM: in ranges and arrays only numbers count, while a value given
 * directly must be one or read as one. Answers with the first error met.
 */
export function visitNumbers(
  operands: readonly Operand[],
  system: DateSystem,
  visit: (value: number) => void,
): CellError | undefined {
  let failure: CellError | undefined;
  for (const operand of operands) {
    if (typeof operand === 'number') {
      visit(operand);
    } else if (operand instanceof Reference || operand instanceof ReferenceList) {
      for (const area of areasOf(operand)) {
        area.visitFilled((value) => {
          if (typeof value === 'number') visit(value);
          else if (value instanceof CellError) failure = value;
          return failure !== undefined;
        });
        if (failure !== undefined) return failure;
      }
    } else if (isMatrix(operand)) {
      for (const line of operand) {
        for (const value of line) {
          if (typeof value === 'number') visit(value);
          else if (value instanceof CellError) return value;
        }
      }
    } else if (operand instanceof LambdaValue) {
      return valueError;
    } else {
      const number = toNumber(operand ?? null, system);
      if (typeof number !== 'number') return number;
      visit(number);
    }
  }
  return undefined;
}

/** The numbers among arguments as a list, or the first error met. */
export function numbersIn(operands: readonly Operand[], system: DateSystem): number[] | CellError {
  const numbers: number[] = [];
  return visitNumbers(operands, system, (value) => numbers.push(value)) ?? numbers;
}

/** Visits every value of an argument, blanks included unless the argument is a reference. */
export function visitValues(operand: Operand, visit: (value: CellValue, direct: boolean) => void): void {
  if (operand instanceof Reference || operand instanceof ReferenceList) {
    for (const area of areasOf(operand)) {
      area.visitFilled((value) => {
        visit(value, false);
      });
    }
  } else if (isMatrix(operand)) {
    for (const line of operand) for (const value of line) visit(value, false);
  } else if (!(operand instanceof LambdaValue)) {
    visit(operand ?? null, true);
  }
}
