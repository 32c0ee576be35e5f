import { CalcError } from '../errors.ts';
import type { LeakRecord } from './intervals.ts';
import { intervalsOf } from './intervals.ts';
import { mergedByDay } from './additions.ts';

export const leakRateMethods = ['annualizing', 'rolling average'] as const;

export type LeakRateMethod = (typeof leakRateMethods)[number];

/** The year of both methods. */
export const yearDays = 365;

/**
 * Leak rate from one addition, by the annualizing method.
 *
 * rate = (added / full charge) x 365 / min(365, days since the addition before)
 *
 * Without the cap an old addition would hide a large loss.
 *
 * @returns share of the full charge per year
 * @throws CalcError out-of-range when no day has passed: additions of one day are one addition
 * @source 40 CFR 82.152, "leak rate", as restated in a study guide; the start at a verified repair from memory
 */
export function annualizedRate(loss: {
  readonly addedKg: number;
  readonly fullChargeKg: number;
  readonly days: number;
}): number {
  if (!(loss.days > 0)) {
    throw new CalcError('no day has passed since the addition before: add the two together', {
      code: 'out-of-range',
      parameter: 'days',
      received: String(loss.days),
      limit: '1 or more',
    });
  }
  return ((loss.addedKg / loss.fullChargeKg) * yearDays) / Math.min(yearDays, loss.days);
}

/**
 * Leak rate by the rolling average method: everything added in the last 365 days, or since the last verified repair
 * where that is later, over the full charge.
 *
 * @param record.verifiedDay - additions up to this day are left out
 * @param asOfDay - last day that counts
 * @returns share of the full charge per year
 * @source 40 CFR 82.152, "leak rate", as restated in a study guide; the start at a verified repair from memory
 */
export function rollingRate(
  record: LeakRecord & { readonly fullChargeKg: number; readonly asOfDay: number },
): number {
  const { asOfDay, verifiedDay = -Infinity, fullChargeKg } = record;
  let addedKg = 0;
  for (const { day, massKg } of mergedByDay(record.additions)) {
    if (day > asOfDay - yearDays && day <= asOfDay && day > verifiedDay) addedKg += massKg;
  }
  return addedKg / fullChargeKg;
}

/** Annualized rate of the last addition of a record. @throws CalcError not-available without a known interval */
export function lastAnnualizedRate(record: LeakRecord & { readonly fullChargeKg: number }): number {
  const last = intervalsOf(record).at(-1);
  if (!last) {
    throw new CalcError('nothing was added for a leak', { code: 'not-available', parameter: 'added' });
  }
  if (last.days === undefined) {
    throw new CalcError(
      'the first addition has nothing before it: give the day of installation or of a full charge weighed in as since, or days = 365 as an assumption',
      { code: 'not-available', parameter: 'since', received: 'blank', limit: 'a date' },
    );
  }
  return annualizedRate({ addedKg: last.massKg, fullChargeKg: record.fullChargeKg, days: last.days });
}
