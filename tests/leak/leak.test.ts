import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annualizedRate,
  currentIntervals,
  daysToLimit,
  dueDay,
  forecastBasis,
  intervalsOf,
  leakHistory,
  mergedByDay,
  rollingRate,
  trendOf,
} from '../../src/leak/index.ts';
import { CalcError } from '../../src/errors.ts';

const day = (text: string): number => Date.parse(`${text}T00:00:00Z`) / 86_400_000;

function codeOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof CalcError) return error.code;
    throw error;
  }
  return 'no error';
}

describe('additions', () => {
  it('of one day are one, top-offs and corrections are none, an unexplained one counts', () => {
    expect(
      mergedByDay([
        { day: 20, massKg: 2 },
        { day: 10, massKg: 1, reason: 'leak' },
        { day: 20, massKg: 3, reason: 'after repair' },
        { day: 21, massKg: 9, reason: 'factory top-off' },
        { day: 22, massKg: 9, reason: 'seasonal correction' },
        { day: 23, massKg: 9, reason: 'new charge' },
        { day: 24, massKg: 0 },
      ]),
    ).toEqual([
      { day: 10, massKg: 1 },
      { day: 20, massKg: 5 },
    ]);
  });
});

describe('intervals', () => {
  const additions = [
    { day: 100, massKg: 1 },
    { day: 300, massKg: 2 },
  ];

  it('reach from addition to addition, the first from the start of the record', () => {
    expect(intervalsOf({ additions, sinceDay: 40 }).map(({ days }) => days)).toEqual([60, 200]);
    expect(intervalsOf({ additions }).map(({ days }) => days)).toEqual([undefined, 200]);
  });

  it('take an addition on the first day as the charge itself', () => {
    expect(intervalsOf({ additions, sinceDay: 100 }).map(({ days }) => days)).toEqual([200]);
  });

  it('do not begin after the first addition', () => {
    expect(codeOf(() => intervalsOf({ additions, sinceDay: 101 }))).toBe('out-of-range');
  });

  it('tell what leaks now only after the verified repair', () => {
    expect(currentIntervals({ additions, sinceDay: 40, verifiedDay: 250 })).toEqual([
      { fromDay: 250, toDay: 300, days: 50, massKg: 2 },
    ]);
    expect(currentIntervals({ additions, sinceDay: 40, verifiedDay: 300 })).toEqual([]);
    // A repair day stands in for an unknown beginning.
    expect(currentIntervals({ additions: [{ day: 300, massKg: 2 }], verifiedDay: 250 })).toHaveLength(1);
  });
});

describe('leak rate', () => {
  it('never falls below the share that was added, and is proportional to it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        fc.double({ min: 0.5, max: 5000, noNaN: true }),
        (addedKg, days) => {
          const rate = annualizedRate({ addedKg, fullChargeKg: 14, days });
          expect(rate).toBeGreaterThanOrEqual((addedKg / 14) * (1 - 1e-12));
          expect(annualizedRate({ addedKg: 2 * addedKg, fullChargeKg: 14, days })).toBeCloseTo(2 * rate, 9);
        },
      ),
    );
  });

  it('rolls over 365 days: the day before the first one is out', () => {
    const at = (first: string): number =>
      rollingRate({
        additions: [
          { day: day(first), massKg: 2 },
          { day: day('2026-08-30'), massKg: 3 },
        ],
        fullChargeKg: 14,
        asOfDay: day('2026-08-30'),
      });
    expect(at('2025-08-31')).toBeCloseTo(5 / 14, 12);
    expect(at('2025-08-30')).toBeCloseTo(3 / 14, 12);
  });
});

describe('forecast', () => {
  const losses = [{ massKg: 3, days: 200 }];

  it('comes earlier for the larger loss and for the higher limit', () => {
    const days = (limitShare: number, massKg: number): number =>
      daysToLimit({ losses: [{ massKg, days: 200 }], fullChargeKg: 14, limitShare, model: 'linear' });
    expect(days(0.85, 4)).toBeLessThan(days(0.85, 3));
    expect(days(0.9, 3)).toBeLessThan(days(0.85, 3));
  });

  it('agrees between the models for a small loss', () => {
    // -ln(1 - x) tends to x: both give the time to lose 0.1 % at 0.01 % in 100 days.
    const small = { losses: [{ massKg: 0.0014, days: 100 }], fullChargeKg: 14, limitShare: 0.999 };
    const linear = daysToLimit({ ...small, model: 'linear' });
    expect(daysToLimit({ ...small, model: 'exponential' }) / linear).toBeCloseTo(1, 3);
  });

  it('goes by the last interval when the leak grows', () => {
    const growing = [...losses, { massKg: 3, days: 60 }];
    const at = (given: typeof losses): number =>
      dueDay({ losses: given, fullDay: 1000, fullChargeKg: 14, limitShare: 0.85, model: 'linear' });
    expect(trendOf(growing)).toBe('Growing');
    expect(at(growing)).toBe(1042); // 2.1 kg at 3 kg in 60 days, by division
    expect(at([{ massKg: 3, days: 60 }, ...losses])).toBe(1000 + Math.floor(2.1 / (6 / 260)));
  });

  it('has nothing to say without a known interval, or after a repair that holds', () => {
    const additions = [{ day: 300, massKg: 2 }];
    expect(codeOf(() => forecastBasis({ additions }))).toBe('not-available');
    expect(codeOf(() => forecastBasis({ additions, sinceDay: 1, verifiedDay: 301 }))).toBe('not-available');
  });

  it('cannot follow the loss of the whole charge as a share', () => {
    const whole = { losses: [{ massKg: 14, days: 200 }], fullChargeKg: 14, limitShare: 0.85 };
    expect(codeOf(() => daysToLimit({ ...whole, model: 'exponential' }))).toBe('out-of-range');
    expect(daysToLimit({ ...whole, model: 'linear' })).toBeCloseTo(30, 9); // 2.1 kg at 14 kg in 200 days
  });
});

describe('trend', () => {
  it('needs a difference of a fifth', () => {
    // The first interval loses 1 in 100 days.
    const against = (massKg: number): string =>
      trendOf([
        { massKg: 1, days: 100 },
        { massKg, days: 100 },
      ]);
    expect(against(1.19)).toBe('Steady');
    expect(against(1.21)).toBe('Growing');
    expect(against(0.81)).toBe('Steady');
    expect(against(0.79)).toBe('Slowing');
  });
});

describe('leak history', () => {
  it('flags what was assumed', () => {
    const rows = leakHistory({ additions: [{ day: 300, massKg: 3 }] }, 14);
    expect(rows[0]?.annualized).toBeCloseTo(3 / 14, 12);
    expect(rows[0]?.note).toEqual([
      'nobody weighed a full charge before: a year is assumed for the leak rate',
    ]);
  });
});
