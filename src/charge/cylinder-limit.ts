import { CalcError } from '../errors.ts';
import { bisect } from '../numerics/bisect.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import { saturatedLiquidDensity } from '../refrigerants/index.ts';
import { fahrenheitK } from '../units/trade.ts';

/** A pound of water takes 27.737 cubic inches: 49 CFR 173.304a(a)(2), Note 1. */
const waterDensityKgPerM3 = 0.453_592_37 / (27.737 * 0.0254 ** 3);

/** The trade fills to this share of the volume. AHRI Guideline K and the training for 40 CFR 82 Subpart F. */
const fillShare = 0.8;

/** Temperature at which the fill is set, 77 degF. */
const fillTemperatureK = fahrenheitK(77);

/** Up to here the liquid must not fill the cylinder, 55 degC: 49 CFR 173.304(b). */
export const hottestK = 328.15;

/** Largest mass as a share of the water weight: 49 CFR 173.304a(a)(2), Table 1. Other gases are not listed by name. */
const fillingDensities: Readonly<Record<string, number>> = { 'R-22': 1.05, 'R-12': 1.19 };

export interface CylinderFill {
  readonly refrigerant: Refrigerant;
  /** Weight of water that fills the cylinder, stamped WC [kg]. */
  readonly waterCapacityKg: number;
}

export function cylinderVolumeM3(waterCapacityKg: number): number {
  return waterCapacityKg / waterDensityKgPerM3;
}

/**
 * Most refrigerant by the 80 % rule.
 *
 * m = 0.8 x water capacity x liquid density at 77 degF / density of water
 *
 * @returns net mass [kg]
 * @throws CalcError out-of-range for a gas without liquid at 77 degF
 */
export function eightyPercentKg(fill: CylinderFill): number {
  requireLiquidAt(fillTemperatureK, '77 degF', fill.refrigerant);
  const density = saturatedLiquidDensity(fill.refrigerant, fillTemperatureK);
  return fillShare * cylinderVolumeM3(fill.waterCapacityKg) * density;
}

/**
 * Most refrigerant by regulation, where the gas is listed by name.
 *
 * @returns net mass [kg], undefined for a gas without an entry
 * @source 49 CFR 173.304a(a)(2), Table 1
 */
export function regulatoryMaximumKg(fill: CylinderFill): number | undefined {
  const share = fillingDensities[fill.refrigerant.designation];
  return share === undefined ? undefined : share * fill.waterCapacityKg;
}

/**
 * Most refrigerant that leaves vapor space at 131 degF.
 *
 * m < volume x liquid density at 131 degF
 *
 * @returns net mass [kg], undefined where the saturation curve ends below 131 degF
 * @source 49 CFR 173.304(b)
 */
export function liquidFullMassKg(fill: CylinderFill): number | undefined {
  const density = densityOrNothing(fill.refrigerant, hottestK);
  return density === undefined ? undefined : cylinderVolumeM3(fill.waterCapacityKg) * density;
}

/** Net mass [kg] that no fill may exceed: the strictest of the three rules. */
export function netLimitKg(fill: CylinderFill): number {
  const limits = [eightyPercentKg(fill), regulatoryMaximumKg(fill), liquidFullMassKg(fill)];
  return Math.min(...limits.filter((limit) => limit !== undefined));
}

/**
 * Temperature at which a fill grows to the whole volume; beyond it the pressure bursts the cylinder.
 *
 * liquid density (T) = m / volume, the vapor neglected
 *
 * @returns temperature [K]
 * @throws CalcError out-of-range when it lies above the end of the saturation curve
 */
export function liquidFullTemperatureK(fill: CylinderFill & { readonly netKg: number }): number {
  const wanted = fill.netKg / cylinderVolumeM3(fill.waterCapacityKg);
  const step = 0.5;
  let low = 233.15;
  if (densityAt(fill.refrigerant, low) < wanted) {
    throw new CalcError('the cylinder would be full of liquid at any usual temperature', {
      code: 'out-of-range',
      parameter: 'gross',
      limit: 'the net limit of the cylinder',
    });
  }
  for (;;) {
    const high = low + step;
    const density = densityOrNothing(fill.refrigerant, high);
    if (density === undefined) break;
    if (density < wanted) {
      const excess = (temperatureK: number): number => densityAt(fill.refrigerant, temperatureK) - wanted;
      return bisect(excess, { low, high, tolerance: 1e-6 });
    }
    low = high;
  }
  throw new CalcError('the cylinder does not fill up with liquid below the end of the saturation curve', {
    code: 'not-available',
    parameter: 'refrigerant',
    received: fill.refrigerant.designation,
  });
}

function densityAt(refrigerant: Refrigerant, temperatureK: number): number {
  return saturatedLiquidDensity(refrigerant, temperatureK);
}

function densityOrNothing(refrigerant: Refrigerant, temperatureK: number): number | undefined {
  try {
    return densityAt(refrigerant, temperatureK);
  } catch (error) {
    if (error instanceof CalcError && error.code === 'out-of-range') return undefined;
    throw error;
  }
}

/** Rules for liquids say nothing about a gas above its critical temperature. @throws CalcError out-of-range, parameter refrigerant */
export function requireLiquidAt(temperatureK: number, spelled: string, refrigerant: Refrigerant): void {
  if (temperatureK <= refrigerant.saturation.highestTemperatureK) return;
  throw new CalcError(
    `refrigerant ${refrigerant.designation} is no liquid at ${spelled}: the limit of a cylinder cannot be worked out`,
    {
      code: 'out-of-range',
      parameter: 'refrigerant',
      received: refrigerant.designation,
      limit: `a refrigerant that is liquid at ${spelled}`,
    },
  );
}
