import { CalcError } from '../errors.ts';
import type { Addition } from './additions.ts';
import { mergedByDay } from './additions.ts';

/** What leaked between two moments at which the charge was right. */
export interface Interval {
  /** Undefined when nothing earlier is known. */
  readonly fromDay: number | undefined;
  readonly toDay: number;
  /** Whole days; undefined with `fromDay`. */
  readonly days: number | undefined;
  readonly massKg: number;
}

export interface LeakRecord {
  readonly additions: readonly Addition[];
  /** Day on which the charge was known to be right first: installation, or a weighed-in charge. */
  readonly sinceDay?: number | undefined;
  /** Day on which a repair was found to hold; what leaked before no longer tells what leaks now. */
  readonly verifiedDay?: number | undefined;
}

/**
 * The intervals between additions, oldest first. Each addition replaces what leaked since the addition before it.
 * The first one reaches back to `sinceDay`, or is open when that is unknown.
 *
 * @throws CalcError out-of-range when an addition lies before `sinceDay`
 */
export function intervalsOf(record: LeakRecord): readonly Interval[] {
  const merged = mergedByDay(record.additions);
  const { sinceDay } = record;
  const first = merged[0];
  if (first && sinceDay !== undefined && first.day < sinceDay) {
    throw new CalcError('an addition lies before the day from which the record starts', {
      code: 'out-of-range',
      parameter: 'since',
      received: isoDay(sinceDay),
      limit: `${isoDay(first.day)} or earlier`,
    });
  }
  return merged
    .map(({ day, massKg }, index) =>
      intervalBetween(index === 0 ? sinceDay : merged[index - 1]?.day, day, massKg),
    )
    .filter(({ days }) => days === undefined || days > 0);
}

function intervalBetween(fromDay: number | undefined, toDay: number, massKg: number): Interval {
  return { fromDay, toDay, days: fromDay === undefined ? undefined : toDay - fromDay, massKg };
}

/** The intervals that tell what leaks now: after the last verified repair, of known length. */
export function currentIntervals(record: LeakRecord): readonly (Interval & { readonly days: number })[] {
  const { verifiedDay } = record;
  return intervalsOf(record).flatMap((interval) => {
    const { fromDay, toDay, massKg } = interval;
    const start = verifiedDay === undefined ? fromDay : Math.max(fromDay ?? verifiedDay, verifiedDay);
    return start === undefined || toDay <= start
      ? []
      : [{ fromDay: start, toDay, days: toDay - start, massKg }];
  });
}

export function isoDay(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}
