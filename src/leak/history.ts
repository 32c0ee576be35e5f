import { phrase } from '../phrase.ts';
import type { Phrase } from '../phrase.ts';
import { countsAsLeak } from './additions.ts';
import type { Interval, LeakRecord } from './intervals.ts';
import { currentIntervals, intervalsOf } from './intervals.ts';
import { annualizedRate, rollingRate, yearDays } from './leak-rate.ts';
import { lossRateKgPerS } from './loss.ts';
import { trendOf } from './trend.ts';

/** One leak interval of a unit with its rates. */
export interface HistoryRow {
  readonly fromDay: number | undefined;
  readonly toDay: number;
  readonly days: number | undefined;
  readonly massKg: number;
  readonly lossKgPerS: number | undefined;
  /** Shares of the full charge per year; undefined without a full charge. */
  readonly annualized: number | undefined;
  readonly rolling: number | undefined;
  readonly note: Phrase;
}

/**
 * Every interval of a unit, oldest first, with both leak rates at its end. The first addition of a unit without an
 * earlier date is taken as one year, and the note says so.
 */
export function leakHistory(record: LeakRecord, fullChargeKg: number | undefined): readonly HistoryRow[] {
  const intervals = intervalsOf(record);
  return intervals.map((interval, index) => ({
    ...interval,
    lossKgPerS:
      interval.days === undefined
        ? undefined
        : lossRateKgPerS([{ massKg: interval.massKg, days: interval.days }]),
    annualized:
      fullChargeKg === undefined
        ? undefined
        : annualizedRate({ addedKg: interval.massKg, fullChargeKg, days: interval.days ?? yearDays }),
    rolling:
      fullChargeKg === undefined
        ? undefined
        : rollingRate({ ...record, fullChargeKg, asOfDay: interval.toDay }),
    note: noteOf(record, interval, index === intervals.length - 1),
  }));
}

function noteOf(record: LeakRecord, interval: Interval, isLast: boolean): Phrase {
  const { verifiedDay } = record;
  if (interval.days === undefined)
    return phrase`nobody weighed a full charge before: a year is assumed for the leak rate`;
  if (verifiedDay !== undefined && interval.toDay <= verifiedDay) return phrase`before the verified repair`;
  if (!isLast) return [];
  const trend = trendOf(currentIntervals(record));
  return trend === 'Growing' ? phrase`growing: find and repair it now` : phrase`${trend.toLowerCase()}`;
}

/** How many additions say nothing about a leak. */
export function leftOut(record: LeakRecord): number {
  return record.additions.filter((addition) => addition.massKg > 0 && !countsAsLeak(addition)).length;
}
