import { bisect } from '../../../src/numerics/bisect.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, divisionByZero, numberError } from '../model/values.ts';
import { numbersIn } from './numbers-in.ts';
import { placed, pure } from './standard-function.ts';
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
function internalRate(flows: readonly number[], guess: number): CellValue {
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

interface Loan {
  readonly periods: number;
  readonly payment: number;
  readonly present: number;
  readonly future: number;
  /** 1 when payments fall on the beginning of a period, 0 on its end. */
  readonly timing: number;
}

/** What is left over at the end of a loan at a rate; zero at the loan's own rate. */
function leftOver({ periods, payment, present, future, timing }: Loan, rate: number): number {
  if (rate === 0) return present + payment * periods + future;
  const interest = Math.expm1(periods * Math.log1p(rate));
  return present * (1 + interest) + (payment * (1 + rate * timing) * interest) / rate + future;
}

/** Rates a period between which the loan's own is looked for, counted from the guess. */
const rateSteps = [0, 0.01, 0.03, 0.1, 0.3, 1, 3, 10];

function rateOf(loan: Loan, guess: number): CellValue {
  const left = (rate: number): number => leftOver(loan, rate);
  const places = [...new Set(rateSteps.flatMap((step) => [guess - step, guess + step]))]
    .filter((rate) => rate > -1)
    .sort((one, other) => one - other);
  const exact = places.find((rate) => left(rate) === 0);
  if (exact !== undefined) return exact;
  const [nearest] = places
    .slice(1)
    .map((high, index) => ({ low: places[index] ?? high, high, tolerance: 0 }))
    .filter(({ low, high }) => left(low) * left(high) < 0)
    .sort((one, other) => Math.abs(one.low - guess) - Math.abs(other.low - guess));
  return nearest === undefined ? numberError : bisect(left, nearest);
}

/** Finance beside what the library gives. */
export const financeFunctions: FunctionTable = {
  IRR: placed(['operand', 'number?'], (place, operand, guess) => {
    const flows = numbersIn([operand], place.workbook.dateSystem);
    return flows instanceof CellError ? flows : internalRate(flows, guess ?? 0.1);
  }),
  RATE: pure(
    ['number', 'number', 'number', 'number?', 'number?', 'number?'],
    (periods, payment, present, future = 0, timing = 0, guess = 0.1) =>
      periods > 0
        ? rateOf({ periods, payment, present, future, timing: timing === 0 ? 0 : 1 }, guess)
        : numberError,
  ),
  MIRR: placed(['operand', 'number', 'number'], (place, operand, borrowed, earned) => {
    const flows = numbersIn([operand], place.workbook.dateSystem);
    return flows instanceof CellError ? flows : modifiedRate(flows, borrowed, earned);
  }),
};
