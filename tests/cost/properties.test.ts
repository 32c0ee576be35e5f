import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assumptions, ChoiceName, CostInput, Range } from '../../src/cost/index.ts';
import {
  choiceNames,
  costChoices,
  decide,
  decisionOf,
  isWorkedOut,
  likelyValues,
  offerOf,
  outcomes,
  sampleChoices,
  titleOf,
} from '../../src/cost/index.ts';
import { inTradeUnits } from './trade-assumptions.ts';

const spread = fc.tuple(
  fc.double({ min: 0, max: 0.4, noNaN: true }),
  fc.double({ min: 0, max: 0.6, noNaN: true }),
);

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Units with everything an estimate asks for, drawn at random, each figure with a range of its own. */
const units = fc
  .record({
    hours: between(100, 1500),
    powerPrice: between(0.08, 0.5),
    ouncesAYear: between(0.3, 9),
    visitPrice: between(60, 200),
    repairPrice: between(150, 900),
    replacementPrice: between(400, 2500),
    newLife: between(6, 15),
    yearsLeft: between(1, 9),
    discountRate: between(1, 15),
    newEfficiency: between(8, 13),
    spreads: fc.array(spread, { minLength: 10, maxLength: 10 }),
    flammability: fc.constantFrom(1, 1, 2, 3),
  })
  .map(({ spreads, flammability, ...likely }) => {
    const told = Object.entries(likely).map(([name, value], index) => {
      const [down, up] = spreads[index] ?? [0, 0];
      return [name, [value * (1 - down), value, value * (1 + up)]] as const;
    });
    return inTradeUnits({
      capacity: 13_500,
      efficiency: 8.5,
      nameplate: 14,
      refrigerantPrice: 2.75,
      chanceOfHolding: [50, 80, 95],
      coolingMissed: [0, 25, 50],
      flammability,
      ...(Object.fromEntries(told) as Partial<Record<CostInput, readonly [number, number, number]>>),
    });
  });

const size = { seed: 7, draws: 300 };
const wordOf = (assumptions: Assumptions): string => decide(assumptions, size).word;
const called = new Set<string>(Object.values(titleOf));

/** To what each figure is written where an estimator reads it, in SI; by the formats of the sheet Assumptions. */
const rounding: Partial<Record<CostInput, number>> = {
  hours: 3600,
  powerPrice: 0.01 / 3.6e6,
  ouncesAYear: (0.01 * 0.028349523125) / (365 * 86_400),
  visitPrice: 1,
  repairPrice: 1,
  replacementPrice: 1,
  newLife: 0.1,
  yearsLeft: 0.1,
  discountRate: 0.001,
};

describe('the answer', () => {
  it('never turns from one choice into another when every figure moves by less than its rounding', () => {
    let sure = 0;
    fc.assert(
      fc.property(
        units,
        fc.array(between(-0.5, 0.5), { minLength: 9, maxLength: 9 }),
        (assumptions, shifts) => {
          const shifted = { ...assumptions } as Partial<Record<CostInput, Range>>;
          Object.entries(rounding).forEach(([key, step], index) => {
            const name = key as CostInput;
            const range = assumptions[name];
            if (range === undefined) return;
            const by = Math.max((shifts[index] ?? 0) * step, -range.low);
            shifted[name] = {
              ...range,
              low: range.low + by,
              likely: range.likely + by,
              high: range.high + by,
            };
          });
          const [before, after] = [wordOf(assumptions), wordOf(shifted)];
          if (!called.has(before) || !called.has(after)) return;
          sure += 1;
          expect(after).toBe(before);
        },
      ),
      { numRuns: 60, seed: 19 },
    );
    // A test that never saw a called choice would prove nothing.
    expect(sure).toBeGreaterThan(15);
  });

  it('is never a choice that another one undercuts in every outcome', () => {
    fc.assert(
      fc.property(units, (assumptions) => {
        const shares = new Map(sampleChoices(assumptions, size).map(({ name, bestIn }) => [name, bestIn]));
        const dominated = choiceNames.filter((name) =>
          choiceNames.some(
            (other) =>
              other !== name &&
              [...outcomes(assumptions, size)].every((values) => {
                const choices = costChoices(values);
                const [one, two] = [choices[name], choices[other]];
                return isWorkedOut(two) && (!isWorkedOut(one) || two.costPerYear < one.costPerYear);
              }),
          ),
        );
        const { called: recommended } = decisionOf(assumptions, size);
        for (const name of dominated) {
          expect(shares.get(name)).toBe(0);
          expect(recommended).not.toBe(name);
        }
      }),
      { numRuns: 25, seed: 5 },
    );
  });

  it.each<[ChoiceName, CostInput]>([
    ['repair', 'repairPrice'],
    ['replace', 'replacementPrice'],
    ['top up', 'visitPrice'],
  ])('never turns to %s because its own %s went up, nor does its share grow', (name, input) => {
    fc.assert(
      fc.property(units, between(1.01, 1.6), (assumptions, factor) => {
        const range = assumptions[input];
        if (range === undefined) return;
        const dearer = {
          ...assumptions,
          [input]: { low: range.low * factor, likely: range.likely * factor, high: range.high * factor },
        };
        const share = (of: Assumptions): number =>
          sampleChoices(of, size).find((each) => each.name === name)?.bestIn ?? 0;
        // A new unit is also what every other choice ends in: what a dearer one adds to them is less than to itself.
        expect(share(dearer)).toBeLessThanOrEqual(share(assumptions) + 1e-12);
        if (wordOf(dearer) === titleOf[name]) expect(wordOf(assumptions)).not.toBe('Too close to call');
      }),
      { numRuns: 25, seed: 11 },
    );
  });

  it('never leaves a leak alone more often because it became larger', () => {
    fc.assert(
      fc.property(units, between(1.01, 1.6), (assumptions, factor) => {
        const { low, likely, high } = assumptions.ouncesAYear ?? { low: 0, likely: 0, high: 0 };
        const larger = {
          ...assumptions,
          ouncesAYear: { low: low * factor, likely: likely * factor, high: high * factor },
        };
        // Between the two that leave the leak, topping up gains from what running down loses.
        const share = (of: Assumptions): number =>
          sampleChoices(of, size)
            .filter(({ name }) => name === 'top up' || name === 'do nothing')
            .reduce((sum, { bestIn }) => sum + bestIn, 0);
        expect(share(larger)).toBeLessThanOrEqual(share(assumptions) + 1e-12);
      }),
      { numRuns: 25, seed: 13 },
    );
  });

  it('repeats to the last digit for one seed, and shares add up to one', () => {
    fc.assert(
      fc.property(units, (assumptions) => {
        const drawn = sampleChoices(assumptions, size);
        expect(sampleChoices(assumptions, size)).toEqual(drawn);
        expect(drawn.reduce((sum, { bestIn }) => sum + bestIn, 0)).toBeCloseTo(1, 12);
      }),
      { numRuns: 10, seed: 3 },
    );
  });

  it('offers a burning gas neither a top-up nor to be left leaking', () => {
    fc.assert(
      fc.property(units, (assumptions) => {
        if ((assumptions.flammability?.likely ?? 1) < 2) return;
        const { choices, decision } = offerOf(assumptions, size);
        for (const title of ['Top up', 'Do nothing'])
          expect(choices.find((choice) => choice.title === title)?.offered).toBe('no');
        expect(['top up', 'do nothing']).not.toContain(decision.called);
      }),
      { numRuns: 20, seed: 2 },
    );
  });
});

describe('inputs that move together', () => {
  const assumptions = inTradeUnits({
    capacity: 13_500,
    efficiency: 8.5,
    hours: 600,
    powerPrice: 0.17,
    nameplate: 14,
    ouncesAYear: [2, 4, 7],
    chargeNow: [60, 80, 95],
    visitsAYear: [1, 2, 4],
    visitPrice: 95,
    refrigerantPrice: 2.6,
    repairPrice: 460,
    replacementPrice: 1350,
    newLife: [8, 12, 15],
    age: 5,
    discountRate: 8,
  });

  it('are drawn together: more loss, more calls, less charge; longer life, more years left', () => {
    for (const values of outcomes(assumptions, { seed: 1, draws: 200 })) {
      const place = (name: CostInput): number => {
        const range = assumptions[name];
        const value = values[name] ?? NaN;
        if (range === undefined) return NaN;
        return value < range.likely
          ? (value - range.likely) / (range.likely - range.low)
          : (value - range.likely) / (range.high - range.likely);
      };
      expect(place('visitsAYear')).toBeCloseTo(place('ouncesAYear'), 9);
      expect(place('chargeNow')).toBeCloseTo(-place('ouncesAYear'), 9);
      expect(place('yearsLeft')).toBeCloseTo(place('newLife'), 9);
    }
  });

  it('stay inside their ranges, and spread as the triangle over them does', () => {
    const drawn = [...outcomes(assumptions, { seed: 1, draws: 4000 })].map(
      ({ ouncesAYear = 0 }) => ouncesAYear,
    );
    const { low = 0, likely = 0, high = 0 } = assumptions.ouncesAYear ?? {};
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(low);
    expect(Math.max(...drawn)).toBeLessThanOrEqual(high);
    // Mean (a + b + c) / 3 and variance of the triangular distribution; four standard errors of the mean.
    const mean = drawn.reduce((sum, value) => sum + value, 0) / drawn.length;
    const variance = (low ** 2 + likely ** 2 + high ** 2 - low * likely - low * high - likely * high) / 18;
    expect(Math.abs(mean - (low + likely + high) / 3)).toBeLessThan(4 * Math.sqrt(variance / drawn.length));
    // Likely value of everything is among what is left at its likely place.
    expect(likelyValues(assumptions).ouncesAYear).toBe(likely);
  });
});
