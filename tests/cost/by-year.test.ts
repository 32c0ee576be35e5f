import { describe, expect, it } from 'vitest';
import { costChoices, isWorkedOut, likelyValues, paidByYear } from '../../src/cost/index.ts';
import { inTradeUnits } from './trade-assumptions.ts';

const unit = {
  capacity: 12_000,
  efficiency: 10,
  newEfficiency: 12,
  hours: 500,
  powerPrice: 0.2,
  nameplate: 15,
  leakRate: 20,
  visitPrice: 90,
  refrigerantPrice: 3,
  repairPrice: 400,
  replacementPrice: 1000,
  newLife: 4,
  yearsLeft: 2.5,
  discountRate: 0,
} as const;

/** Definition; hand arithmetic in the comments. A cent is the tolerance: the hand figures are rounded. */
const cents = (figures: readonly number[]): unknown[] =>
  figures.map((money): unknown => expect.closeTo(money, 9));

describe('money paid by the end of a year', () => {
  const paid = paidByYear(inTradeUnits(unit), 7).map((row) => row.paid);

  it('replacing: the price today and again after the life of a new unit', () => {
    // 12000 / 12 x 500 / 1000 x 0.2 = 100 a year; new units today and after 4 years.
    expect(paid.map(({ replace }) => replace)).toEqual(
      cents([1000, 1100, 1200, 1300, 2400, 2500, 2600, 2700]),
    );
  });

  it('repairing: the price, the present unit while it lasts, then new ones', () => {
    // 120 a year for 2.5 years; then 1000 and 100 a year; the next one after 6.5 years.
    expect(paid.map(({ repair }) => repair)).toEqual(
      cents([400, 520, 640, 400 + 300 + 1000 + 50, 1850, 1950, 2050, 3150]),
    );
  });

  it('topping up: calls and ounces beside the power', () => {
    // Calls 20 / 15 x 90 = 120; ounces 3 x 3 = 9; power 120 / (1 - 5 % x 7.5 / 15) = 123.077. Together 252.077 a year.
    expect(paid[1]?.['top up']).toBeCloseTo(252.077, 2);
    expect(paid[2]?.['top up']).toBeCloseTo(504.154, 2);
  });

  it('without discounting it is the present cost as long as the present unit lives', () => {
    const whole = inTradeUnits({ ...unit, yearsLeft: 3 });
    const choices = costChoices(likelyValues(whole));
    const beforeBuying = paidByYear(whole, 3)[3]?.paid;
    for (const name of ['repair', 'top up'] as const) {
      const choice = choices[name];
      if (!isWorkedOut(choice)) throw new Error(choice.missing);
      expect(beforeBuying?.[name]).toBeCloseTo(choice.presentCost + 1000, 9);
    }
  });

  it('a choice that cannot be worked out has no line', () => {
    const told = Object.entries(unit).filter(([name]) => name !== 'leakRate');
    const [today] = paidByYear(inTradeUnits(Object.fromEntries(told)), 1);
    expect(today?.paid['top up']).toBeUndefined();
    expect(today?.paid['do nothing']).toBeUndefined();
    expect(today?.paid.repair).toBe(400);
  });
});
