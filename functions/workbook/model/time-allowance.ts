/** A calculation did not end within the time it was given. */
export class OutOfTime extends Error {
  override readonly name = 'OutOfTime';
}

/** When the work under way has to end, in the milliseconds of `performance.now`. Work is synchronous, so one will do. */
let end = Infinity;

/**
 * Lets work take so many milliseconds. Work inside work cannot take longer than what holds it.
 *
 * @throws OutOfTime at the next place that asks
 */
export function withinTime<T>(milliseconds: number, work: () => T): T {
  const before = end;
  end = Math.min(before, performance.now() + milliseconds);
  try {
    return work();
  } finally {
    end = before;
  }
}

/** Asked wherever a few characters of a formula can mean hours of work. @throws OutOfTime */
export function requireTime(): void {
  if (end !== Infinity && performance.now() > end) throw new OutOfTime('the time allowed is over');
}
