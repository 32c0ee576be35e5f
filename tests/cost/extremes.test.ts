import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assumptions, ChoiceName, CostInput, Values } from '../../src/cost/index.ts';
import {
  choiceNames,
  costChoices,
  costInputNames,
  isWorkedOut,
  largest,
  likelyValues,
  smallest,
  worstLead,
} from '../../src/cost/index.ts';
import { inTradeUnits } from './trade-assumptions.ts';

/** Every combination of low, likely and high: slow, but beyond doubt. */
function* combinations(assumptions: Assumptions): Generator<Values> {
  const names = costInputNames.filter(
    (name) => assumptions[name] && assumptions[name].low < assumptions[name].high,
  );
  const walk = function* (index: number, values: Values): Generator<Values> {
    const name = names[index];
    if (name === undefined) {
      yield values;
      return;
    }
    const range = assumptions[name];
    if (!range) return;
    for (const value of [range.low, range.likely, range.high])
      yield* walk(index + 1, { ...values, [name]: value });
  };
  yield* walk(0, likelyValues(assumptions));
}

const costOf =
  (name: ChoiceName) =>
  (values: Values): number => {
    const choice = costChoices(values)[name];
    return isWorkedOut(choice) ? choice.costPerYear : 1e12;
  };

const spread = fc.tuple(
  fc.double({ min: 0, max: 0.4, noNaN: true }),
  fc.double({ min: 0, max: 0.6, noNaN: true }),
);

/** What is known exactly of the unit drawn. */
const known = {
  capacity: 13_500,
  efficiency: 8.5,
  newEfficiency: 10,
  hours: 600,
  nameplate: 14,
  efficiencyLoss: 5,
  usableDownTo: 50,
  chanceOfHolding: 80,
  visitPrice: 95,
  refrigerantPrice: 2.75,
  newLife: 11,
} as const;

/** One input held where it is likely. */
function pinned(assumptions: Assumptions, name: CostInput): Partial<Assumptions> {
  const likely = assumptions[name]?.likely ?? 0;
  return { [name]: { low: likely, likely, high: likely } };
}

/** A unit with six inputs that are known within bounds drawn at random. */
const units = fc
  .record({
    leakRate: fc.double({ min: 5, max: 60, noNaN: true }),
    repairPrice: fc.double({ min: 100, max: 800, noNaN: true }),
    yearsLeft: fc.double({ min: 2, max: 8, noNaN: true }),
    powerPrice: fc.double({ min: 0.08, max: 0.5, noNaN: true }),
    replacementPrice: fc.double({ min: 600, max: 2500, noNaN: true }),
    discountRate: fc.double({ min: 1, max: 15, noNaN: true }),
    spreads: fc.array(spread, { minLength: 6, maxLength: 6 }),
  })
  .map(({ spreads, ...likely }) => {
    const told = Object.entries(likely).map(([name, value], index) => {
      const [down, up] = spreads[index] ?? [0, 0];
      return [name, [value * (1 - down), value, value * (1 + up)]] as const;
    });
    return inTradeUnits({
      ...known,
      ...(Object.fromEntries(told) as Partial<Record<CostInput, readonly [number, number, number]>>),
    });
  });

describe('the corner search', () => {
  it('finds the extremes that the enumeration of all combinations finds', () => {
    fc.assert(
      fc.property(units, (assumptions) => {
        const all = [...combinations(assumptions)];
        for (const name of choiceNames) {
          const costs = all.map(costOf(name));
          // A season that ends with the unit's life counts to a billionth, and so do costs on either side of it.
          expect(smallest(assumptions, costOf(name)).value / Math.min(...costs)).toBeCloseTo(1, 8);
          expect(largest(assumptions, costOf(name)).value / Math.max(...costs)).toBeCloseTo(1, 8);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('finds an end that two inputs reach only together: a smaller leak lasts longer, which pays at dear interest', () => {
    const assumptions = inTradeUnits({
      ...known,
      powerPrice: 0.5,
      repairPrice: 800,
      yearsLeft: 8,
      replacementPrice: 756.6,
      leakRate: [4.2858, 7.143, 8.1128],
      discountRate: [10.569, 10.569, 16.9106],
    });
    const doingNothing = costOf('do nothing');
    const least = Math.min(...[...combinations(assumptions)].map(doingNothing));
    const found = smallest(assumptions, doingNothing);
    expect(found.value).toBe(least);
    const alone = (name: CostInput): number =>
      smallest({ ...assumptions, ...pinned(assumptions, name) }, doingNothing).value;
    expect(alone('leakRate')).toBeGreaterThan(least);
    expect(alone('discountRate')).toBeGreaterThan(least);
  });

  it('stops early when told what is enough', () => {
    const assumptions = inTradeUnits({
      capacity: 13_500,
      efficiency: 8.5,
      hours: 600,
      powerPrice: [0.1, 0.17, 0.3],
      repairPrice: [300, 450, 900],
      replacementPrice: 1300,
      newLife: 10,
      yearsLeft: 3,
      discountRate: 8,
    });
    const measured = (stopBelow?: number): { readonly value: number; readonly calls: number } => {
      let calls = 0;
      const lead = (values: Values): number => {
        calls += 1;
        return costOf('replace')(values) - costOf('repair')(values);
      };
      return { value: smallest(assumptions, lead, stopBelow).value, calls };
    };
    const whole = measured();
    const early = measured(0);
    expect(early.value).toBeLessThan(0);
    expect(early.calls).toBeLessThan(whole.calls);
    expect(worstLead(assumptions, 'repair', 'replace', 0)).toBeLessThan(0);
  });
});
