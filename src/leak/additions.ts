/** Why refrigerant went into a unit. */
export const additionReasons = [
  'leak',
  'after repair',
  'factory top-off',
  'seasonal correction',
  'new charge',
] as const;

export type AdditionReason = (typeof additionReasons)[number];

/** Reasons that say nothing about a leak: 40 CFR 82.157(b) leaves them out of the leak rate. */
const noLeak: ReadonlySet<string> = new Set(['factory top-off', 'seasonal correction', 'new charge']);

/** Refrigerant that reached a unit; what stayed in hoses is not part of it. */
export interface Addition {
  /** Days since 1970-01-01. */
  readonly day: number;
  readonly massKg: number;
  /** Undefined counts as a leak: an unexplained loss is one. */
  readonly reason?: AdditionReason | undefined;
}

export function countsAsLeak(addition: Addition): boolean {
  return addition.massKg > 0 && !(addition.reason !== undefined && noLeak.has(addition.reason));
}

/** Leak additions in order of time, those of one day added together: two weighings of one visit are one addition. */
export function mergedByDay(additions: readonly Addition[]): readonly Addition[] {
  const byDay = new Map<number, number>();
  for (const addition of additions) {
    if (countsAsLeak(addition)) byDay.set(addition.day, (byDay.get(addition.day) ?? 0) + addition.massKg);
  }
  return [...byDay].sort(([a], [b]) => a - b).map(([day, massKg]) => ({ day, massKg }));
}
