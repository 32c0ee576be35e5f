import { describe, expect, it } from 'vitest';
import { dueDay, forecastBasis, intervalsOf, trendOf, usualScaleStepKg } from '../../src/leak/index.ts';

const ounceKg = 0.45359237 / 16;
const losses = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([ounces, days]) => ({ massKg: ounces * ounceKg, days }));

describe('where an interval begins', () => {
  it('at a full charge weighed in between two top-ups', () => {
    const additions = [
      { day: 100, massKg: 1 },
      { day: 200, massKg: 14, reason: 'new charge' as const },
      { day: 300, massKg: 2 },
    ];
    expect(intervalsOf({ additions }).map(({ days }) => days)).toEqual([undefined, 100]);
    expect(intervalsOf({ additions: additions.slice(1) }).map(({ days }) => days)).toEqual([100]);
    const leaks = additions.filter(({ reason }) => reason === undefined);
    expect(intervalsOf({ additions: leaks, fullDays: [40, 290] }).map(({ days }) => days)).toEqual([60, 10]);
  });

  it('counts the forecast from the last full charge', () => {
    const additions = [
      { day: 100, massKg: 1 },
      { day: 200, massKg: 1 },
      { day: 260, massKg: 14, reason: 'new charge' as const },
    ];
    expect(forecastBasis({ additions }).fullDay).toBe(260);
  });
});

describe('what a scale cannot show', () => {
  it('makes no trend and moves no forecast', () => {
    // Two steps of 0.1 oz are the doubt of two weighings: 0.3 oz after 0.1 oz is twice as much and nothing.
    const within = losses([0.1, 100], [0.3, 100]);
    expect(trendOf(within)).toBe('Steady');
    expect(trendOf(within, 0.01 * ounceKg)).toBe('Growing');
    const due = (given: typeof within, scaleStepKg?: number): number =>
      dueDay({
        losses: given,
        fullDay: 1000,
        fullChargeKg: 14 * ounceKg,
        limitShare: 0.85,
        model: 'linear',
        scaleStepKg,
      });
    // 2.1 oz at 0.4 oz in 200 days are 1050 days; at 0.3 oz in 100 days 700 (by division).
    expect(due(within)).toBe(2050);
    expect(due(within, 0.01 * ounceKg)).toBe(1700);
    expect(usualScaleStepKg).toBeCloseTo(0.1 * ounceKg, 12);
  });
});
