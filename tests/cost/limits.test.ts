import { describe, expect, it } from 'vitest';
import {
  annuityFactor,
  breakEvenRepairPrice,
  capitalRecoveryFactor,
  completeAssumptions,
  costChoices,
  costInputNames,
  definitionOf,
  exactly,
  isWorkedOut,
  largest,
  likelyValues,
  paybackYears,
  repairPriceWorthPaying,
  smallest,
} from '../../src/cost/index.ts';
import type { Values } from '../../src/cost/index.ts';
import { errorOf } from '../error-of.ts';
import { inTradeUnits } from './trade-assumptions.ts';

/** Expected limits are those of each input's own declaration; amounts by hand from the definition of each function. */
const told = {
  capacity: 12_000,
  efficiency: 10,
  newEfficiency: 12,
  hours: 700,
  powerPrice: 0.17,
  nameplate: 14,
  visitPrice: 95,
  refrigerantPrice: 2.75,
  replacementPrice: 900,
  newLife: 10,
  yearsLeft: 5,
  discountRate: 0,
} as const;

describe('compound interest', () => {
  it('has limits, and says them', () => {
    const years = { code: 'out-of-range', parameter: 'years' };
    expect(errorOf(() => annuityFactor(0.05, -1))).toMatchObject({
      ...years,
      received: '-1',
      limit: '0 or more',
    });
    expect(errorOf(() => annuityFactor(0.05, Number.NaN))).toMatchObject(years);
    expect(errorOf(() => capitalRecoveryFactor(0.05, 0))).toMatchObject({ ...years, limit: 'more than 0' });
    expect(errorOf(() => annuityFactor(-0.01, 5))).toMatchObject({
      code: 'out-of-range',
      parameter: 'discount rate',
      limit: '0 or more',
      message: 'discount rate must be 0 or more; received -0.01',
    });
    expect(annuityFactor(0.05, 0)).toBe(0);
    expect(annuityFactor(0, 7)).toBe(7);
    // 1 / 1.05 + 1 / 1.05²
    expect(annuityFactor(0.05, 2)).toBeCloseTo(1.859410431, 9);
    expect(capitalRecoveryFactor(0.05, 1)).toBeCloseTo(1.05, 12);
  });
});

describe('paying back', () => {
  it('takes what a subtraction leaves over for no saving', () => {
    // 0.3 - 0.1 - 0.2 in binary arithmetic.
    const left = { price: 1, savingPerYear: Math.abs(0.3 - 0.1 - 0.2), discountRate: 0 };
    expect(left.savingPerYear).toBeGreaterThan(0);
    expect(errorOf(() => paybackYears(left))).toMatchObject({
      code: 'not-available',
      parameter: 'saving',
      message: 'never paid back: there is no yearly saving',
    });
    expect(paybackYears({ ...left, savingPerYear: 0.001 })).toBe(1000);
    expect(paybackYears({ ...left, price: 0 })).toBe(0);
  });
});

describe.each(costInputNames.map((name) => ({ name, ...definitionOf(name) })))(
  'the limits of $label',
  ({ name, label, minimum, above, maximum, below }) => {
    const given = (low: number, likely = low, high = likely) =>
      completeAssumptions({ [name]: { low, likely, high } });
    const inside = ((minimum ?? above ?? 0) + (maximum ?? below ?? (minimum ?? above ?? 0) + 2)) / 2;

    it('are kept at both ends of a range', () => {
      expect(given(inside)).toBeDefined();
      const wrong = { code: 'out-of-range', parameter: label };
      if (minimum !== undefined) {
        expect(given(minimum, inside)).toBeDefined();
        expect(errorOf(() => given(minimum - 0.01, inside))).toMatchObject({
          ...wrong,
          received: `${String(minimum - 0.01)} to ${String(inside)}`,
          limit: `${String(minimum)} or more`,
        });
      }
      if (above !== undefined)
        expect(errorOf(() => given(above, inside))).toMatchObject({
          ...wrong,
          limit: `more than ${String(above)}`,
        });
      if (maximum !== undefined) {
        expect(given(inside, inside, maximum)).toBeDefined();
        expect(errorOf(() => given(inside, inside, maximum * 1.01))).toMatchObject({
          ...wrong,
          limit: `${String(maximum)} or less`,
        });
      }
      if (below !== undefined)
        expect(errorOf(() => given(inside, inside, below))).toMatchObject({
          ...wrong,
          limit: `less than ${String(below)}`,
        });
    });

    it('and its order: low, likely, high', () => {
      for (const [low, likely, high] of [
        [inside, inside * 0.9, inside],
        [inside, inside, inside * 0.9],
      ] as const) {
        expect(errorOf(() => given(low, likely, high))).toMatchObject({
          code: 'out-of-range',
          parameter: label,
          received: `${String(low)}, ${String(likely)}, ${String(high)}`,
          limit: 'low <= likely <= high',
        });
      }
    });
  },
);

describe('what is missing', () => {
  const without = (left: Partial<Record<keyof typeof told, undefined>>, more: object = {}): Values => {
    const all = { ...told, ...more, ...left };
    const present = Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
    return likelyValues(inTradeUnits(present));
  };

  it.each([
    ['newLife', 'new life is missing: the price of a new unit is spread over it'],
    ['replacementPrice', 'replacement price is missing: every choice ends in a new unit'],
    ['yearsLeft', 'years left is missing: or give the age of the unit'],
    ['capacity', 'capacity is missing: electricity is part of every choice'],
  ] as const)('%s is asked for with the reason', (name, message) => {
    expect(errorOf(() => costChoices(without({ [name]: undefined })))).toMatchObject({
      code: 'invalid-argument',
      message,
    });
  });

  it.each([['nameplate', 'nameplate is missing: the leak is a share of it']] as const)(
    '%s is asked for once something leaks',
    (name, message) => {
      expect(isWorkedOut(costChoices(without({ [name]: undefined })).replace)).toBe(true);
      expect(errorOf(() => costChoices(without({ [name]: undefined }, { leakRate: 20 }))).message).toBe(
        message,
      );
    },
  );
});

describe('topping up without its prices', () => {
  it.each([
    ['refrigerantPrice', 'no price for its gas is known'],
    ['visitPrice', 'no price for a call is known'],
  ] as const)('%s missing: it is no choice yet, the others stand', (name, missing) => {
    const { [name]: left, ...rest } = { ...told, leakRate: 20 };
    expect(left).toBeGreaterThan(0);
    const choices = costChoices(likelyValues(inTradeUnits(rest)));
    expect(choices['top up']).toEqual({ missing });
    expect(isWorkedOut(choices.replace)).toBe(true);
  });
});

describe('a repair price worth paying', () => {
  const values = likelyValues(inTradeUnits(told));

  it('names the choice that cannot be worked out, and passes it over when the cheapest is asked for', () => {
    expect(errorOf(() => repairPriceWorthPaying(values, 'top up'))).toMatchObject({
      code: 'not-available',
      parameter: 'against',
      received: 'top up',
      limit: 'a choice that can be worked out',
      message: 'to top up cannot be worked out: no leak rate',
    });
    expect(repairPriceWorthPaying(values, 'cheapest').rival).toBe('replace');
  });

  it('is what the other choice costs more than running repaired', () => {
    // A year: new 900 / 10 + 12000 / 12 x 700 x 0.17 / 1000 = 209; repaired 12000 / 10 x 700 x 0.17 / 1000 = 142.80.
    expect(breakEvenRepairPrice(values)).toBeCloseTo(5 * (209 - 142.8), 6);
  });

  it('is none where the other choice costs less even against a repair for nothing', () => {
    const dear = likelyValues(inTradeUnits({ ...told, powerPrice: 2, newEfficiency: 20 }));
    expect(errorOf(() => breakEvenRepairPrice(dear))).toMatchObject({
      code: 'not-available',
      parameter: 'assumptions',
      limit: 'a price above 0',
      // A year: 90 + 840 = 930 against 1680; five years of the difference.
      received: '-3750.00',
    });
  });
});

describe('the ends of a range', () => {
  const assumptions = {
    ...inTradeUnits({ ...told, leakRate: [10, 20, 30] }),
    hours: { low: 1, likely: 2, high: 4 },
  };

  it('are found with one uncertain input, with two, and with none', () => {
    const hours = (values: Values): number => values.hours ?? 0;
    const both = (values: Values): number => (values.hours ?? 0) * (values.leakRate ?? 0);
    expect(smallest(assumptions, hours)).toMatchObject({ value: 1, at: { hours: 1 } });
    expect(largest(assumptions, hours)).toMatchObject({ value: 4, at: { hours: 4 } });
    expect(smallest(assumptions, both).value).toBeCloseTo(0.1, 12);
    expect(largest(assumptions, both).value).toBeCloseTo(1.2, 12);
    const exact = inTradeUnits(told);
    expect(smallest({ ...exact, hours: exactly(3) }, hours).value).toBe(3);
    expect(smallest({ ...exact, hours: assumptions.hours }, hours).value).toBe(1);
  });

  it('lie inside when the middle is best', () => {
    const dip = (values: Values): number => Math.abs((values.hours ?? 0) - 2);
    expect(smallest(assumptions, dip)).toMatchObject({ value: 0, at: { hours: 2 } });
  });

  it('are left alone once a value is low enough', () => {
    let asked = 0;
    const counted = (values: Values): number => {
      asked += 1;
      return values.hours ?? 0;
    };
    expect(smallest(assumptions, counted, 3).value).toBeLessThan(3);
    const early = asked;
    asked = 0;
    smallest(assumptions, counted);
    expect(early).toBeLessThan(asked);
  });
});
