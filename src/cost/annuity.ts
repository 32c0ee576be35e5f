import { CalcError } from '../errors.ts';

/**
 * Present value of 1 a year for n years, paid at each year's end: a(n) = (1 - (1+i)^-n) / i, and n when i = 0.
 * A part of a year counts by the same formula, so that a(3.5) lies between a(3) and a(4).
 *
 * @param rate - discount rate a year, 0.08 for 8 %
 * @source compound interest; standard tables "P/A"
 */
export function annuityFactor(rate: number, years: number): number {
  check(rate, years);
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}

/**
 * Yearly payment that is worth 1 today: i (1+i)^n / ((1+i)^n - 1), and 1/n when i = 0.
 *
 * @source compound interest; standard tables "A/P"
 */
export function capitalRecoveryFactor(rate: number, years: number): number {
  if (!(years > 0)) throw wrong('years', years, 'more than 0');
  return 1 / annuityFactor(rate, years);
}

function check(rate: number, years: number): void {
  if (!(rate >= 0)) throw wrong('discount rate', rate, '0 or more');
  if (!(years >= 0)) throw wrong('years', years, '0 or more');
}

function wrong(parameter: string, received: number, limit: string): CalcError {
  return new CalcError(`${parameter} must be ${limit}; received ${String(received)}`, {
    code: 'out-of-range',
    parameter,
    received: String(received),
    limit,
  });
}
