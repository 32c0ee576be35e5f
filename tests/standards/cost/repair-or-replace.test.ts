import { describe, expect, it } from 'vitest';
import {
  breakEvenRepairPrice,
  costChoices,
  decide,
  isWorkedOut,
  likelyValues,
  runCostPerYear,
  topUpCostPerYear,
  visitsPerYear,
} from '../../../src/cost/index.ts';
import type { ChoiceName } from '../../../src/cost/index.ts';
import { inTradeUnits } from '../../cost/trade-assumptions.ts';

const btuPerHourW = 1055.05585262 / 3600;

const told = {
  capacity: 13_500,
  efficiency: 8.5,
  newEfficiency: 9.5,
  hours: 600,
  powerPrice: 0.17,
  repairPrice: 450,
  replacementPrice: 1300,
  newLife: 10,
  yearsLeft: 3,
  discountRate: 8,
};
const unit = inTradeUnits(told);

function yearly(name: ChoiceName): number {
  const choice = costChoices(likelyValues(unit))[name];
  if (!isWorkedOut(choice)) throw new Error(choice.missing);
  return choice.costPerYear;
}

function running(efficiency: number): number {
  return runCostPerYear({
    capacityW: 13_500 * btuPerHourW,
    efficiency: efficiency * btuPerHourW,
    runS: 600 * 3600,
    powerPricePerJ: 0.17 / 3.6e6,
    efficiencyLoss: 0,
  });
}

describe('repair or replace: the reference case', () => {
  it('running 162.00 a year now (13500 / 8.5 x 600 h x 0.17, definition)', () => {
    expect(running(8.5)).toBeCloseTo(162, 6);
  });

  it('FIN-09: the new unit saves 17.05 a year (difference, computed)', () => {
    expect(Math.abs(running(8.5) - running(9.5) - 17.05)).toBeLessThanOrEqual(0.02);
  });

  it('FIN-10: replacing costs 338.69 a year (capital x CRF + running, computed)', () => {
    expect(Math.abs(yearly('replace') - 338.69)).toBeLessThanOrEqual(0.05);
  });

  it('FIN-11: repairing costs 336.62 a year (capital x CRF + running, computed)', () => {
    expect(Math.abs(yearly('repair') - 336.62)).toBeLessThanOrEqual(0.05);
  });

  it('FIN-12: break-even repair price 455.34 ((EAC replace - running repaired) / CRF, computed)', () => {
    expect(Math.abs(breakEvenRepairPrice(likelyValues(unit)) - 455.34)).toBeLessThanOrEqual(0.1);
  });

  it('FIN-13: repair below the break-even, replace above (comparison, computed)', () => {
    const lead = (repairPrice: number): number => {
      const { repair, replace } = costChoices(likelyValues(inTradeUnits({ ...told, repairPrice })));
      if (!isWorkedOut(repair) || !isWorkedOut(replace)) throw new Error('both are worked out');
      return replace.costPerYear - repair.costPerYear;
    };
    expect(lead(455)).toBeGreaterThan(0);
    expect(lead(456)).toBeLessThan(0);
    // The words keep away from the break-even by what costs are rounded to, 10 a year: 10 / 0.388034 = 25.8.
    expect(decide(inTradeUnits({ ...told, repairPrice: 429 })).word).toBe('Repair');
    expect(decide(inTradeUnits({ ...told, repairPrice: 455 })).word).toBe('Too close to call');
    expect(decide(inTradeUnits({ ...told, repairPrice: 482 })).word).toBe('Replace');
  });

  it('FIN-15: topping up again and again costs 247.63 a year (calls = yearly loss / allowed loss, computed)', () => {
    const leak = { leakPerYear: 0.391, refillAt: 0.85 };
    expect(visitsPerYear(leak)).toBeCloseTo(2.6067, 4);
    const cost = topUpCostPerYear({
      ...leak,
      nameplateKg: (14 * 0.45359237) / 16,
      visitPrice: 95,
      refrigerantPricePerKg: 0,
    });
    expect(Math.abs(cost - 247.63)).toBeLessThanOrEqual(0.1);
  });

  it('FIN-16: 4.8 oz at 2.75 an ounce is 13.20 (quantity x price, computed)', () => {
    const ounceKg = 0.45359237 / 16;
    const cost = topUpCostPerYear({
      leakPerYear: 4.8 / 14,
      refillAt: 0.85,
      nameplateKg: 14 * ounceKg,
      visitPrice: 0,
      refrigerantPricePerKg: 2.75 / ounceKg,
    });
    expect(cost).toBeCloseTo(13.2, 9);
  });

  // FIN-03, FIN-05, FIN-07 and FIN-08 are not among the rows; FIN-07 and FIN-08 are the running costs above.
});
