import { describe, expect, it } from 'vitest';
import type { Assumptions, Choice, ChoiceName } from '../../src/cost/index.ts';
import {
  breakEvenRepairPrice,
  compareChoices,
  costChoices,
  decide,
  isWorkedOut,
  likelyValues,
} from '../../src/cost/index.ts';
import { inUsUnits } from '../access/verdict-text.ts';
import { inTradeUnits } from './trade-assumptions.ts';

/*
 * Five cases worked by hand with compound-interest tables. A/P is the yearly payment per money of price, P/A its inverse;
 * the figures beside them are the tables', to six digits. A cent is the tolerance: hand figures are rounded.
 */

function costOf(assumptions: Assumptions, name: ChoiceName): Choice {
  const choice = costChoices(likelyValues(assumptions))[name];
  if (!isWorkedOut(choice)) throw new Error(`${name}: ${choice.missing}`);
  return choice;
}

const yearly = (assumptions: Assumptions, name: ChoiceName) => costOf(assumptions, name).costPerYear;

describe('case 1: new unit, small leak', () => {
  // 13500 Btu/h, EER 9.5, two years old, 14 oz, loses 0.7 oz a year. A new one would be no better.
  const unit = inTradeUnits({
    capacity: 13_500,
    efficiency: 9.5,
    hours: 500,
    powerPrice: 0.15,
    nameplate: 14,
    leakRate: 5,
    visitPrice: 95,
    refrigerantPrice: 2.75,
    repairPrice: 450,
    replacementPrice: 1300,
    newLife: 12,
    yearsLeft: 10,
    discountRate: 8,
  });

  it('tops up: one call in three years is cheaper than opening the circuit', () => {
    // Power at full charge 13500 / 9.5 x 500 / 1000 x 0.15 = 106.579.
    // Topped up: calls 5/15 x 95 = 31.667; ounces 0.7 x 2.75 = 1.925; charge swings 85 to 100 %, 7.5 % short on average,
    //   loses 5 % x 7.5/15 = 2.5 %, power 106.579 / 0.975 = 109.312. Together 142.903.
    expect(yearly(unit, 'top up')).toBeCloseTo(142.903, 2);
    // Repaired: 450 x A/P(8 %, 10) 0.149029 = 67.063, and 106.579. Together 173.642.
    expect(yearly(unit, 'repair')).toBeCloseTo(173.642, 2);
    // Replaced: 1300 x A/P(8 %, 12) 0.132695 = 172.504, and 106.579. Together 279.082.
    expect(yearly(unit, 'replace')).toBeCloseTo(279.082, 2);
    expect(inUsUnits(decide(unit))).toMatch(/^Top up: 140 a year against 170 to repair/);
  });

  it('lets it run down for one season at most, then a new unit is due', () => {
    // From 85 to 80 % takes 1 year. Average 82.5 %: 5 % x 17.5/15 = 5.833 % lost, 106.579 / 0.941667 = 113.181.
    // Then nine years at 279.082. Present: 113.181 x 0.925926 + 279.082 x (6.710081 - 0.925926) = 1719.05; x A/P 256.189.
    expect(costOf(unit, 'do nothing').lastsYears).toBeCloseTo(1, 9);
    expect(yearly(unit, 'do nothing')).toBeCloseTo(256.19, 1);
  });

  it('pays for a repair up to what topping up costs more than running full', () => {
    // (142.903 - 106.579) x P/A(8 %, 10) 6.710081 = 243.74
    expect(breakEvenRepairPrice(likelyValues(unit))).toBeCloseTo(243.74, 1);
  });
});

describe('case 2: old unit, growing leak', () => {
  // Four years left, loses 40 % of 16 oz this year and a quarter more each year; repairs on it hold three times in five.
  const unit = inTradeUnits({
    capacity: 13_500,
    efficiency: 8,
    newEfficiency: 10,
    hours: 600,
    powerPrice: 0.15,
    nameplate: 16,
    leakRate: 40,
    leakGrowth: 25,
    visitPrice: 110,
    refrigerantPrice: 3,
    repairPrice: 600,
    chanceOfHolding: 60,
    replacementPrice: 1200,
    newLife: 12,
    yearsLeft: 4,
    discountRate: 8,
  });

  it('replaces: calls grow past everything else', () => {
    // Power 13500 / 8 x 0.6 x 0.15 = 151.875 full; topped up / 0.975 = 155.769; new 121.5.
    // First year's calls 40/15 x 110 = 293.333 and 6.4 oz x 3 = 19.2: 312.533; then x 1.25: 390.667, 488.333, 610.417.
    // With power: 468.303, 546.436, 644.103, 766.186; P/F 0.925926, 0.857339, 0.793832, 0.735030: present 1976.55.
    expect(costOf(unit, 'top up').presentCost).toBeCloseTo(1976.56, 1);
    // Over P/A(8 %, 4) 3.312127: 596.76 a year.
    expect(yearly(unit, 'top up')).toBeCloseTo(596.76, 1);
    // Replaced: 1200 x 0.132695 = 159.234, and 121.5. Together 280.734.
    expect(yearly(unit, 'replace')).toBeCloseTo(280.734, 2);
    // A repair that fails goes on as a new unit, 280.734 x 3.312127 = 929.83, which is less than topping up.
    // 600 + 0.6 x 151.875 x 3.312127 + 0.4 x 929.83 = 1273.75; over 3.312127: 384.57 a year.
    expect(yearly(unit, 'repair')).toBeCloseTo(384.57, 1);
    expect(inUsUnits(decide(unit))).toMatch(/^Replace: 280 a year against 380 to repair/);
  });

  it('does not count running down as a choice: it stops within weeks', () => {
    // From 85 to 80 % at 40 % a year: an eighth of a year.
    expect(costChoices(likelyValues(unit))['do nothing']).toMatchObject({
      missing: 'stops cooling within a year, which is replacing',
    });
  });

  it('would pay at most what the even chance leaves', () => {
    // 929.83 - (0.6 x 503.03 + 0.4 x 929.83) = 0.6 x (929.83 - 503.03) = 256.08
    expect(breakEvenRepairPrice(likelyValues(unit))).toBeCloseTo(256.08, 1);
  });
});

describe('case 3: high power price', () => {
  const unit = inTradeUnits({
    capacity: 12_000,
    efficiency: 7,
    newEfficiency: 11,
    hours: 1200,
    powerPrice: 0.45,
    nameplate: 12,
    leakRate: 20,
    visitPrice: 80,
    refrigerantPrice: 2.5,
    repairPrice: 300,
    replacementPrice: 1100,
    newLife: 10,
    yearsLeft: 5,
    discountRate: 6,
  });

  it('replaces: power alone pays for the new unit', () => {
    // Power 12000 / 7 x 1.2 x 0.45 = 925.714 now, 12000 / 11 x 1.2 x 0.45 = 589.091 new.
    // Replaced: 1100 x A/P(6 %, 10) 0.135868 = 149.455, and 589.091. Together 738.546.
    expect(yearly(unit, 'replace')).toBeCloseTo(738.546, 2);
    // Repaired: 300 x A/P(6 %, 5) 0.237396 = 71.219, and 925.714. Together 996.933.
    expect(yearly(unit, 'repair')).toBeCloseTo(996.933, 2);
    // Topped up: 20/15 x 80 = 106.667, 2.4 oz x 2.5 = 6, 925.714 / 0.975 = 949.451. Together 1062.117.
    expect(yearly(unit, 'top up')).toBeCloseTo(1062.117, 2);
    expect(inUsUnits(decide(unit))).toMatch(/^Replace: 740 a year against 1000 to repair/);
  });

  it('pays no repair at all: even for nothing the old unit runs dearer', () => {
    expect(() => breakEvenRepairPrice(likelyValues(unit))).toThrowError(
      /no repair price is worth paying: to replace costs less/,
    );
  });

  it('pays the new unit back within the years the old one has', () => {
    const replace = compareChoices(unit).find(({ name }) => name === 'replace');
    if (!replace || 'missing' in replace) throw new Error('replacing is always worked out');
    // Saving against topping up 1062.117 - 589.091 = 473.026: 1100 / 473.026 = 2.325 years.
    expect(replace.simplePayback).toBeCloseTo(2.325, 3);
    // -ln(1 - 1100 x 0.06 / 473.026) / ln 1.06 = 2.580 years.
    expect(replace.discountedPayback).toBeCloseTo(2.58, 2);
    // (1062.117 - 738.546) x P/A(6 %, 5) 4.212364 = 1363.00
    expect(replace.netPresentValue).toBeCloseTo(1363, 0);
  });
});

describe('case 4: short season', () => {
  // A trailer used 150 hours a year.
  const unit = inTradeUnits({
    capacity: 13_500,
    efficiency: 8,
    newEfficiency: 10,
    hours: 150,
    powerPrice: 0.12,
    nameplate: 14,
    leakRate: 15,
    visitPrice: 95,
    refrigerantPrice: 2.75,
    repairPrice: 350,
    replacementPrice: 1300,
    newLife: 12,
    yearsLeft: 6,
    discountRate: 8,
  });

  it('repairs: too few hours for a new unit to earn anything', () => {
    // Power 13500 / 8 x 0.15 x 0.12 = 30.375; new 24.3.
    // Repaired: 350 x A/P(8 %, 6) 0.216315 = 75.710, and 30.375. Together 106.085.
    expect(yearly(unit, 'repair')).toBeCloseTo(106.085, 2);
    // Topped up: one call 95, 2.1 oz x 2.75 = 5.775, 30.375 / 0.975 = 31.154. Together 131.929.
    expect(yearly(unit, 'top up')).toBeCloseTo(131.929, 2);
    // Replaced: 1300 x A/P(8 %, 12) 0.132695 = 172.504, and 24.3. Together 196.804.
    expect(yearly(unit, 'replace')).toBeCloseTo(196.804, 2);
    expect(inUsUnits(decide(unit))).toMatch(/^Repair: 110 a year against 130 to top up/);
  });

  it('is worth a repair up to 469', () => {
    // (131.929 - 30.375) x P/A(8 %, 6) 4.622880 = 469.47
    expect(breakEvenRepairPrice(likelyValues(unit))).toBeCloseTo(469.47, 1);
    // Against replacing alone: (196.804 - 30.375) x 4.622880 = 769.38
    expect(breakEvenRepairPrice(likelyValues(unit), 'replace')).toBeCloseTo(769.38, 1);
  });
});

describe('case 5: a repair that may not hold', () => {
  const told = {
    capacity: 13_500,
    efficiency: 8.5,
    newEfficiency: 9.5,
    hours: 600,
    powerPrice: 0.17,
    nameplate: 14,
    leakRate: 39.1,
    visitPrice: 95,
    refrigerantPrice: 2.75,
    repairPrice: 450,
    replacementPrice: 1300,
    newLife: 10,
    yearsLeft: 3,
    discountRate: 8,
  };

  it('costs what it costs when it holds, and the price on top of the next best when not', () => {
    // Running full 162.00; replacing 338.685 a year; topping up 247.633 + 15.054 + 166.154 = 428.841, so a failed repair
    // goes on as a replacement. With chance p: 450 x 0.388034 + 162 p + 338.685 (1 - p) = 513.300 - 176.685 p.
    for (const [chance, expected] of [
      [100, 336.615],
      [70, 389.62],
      [50, 424.957],
      [0, 513.3],
    ] as const) {
      expect(yearly(inTradeUnits({ ...told, chanceOfHolding: chance }), 'repair')).toBeCloseTo(expected, 1);
    }
  });

  it('replaces when the chance is known to be 70 %', () => {
    const unit = inTradeUnits({ ...told, chanceOfHolding: 70 });
    expect(inUsUnits(decide(unit))).toMatch(/^Replace: 340 a year against 390 to repair/);
  });

  it('replaces although the chance may be anything from 50 to 100 %: only above 98.8 % does the repair cost less', () => {
    // 513.300 - 176.685 p = 338.685 at p = 174.615 / 176.685 = 98.8 %. Of the triangle over 50, 70 and 100 the share above it is
    // (100 - 98.8)² / ((100 - 50) (100 - 70)) = 0.1 %.
    const unit = inTradeUnits({ ...told, chanceOfHolding: [50, 70, 100] });
    expect(inUsUnits(decide(unit))).toMatch(
      /^Replace: 340 a year against 390 to repair; least in (99|100) of 100 outcomes/,
    );
  });

  it('is too close to call about the price at which both cost the same, and says which price decides', () => {
    // (338.69 - 162.00) / 0.388034 = 455.34.
    const unit = inTradeUnits({ ...told, leakRate: 0.0001, repairPrice: [350, 430, 600] });
    const { leakRate, ...noLeak } = unit;
    expect(leakRate).toBeDefined();
    expect(inUsUnits(decide(noLeak))).toMatch(
      /^Too close to call: repair 330 a year, .* repair price decides: replace above 455\.34; a firm price for the repair would tell/,
    );
  });
});

describe('case 6: a choice that is none at the likely values', () => {
  // At 85 % now, usable down to 50 %: 35 points to lose. A leak of 40 % a year stops the cooling within the year, so at the
  // likely values there is nothing to weigh but 1200 over ten years without interest, 120, and the new unit's electricity
  // 13500 / 10 x 600 / 1000 x 0.15 = 121.50: 241.50 a year.
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
    repairPrice: 800,
    replacementPrice: 1200,
    newLife: 10,
    yearsLeft: 2,
    discountRate: 0,
  };

  it('keeps the likely one from being called when it is a choice in many outcomes', () => {
    // Losing 20 % a year the unit runs 1.75 of its 2 years on electricity alone, 142.94 a year at full charge: cheaper.
    // Of the triangle over 20, 40 and 45 a share of (35 - 20)² / (25 x 20) = 45 % lies below 35.
    const unit = inTradeUnits({ ...told, leakRate: [20, 40, 45], usableDownTo: 50 });
    const words = inUsUnits(decide(unit));
    expect(words).toMatch(
      /^Too close to call: replace 240 a year, .* do nothing least in 4[3-7] of 100 outcomes, though at the likely values it stops cooling within a year, which is replacing; /,
    );
    expect(words).toContain('leak rate decides: do nothing below 35.00%/year');
    // 35 % of 14 oz in 60 of 365 days: 0.8 oz.
    expect(words).toContain('more than 0.8 oz missing speaks for replace, less for do nothing');
  });

  it('does not hang on a corner that hardly any outcome reaches', () => {
    // 85 - 60 = 25 and 85 - 52 = 33 points against 32 and 40 % a year: only 33 against 32 lasts a year.
    const unit = inTradeUnits({
      ...told,
      hours: [590, 600, 610],
      leakRate: [32, 40, 45],
      usableDownTo: [52, 60, 65],
    });
    expect(inUsUnits(decide(unit))).toMatch(/^Replace: 240 a year .* least in (9\d|100) of 100 outcomes/);
  });

  it('leaves the answer alone where no combination makes it one', () => {
    // 85 - 53 = 32 points against 34 % a year.
    const unit = inTradeUnits({ ...told, leakRate: [34, 40, 45], usableDownTo: [53, 60, 65] });
    expect(inUsUnits(decide(unit))).toMatch(/^Replace: 240 a year .* least in 100 of 100 outcomes/);
  });

  it('counts a unit that does not cool now, but might at the low end of what is usable', () => {
    // Charge 60 %, usable down to 40 to 65 %: 20 points against 15 % a year last 1.33 years.
    const unit = inTradeUnits({ ...told, leakRate: 15, chargeNow: 60, usableDownTo: [40, 62, 65] });
    expect(inUsUnits(decide(unit))).toMatch(
      /do nothing least in \d+ of 100 outcomes, though at the likely values it does not cool at the charge it has now; .*usable down to decides: do nothing below 45\.0%/,
    );
  });
});
