import { describe, expect, it } from 'vitest';
import type { Choice, ChoiceName } from '../../src/cost/index.ts';
import { costChoices, decide, isWorkedOut, likelyValues } from '../../src/cost/index.ts';
import { yearsLeftFromAge } from '../../src/cost/unit-life.ts';
import { inUsUnits } from '../access/verdict-text.ts';
import { errorOf } from '../error-of.ts';
import { inTradeUnits } from './trade-assumptions.ts';

/** Power at full charge 13500 / 8.5 x 600 / 1000 x 0.15 = 142.941; a new unit 121.50 and 1200 over ten years, 241.50. */
const told = {
  capacity: 13_500,
  efficiency: 8.5,
  newEfficiency: 10,
  hours: 600,
  powerPrice: 0.15,
  nameplate: 14,
  efficiencyLoss: 5,
  visitPrice: 95,
  refrigerantPrice: 2.75,
  replacementPrice: 1200,
  newLife: 10,
  yearsLeft: 5,
  discountRate: 0,
} as const;

function choiceOf(more: Parameters<typeof inTradeUnits>[0], name: ChoiceName): Choice {
  const choice = costChoices(likelyValues(inTradeUnits({ ...told, ...more })))[name];
  if (!isWorkedOut(choice)) throw new Error(choice.missing);
  return choice;
}

describe('doing nothing with a leak that grows by half each year (by hand)', () => {
  // Full now, usable down to 35 %: 20 points lost in the first year, 30 in the second, then 15 of 45: 2 1/3 years.
  const choice = choiceOf({ leakRate: 20, leakGrowth: 50, chargeNow: 100, usableDownTo: 35 }, 'do nothing');

  it('lasts until the charge is used up', () => {
    expect(choice.lastsYears).toBeCloseTo(2 + 1 / 3, 9);
    expect(choice.upfront).toBe(0);
  });

  it('costs more power from year to year', () => {
    // Mean charge 90, 65 and 42.5 %; 5 % lost at 15 % undercharge: 3.333, 11.667 and 19.167 %.
    expect(choice.runningInYear(1)).toBeCloseTo(147.87, 2);
    expect(choice.runningInYear(2)).toBeCloseTo(161.82, 2);
    expect(choice.runningInYear(3)).toBeCloseTo(176.834, 2);
  });

  it('goes on with a new unit for the rest of the five years', () => {
    // 147.870 + 161.820 + 176.834 / 3 + 2.6667 x 241.50 = 1012.635; a fifth of it a year.
    expect(choice.presentCost).toBeCloseTo(1012.635, 2);
    expect(choice.costPerYear).toBeCloseTo(202.527, 2);
  });

  it('lasts as long as the unit where the leak is slow, and without end where there is none', () => {
    expect(choiceOf({ leakRate: 1, chargeNow: 100, usableDownTo: 35 }, 'do nothing').lastsYears).toBe(5);
    const tight = choiceOf({ leakRate: 0, usableDownTo: 35 }, 'do nothing');
    expect(tight.lastsYears).toBe(5);
    expect(tight.runningInYear(5)).toBeCloseTo(142.941, 2);
  });
});

describe('topping up a leak that grows (by hand)', () => {
  it('takes calls and ounces that grow with it; the power stays', () => {
    // 30 % a year from 85 %: 2 calls, 190, and 4.2 oz, 11.55; power 142.941 / 0.975 = 146.606. Second year: half as much again.
    const choice = choiceOf({ leakRate: 30, leakGrowth: 50, refillAt: 85 }, 'top up');
    expect(choice.runningInYear(1)).toBeCloseTo(201.55 + 146.606, 2);
    expect(choice.runningInYear(2)).toBeCloseTo(1.5 * 201.55 + 146.606, 2);
    expect(choice.lastsYears).toBe(5);
  });

  it('without a leak is running at full charge, and asks for no price', () => {
    const { nameplate, visitPrice, refrigerantPrice, ...without } = told;
    const priced = [nameplate, visitPrice, refrigerantPrice];
    expect(priced).toHaveLength(3);
    const choice = costChoices(likelyValues(inTradeUnits({ ...without, leakRate: 0 })))['top up'];
    if (!isWorkedOut(choice)) throw new Error(choice.missing);
    expect(choice.runningInYear(1)).toBeCloseTo(142.941, 2);
    expect(choice.costPerYear).toBeCloseTo(142.941, 2);
  });
});

describe('what a year of a repair is expected to cost (by hand)', () => {
  it('with a chance that it fails and the unit is topped up or replaced, whichever is cheaper', () => {
    // Topped up at 5 % a year: 5 / 15 x 95 + 0.7 x 2.75 + 146.606 = 180.198, less than a new unit's 241.50.
    const cheap = choiceOf({ leakRate: 5, refillAt: 85, repairPrice: 450, chanceOfHolding: 60 }, 'repair');
    expect(cheap.runningInYear(1)).toBeCloseTo(0.6 * 142.941 + 0.4 * 180.198, 2);
    expect(cheap.costPerYear).toBeCloseTo(450 / 5 + 0.6 * 142.941 + 0.4 * 180.198, 2);
    // At 60 % a year it is 4 calls and 8.4 oz: 403.10 and the power, more than a new unit.
    const dear = choiceOf({ leakRate: 60, refillAt: 85, repairPrice: 450, chanceOfHolding: 60 }, 'repair');
    expect(dear.runningInYear(1)).toBeCloseTo(0.6 * 142.941 + 0.4 * 241.5, 2);
    const unknown = choiceOf({ repairPrice: 450, chanceOfHolding: 60 }, 'repair');
    expect(unknown.runningInYear(1)).toBeCloseTo(0.6 * 142.941 + 0.4 * 241.5, 2);
  });
});

describe('years left from the age (by subtraction)', () => {
  const life = { low: 8, likely: 12, high: 15 };
  const exact = (years: number) => ({ low: years, likely: years, high: years });

  it.each([
    [exact(5), { low: 3, likely: 7, high: 10 }],
    [
      { low: 3, likely: 5, high: 6 },
      { low: 2, likely: 7, high: 12 },
    ],
    // Not below one season, unless even the likely life is shorter.
    [exact(10), { low: 1, likely: 2, high: 5 }],
    [exact(11.5), { low: 1, likely: 1, high: 3.5 }],
    // Older than expected: it runs today, and is judged a season at a time.
    [exact(12), { low: 1, likely: 1, high: 3 }],
    [exact(18), { low: 1, likely: 1, high: 1 }],
  ])('age %j', (age, expected) => {
    expect(yearsLeftFromAge(age, life)).toEqual(expected);
  });
});

describe('what an error of the estimate names', () => {
  it.each<[string, () => unknown, object]>([
    [
      'nothing to compare with',
      () => decide(inTradeUnits(told)),
      {
        code: 'not-available',
        parameter: 'assumptions',
        received: 'no repair price, no leak rate',
        limit: 'a row "repair price" or "leak rate"',
      },
    ],
    [
      'a unit without hours',
      () => {
        const { hours, ...rest } = told;
        return hours > 0 && costChoices(likelyValues(inTradeUnits(rest)));
      },
      { parameter: 'hours', message: 'hours is missing: electricity is part of every choice' },
    ],
    [
      'low, likely and high out of order',
      () => inTradeUnits({ ...told, hours: [700, 600, 800] }),
      { code: 'out-of-range', parameter: 'hours' },
    ],
    [
      'likely above high',
      () => inTradeUnits({ ...told, hours: [500, 600, 550] }),
      { code: 'out-of-range', parameter: 'hours' },
    ],
    [
      'a chance above all',
      () => inTradeUnits({ ...told, chanceOfHolding: 101 }),
      { code: 'out-of-range', parameter: 'chance of holding' },
    ],
    [
      'a negative price',
      () => inTradeUnits({ ...told, visitPrice: -1 }),
      { code: 'out-of-range', parameter: 'visit price' },
    ],
    ['no life', () => inTradeUnits({ ...told, newLife: 0 }), { code: 'out-of-range', parameter: 'new life' }],
  ])('%s', (_, run, expected) => {
    expect(errorOf(run)).toMatchObject(expected);
  });

  it('a decision that rests on exact inputs says so, and that no chance was given', () => {
    // Repaired 400 / 5 + 142.941 = 222.941 against 241.50.
    expect(inUsUnits(decide(inTradeUnits({ ...told, repairPrice: 400, chanceOfHolding: 100 })))).toBe(
      'Repair: 220 a year against 240 to replace. No input was given a range: the answer is as sure as they are',
    );
    expect(inUsUnits(decide(inTradeUnits({ ...told, repairPrice: 400 })))).toMatch(
      /No chance of holding was given: a repair is taken to hold for certain$/,
    );
  });

  it('a difference below what costs are rounded to decides nothing', () => {
    // Repaired 450 / 5 + 142.941 = 232.941 against 241.50.
    expect(inUsUnits(decide(inTradeUnits({ ...told, repairPrice: 450, chanceOfHolding: 100 })))).toBe(
      'Too close to call: repair 230 a year, least in 100 of 100 outcomes; replace 240, least in 0 of 100 outcomes; they differ by less than costs are rounded to',
    );
  });

  it('a turning point in years has a decimal', () => {
    // 450 / n + 142.941 = 241.50 at n = 450 / 98.559 = 4.57 years.
    const unit = inTradeUnits({ ...told, repairPrice: 450, chanceOfHolding: 100, yearsLeft: [3, 5, 8] });
    expect(inUsUnits(decide(unit))).toMatch(
      /^Too close to call: repair 230 a year, .*years left decides: replace below 4\.6 years; a look at compressor/,
    );
  });
});
