import { describe, expect, it } from 'vitest';
import { renderPhrase } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import {
  annualizedRate,
  co2EquivalentKg,
  currentIntervals,
  daysToLimit,
  forecastBasis,
  intervalsOf,
  lastAnnualizedRate,
  leakHistory,
  leftOut,
  lossRateKgPerS,
  rollingRate,
  trendVerdict,
} from '../../src/leak/index.ts';
import { confidenceWord, tellingLosses } from '../../src/leak/trend.ts';
import { findRefrigerant } from '../../src/refrigerants/index.ts';
import { errorOf } from '../error-of.ts';
import { inUsUnits } from '../access/verdict-text.ts';

const ounceKg = 0.45359237 / 16;
const inUs = { units: unitSystem('US'), atmospherePa: 101_325 };

/** Losses in ounces and days. A year has 365 days: two ounces in 100 days are 7.3 ounces a year (by multiplication). */
const losses = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([ounces, days]) => ({ massKg: ounces * ounceKg, days }));

describe('trend in words', () => {
  it.each<[string, ReturnType<typeof losses>, RegExp]>([
    ['nothing', [], /^No loss: no addition for a leak over a known time$/],
    ['one', losses([2, 100]), /^One interval: 7\.3 oz\/year; confidence low, one interval is no trend$/],
    [
      'growing',
      losses([2, 100], [4, 100]),
      /^Growing: 14\.6 oz\/year after 7\.3 oz\/year; find and repair it now; confidence fair, 2 intervals$/,
    ],
    [
      'slowing',
      losses([4, 100], [2, 100]),
      /^Slowing: 7\.3 oz\/year after 14\.6 oz\/year; confidence fair, 2 intervals$/,
    ],
    [
      'steady',
      losses([2, 100], [2, 100], [2.2, 100]),
      /^Steady: 7\.5 oz\/year; confidence good, 3 intervals$/,
    ],
    // The rate before is that of all earlier intervals together: 8 oz in 400 days.
    [
      'against all before',
      losses([2, 300], [6, 100], [4, 100]),
      /^Growing: 14\.6 oz\/year after 7\.3 oz\/year/,
    ],
  ])('%s', (_, given, expected) => {
    expect(inUsUnits(trendVerdict(given))).toMatch(expected);
  });

  it('trusts more intervals more (common practice, no source)', () => {
    expect([0, 1, 2, 3, 4].map(confidenceWord)).toEqual(['none', 'low', 'fair', 'good', 'good']);
  });

  it('goes by the last interval alone when the leak grows, by all when it slows (rule of ours)', () => {
    const growing = losses([1, 100], [1, 100], [2, 100]);
    expect(tellingLosses(growing)).toEqual(growing.slice(2));
    const slowing = losses([2, 100], [2, 100], [1, 100]);
    expect(tellingLosses(slowing)).toEqual(slowing);
  });
});

describe('history in words', () => {
  const notes = (record: Parameters<typeof leakHistory>[0]): string[] =>
    leakHistory(record, 14).map(({ note }) => renderPhrase(note, inUs));

  it('calls the last interval by the trend, and only the last', () => {
    const additions = [100, 200, 300].map((day) => ({ day, massKg: 1 }));
    expect(notes({ additions, sinceDay: 0 })).toEqual(['', '', 'steady']);
    const growing = [...additions.slice(0, 2), { day: 250, massKg: 1 }];
    expect(notes({ additions: growing, sinceDay: 0 })).toEqual(['', '', 'growing: find and repair it now']);
  });

  it('says what was before the repair, the day of the repair included', () => {
    const additions = [100, 200, 300].map((day) => ({ day, massKg: 1 }));
    const before = 'before the verified repair';
    expect(notes({ additions, sinceDay: 0, verifiedDay: 200 })).toEqual([before, before, 'one interval']);
    // 1 in the one day after the repair, then 1 in 100 days.
    expect(notes({ additions, sinceDay: 0, verifiedDay: 199 })).toEqual([before, '', 'slowing']);
  });

  it('gives each interval its rates, and none where something is not known', () => {
    const record = {
      additions: [
        { day: 100, massKg: 2 },
        { day: 200, massKg: 3 },
      ],
    };
    const [first, second] = leakHistory(record, 10);
    expect(first).toMatchObject({ fromDay: undefined, days: undefined, lossKgPerS: undefined });
    expect(first?.annualized).toBeCloseTo(0.2, 12); // a year assumed: 2 of 10
    expect(second).toMatchObject({ fromDay: 100, toDay: 200, days: 100, massKg: 3 });
    expect((second?.lossKgPerS ?? 0) * 86_400).toBeCloseTo(0.03, 12); // 3 in 100 days
    expect(second?.annualized).toBeCloseTo((3 / 10) * 3.65, 12); // method as in annualizedRate
    expect(second?.rolling).toBeCloseTo(0.5, 12); // 5 of 10 within 365 days
    for (const row of leakHistory(record, undefined))
      expect([row.annualized, row.rolling]).toEqual([undefined, undefined]);
  });

  it('counts what says nothing about a leak, blank additions not', () => {
    const additions = [
      { day: 1, massKg: 1, reason: 'new charge' as const },
      { day: 2, massKg: 0, reason: 'new charge' as const },
      { day: 3, massKg: 1, reason: 'leak' as const },
      { day: 4, massKg: 0 },
    ];
    expect(leftOut({ additions })).toBe(1);
  });
});

describe('intervals at a verified repair', () => {
  const additions = [
    { day: 100, massKg: 1 },
    { day: 300, massKg: 2 },
  ];

  it('drop an addition on the day of the repair, keep one a day later', () => {
    expect(currentIntervals({ additions, sinceDay: 40, verifiedDay: 100 })).toEqual([
      { fromDay: 100, toDay: 300, days: 200, massKg: 2 },
    ]);
    expect(currentIntervals({ additions, sinceDay: 40, verifiedDay: 99 }).map(({ days }) => days)).toEqual([
      1, 200,
    ]);
  });

  it('reach back to the addition before where that is later than the repair', () => {
    expect(currentIntervals({ additions, sinceDay: 40, verifiedDay: 20 }).map(({ days }) => days)).toEqual([
      60, 200,
    ]);
  });

  it('rolls from the day after the repair', () => {
    const rate = (verifiedDay: number): number =>
      rollingRate({ additions, fullChargeKg: 10, asOfDay: 300, verifiedDay });
    expect(rate(99)).toBeCloseTo(0.3, 12);
    expect(rate(100)).toBeCloseTo(0.2, 12);
  });
});

describe('what an error names', () => {
  const leak = [{ day: 300, massKg: 2 }];
  it.each<[string, () => unknown, object]>([
    [
      'an addition before the record',
      // Day 20000 is 2024-10-04 (calendar).
      () => intervalsOf({ additions: [{ day: 20_000, massKg: 1 }], sinceDay: 20_001 }),
      { code: 'out-of-range', parameter: 'since', received: '2024-10-05', limit: '2024-10-04 or earlier' },
    ],
    [
      'two additions of one day',
      () => annualizedRate({ addedKg: 1, fullChargeKg: 10, days: 0 }),
      { code: 'out-of-range', parameter: 'days', received: '0', limit: '1 or more' },
    ],
    [
      'no addition for a leak',
      () => lastAnnualizedRate({ additions: [], fullChargeKg: 10 }),
      { code: 'not-available', parameter: 'added' },
    ],
    [
      'an addition with nothing before it',
      () => lastAnnualizedRate({ additions: leak, fullChargeKg: 10 }),
      { code: 'not-available', parameter: 'since', received: 'blank', limit: 'a date' },
    ],
    [
      'no loss',
      () => lossRateKgPerS([]),
      { code: 'not-available', parameter: 'added', limit: 'an addition with an earlier date, or with since' },
    ],
    [
      'the whole charge',
      () =>
        daysToLimit({
          losses: [{ massKg: 5, days: 9 }],
          fullChargeKg: 5,
          limitShare: 0.85,
          model: 'exponential',
        }),
      { code: 'out-of-range', parameter: 'added', limit: 'less than the full charge' },
    ],
    [
      'nothing to forecast from',
      () => forecastBasis({ additions: leak }),
      {
        code: 'not-available',
        parameter: 'added',
        message: expect.stringContaining('with an earlier date') as string,
      },
    ],
    [
      'a repair that holds',
      () => forecastBasis({ additions: leak, sinceDay: 1, verifiedDay: 301 }),
      { code: 'not-available', message: expect.stringContaining('since the repair was verified') as string },
    ],
    [
      'a basis without the gas',
      // The American Innovation and Manufacturing Act has no value for R-1234yf (its table lists HFCs only).
      () =>
        co2EquivalentKg({ refrigerant: findRefrigerant('R-1234yf'), massKg: 1, basis: 'US exchange value' }),
      {
        code: 'not-available',
        parameter: 'basis',
        received: 'US exchange value',
        limit: 'AR4, AR5, AR6, EU 2024/573, 40 CFR 84.64',
        message: 'R-1234yf has no GWP on the basis US exchange value',
      },
    ],
    [
      'a gas without any value',
      () =>
        co2EquivalentKg({ refrigerant: { ...findRefrigerant('R-32'), gwp: {} }, massKg: 1, basis: 'AR4' }),
      { received: 'AR4', limit: 'none is at hand' },
    ],
  ])('%s', (_, run, expected) => {
    expect(errorOf(run)).toMatchObject(expected);
  });

  it('annualizes the last addition by the days since the one before (definition, 40 CFR 82.152)', () => {
    const record = {
      additions: [
        { day: 100, massKg: 9 },
        { day: 173, massKg: 2 },
      ],
      fullChargeKg: 10,
    };
    expect(lastAnnualizedRate(record)).toBeCloseTo((2 / 10) * 5, 12); // 365 / 73 = 5
  });
});
