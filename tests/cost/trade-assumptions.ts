import type { Assumptions, CostInput, Range } from '../../src/cost/index.ts';
import { completeAssumptions } from '../../src/cost/index.ts';

/** An amount, or low, likely and high. */
export type Told = number | readonly [number, number, number];

const btuPerHourW = 1055.05585262 / 3600;
const ounceKg = 0.45359237 / 16;

/** Factors from the units of the trade to SI, by definition; money, years and counts stay. */
const factor: Partial<Record<CostInput, number>> = {
  capacity: btuPerHourW,
  efficiency: btuPerHourW,
  newEfficiency: btuPerHourW,
  hours: 3600,
  powerPrice: 1 / 3.6e6,
  nameplate: ounceKg,
  refrigerantPrice: 1 / ounceKg,
  ouncesAYear: ounceKg / (365 * 86_400),
  leakRate: 0.01,
  leakGrowth: 0.01,
  refillAt: 0.01,
  chargeNow: 0.01,
  efficiencyLoss: 0.01,
  capacityLoss: 0.01,
  coolingMissed: 0.01,
  usableDownTo: 0.01,
  chanceOfHolding: 0.01,
  discountRate: 0.01,
};

/** Assumptions in the units an estimator writes: Btu/h, Btu/Wh, h, /kWh, oz, %. */
export function inTradeUnits(told: Readonly<Partial<Record<CostInput, Told>>>): Assumptions {
  const ranges: Partial<Record<CostInput, Range>> = {};
  for (const [name, value] of Object.entries(told) as [CostInput, Told][]) {
    const [low, likely, high] = typeof value === 'number' ? [value, value, value] : value;
    const by = factor[name] ?? 1;
    ranges[name] = { low: low * by, likely: likely * by, high: high * by };
  }
  return completeAssumptions(ranges);
}
