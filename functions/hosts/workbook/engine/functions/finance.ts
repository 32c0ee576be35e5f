import type { CellValue } from '../values.ts';
import { CellError, divisionByZero, numberError } from '../values.ts';
import { numbersIn } from './numbers-in.ts';
import { placed } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

function presentValue(flows: readonly number[], rate: number): { value: number; slope: number } {
  let value = 0;
  let slope = 0;
  flows.forEach((flow, period) => {
    const discounted = flow / (1 + rate) ** period;
    value += discounted;
    slope -= (period * discounted) / (1 + rate);
  });
  return { value, slope };
}

/** Rate at which payments at equal intervals are worth nothing today, by Newton's method from a guess. */
export function internalRate(flows: readonly number[], guess: number): CellValue {
  if (!flows.some((flow) => flow > 0) || !flows.some((flow) => flow < 0)) return numberError;
  let rate = guess;
  for (let step = 0; step < 100; step++) {
    const { value, slope } = presentValue(flows, rate);
    const next = rate - value / slope;
    if (!Number.isFinite(next) || next <= -1) return numberError;
    if (Math.abs(next - rate) <= 1e-14 * Math.max(1, Math.abs(next))) return next;
    rate = next;
  }
  return numberError;
}

/** Rate at which payments at one interest, and receipts put out at another, come out even at the end. */
function modifiedRate(flows: readonly number[], borrowed: number, earned: number): CellValue {
  const periods = flows.length - 1;
  let paid = 0;
  let received = 0;
  flows.forEach((flow, period) => {
    if (flow < 0) paid -= flow / (1 + borrowed) ** period;
    else received += flow * (1 + earned) ** (periods - period);
  });
  if (paid === 0 || received === 0 || periods === 0) return divisionByZero;
  const rate = (received / paid) ** (1 / periods) - 1;
  return Number.isFinite(rate) ? rate : numberError;
}

/** Finance beside what the library gives. */
export const financeFunctions: FunctionTable = {
  IRR: placed(['operand', 'number?'], (place, operand, guess) => {
    const flows = numbersIn([operand], place.workbook.dateSystem);
    return flows instanceof CellError ? flows : internalRate(flows, guess ?? 0.1);
  }),
  MIRR: placed(['operand', 'number', 'number'], (place, operand, borrowed, earned) => {
    const flows = numbersIn([operand], place.workbook.dateSystem);
    return flows instanceof CellError ? flows : modifiedRate(flows, borrowed, earned);
  }),
};
