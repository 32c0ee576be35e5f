import { CalcError } from '../errors.ts';
import { fahrenheitDifferenceK } from '../units/trade.ts';
import { targetSplitRows } from './target-split-table.ts';

const dryBulbs = { lowest: 70, highest: 84 };
const highestWetBulb = 76;

/** By how much a measured split may differ from the target. Source: California RA3.2.2.7 (2008). */
export const splitToleranceK = {
  installer: fahrenheitDifferenceK(3),
  verifier: fahrenheitDifferenceK(4),
} as const;

/**
 * Return less supply air that a unit with the right airflow gives: bilinear between the points of the published table.
 *
 * @returns [K]
 * @throws CalcError out-of-range outside the table; refused when the wet bulb is above the dry bulb
 * @source California 2008 Residential Appendices, Table RA3.2-3, values from memory
 */
export function targetSplitK(air: {
  readonly returnTemperatureK: number;
  readonly returnWetBulbK: number;
}): number {
  const dryBulb = inFahrenheit(air.returnTemperatureK);
  const wetBulb = inFahrenheit(air.returnWetBulbK);
  refuseWetBulbAbove(air);
  if (dryBulb < dryBulbs.lowest - 1e-9 || dryBulb > dryBulbs.highest + 1e-9) {
    throw outside('return_temperature', dryBulb, '70 to 84 degF');
  }
  const lower = Math.min(Math.max(Math.floor(dryBulb), dryBulbs.lowest), dryBulbs.highest - 1);
  const share = dryBulb - lower;
  const low = alongRow(lower, wetBulb);
  const high = alongRow(lower + 1, wetBulb);
  // On a row of the table the other row has no weight, so its gaps do not matter.
  if (share < 1e-9 && low !== undefined) return fahrenheitDifferenceK(low);
  if (share > 1 - 1e-9 && high !== undefined) return fahrenheitDifferenceK(high);
  if (low === undefined || high === undefined) {
    throw outside('return_wet_bulb', wetBulb, 'the published table for this dry bulb, up to 76 degF');
  }
  return fahrenheitDifferenceK(low + share * (high - low));
}

/** The target, or undefined where the table has none. @throws CalcError refused */
export function targetSplitIfAny(air: Parameters<typeof targetSplitK>[0]): number | undefined {
  try {
    return targetSplitK(air);
  } catch (error) {
    if (error instanceof CalcError && error.code === 'out-of-range') return undefined;
    throw error;
  }
}

/** @throws CalcError refused: evaporation only cools */
export function refuseWetBulbAbove(air: {
  readonly returnTemperatureK: number;
  readonly returnWetBulbK: number;
}): void {
  if (air.returnWetBulbK <= air.returnTemperatureK + 1e-9) return;
  throw new CalcError('return_wet_bulb cannot be above return_temperature', {
    code: 'refused',
    parameter: 'return_wet_bulb',
    received: `${inFahrenheit(air.returnWetBulbK).toFixed(1)} degF`,
    limit: `at most the dry bulb, ${inFahrenheit(air.returnTemperatureK).toFixed(1)} degF`,
  });
}

function alongRow(dryBulb: number, wetBulb: number): number | undefined {
  const values = targetSplitRows.get(dryBulb) ?? [];
  const first = highestWetBulb - values.length + 1;
  if (wetBulb < first - 1e-9 || wetBulb > highestWetBulb + 1e-9) return undefined;
  const index = Math.min(Math.max(Math.floor(wetBulb - first), 0), values.length - 2);
  const left = values[index];
  const right = values[index + 1];
  if (left === undefined || right === undefined) return undefined;
  return left + (wetBulb - first - index) * (right - left);
}

/** Rounded where conversion leaves crumbs, so that a whole degree stays one. */
function inFahrenheit(kelvin: number): number {
  return Number(((kelvin * 9) / 5 - 459.67).toFixed(9));
}

function outside(parameter: string, received: number, limit: string): CalcError {
  return new CalcError(`${parameter} must be in ${limit}; received ${received.toFixed(1)} degF`, {
    code: 'out-of-range',
    parameter,
    received: `${received.toFixed(1)} degF`,
    limit,
  });
}
