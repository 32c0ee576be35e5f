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
  /** Day on which a full charge was weighed in first. A day of installation tells nothing about the charge since. */
  readonly sinceDay?: number | undefined;
  /** Later days on which a full charge was weighed in; additions for a new charge are such days without being named. */
  readonly fullDays?: readonly number[] | undefined;
  /** Day on which a repair was found to hold; what leaked before no longer tells what leaks now. */
  readonly verifiedDay?: number | undefined;
}

/**
 * The intervals between additions, oldest first. Each addition replaces what leaked since the charge was right last: the
 * addition before it, or a full charge weighed in between. The first one reaches back to a full charge that was weighed,
 * or is open when none is known: nobody saw what the unit held before.
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
  const fullDays = fullDaysOf(record);
  return merged
    .map(({ day, massKg }, index) => {
      const before = merged[index - 1]?.day;
      // A full charge on the day of an addition is that addition's end, not its beginning.
      const lastFull = fullDays.findLast((full) => full < day);
      return intervalBetween(latest(before, lastFull) ?? sameDay(fullDays, day), day, massKg);
    })
    .filter(({ days }) => days === undefined || days > 0);
}

/** Days on which a full charge was weighed in, in order. */
export function fullDaysOf({ additions, sinceDay, fullDays = [] }: LeakRecord): readonly number[] {
  const charges = additions.filter(({ reason, massKg }) => reason === 'new charge' && massKg > 0);
  return [...(sinceDay === undefined ? [] : [sinceDay]), ...fullDays, ...charges.map(({ day }) => day)].sort(
    (one, other) => one - other,
  );
}

function latest(one: number | undefined, other: number | undefined): number | undefined {
  return one === undefined ? other : other === undefined ? one : Math.max(one, other);
}

/** An addition on the day of the first full charge is part of that charge. */
function sameDay(fullDays: readonly number[], day: number): number | undefined {
  return fullDays.includes(day) ? day : undefined;
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
