import { CalcError } from '../../errors.ts';
import type { Refrigerant } from '../../refrigerants/index.ts';
import { saturationPressurePa } from '../../refrigerants/index.ts';
import { fahrenheitDifferenceK } from '../../units/trade.ts';
import { condenserDifferenceK, evaporatorDifferenceK } from '../expected-temperatures.ts';
import { idealDischargeK, usualEfficiency } from '../ideal-discharge.ts';

const usualSuperheatK = fahrenheitDifferenceK(12);
const outdoorNodesK = [291, 303, 315] as const;
const returnNodesK = [299, 293] as const;

/** Discharge temperature against outdoor air (a parabola through three days) and return air (a line). */
interface Curve {
  readonly middleK: number;
  readonly perOutdoorK: number;
  readonly perOutdoorSquared: number;
  readonly perReturnK: number;
}

/** The ideal cycle takes a millisecond; of each gas it is worked out once. */
const curves = new WeakMap<Refrigerant, Curve | undefined>();

/**
 * Discharge temperature of the ideal cycle of a usual unit in this weather: evaporator 35 degF under return air, condenser
 * 25 degF over outdoor air. It carries what is the gas's own; what units add to it is in the fitted expectations.
 *
 * @returns [K]; undefined for a gas whose cycle cannot be worked out at these temperatures
 * @source first and second law, see idealDischargeK; within 1 K of it from 60 to 120 degF outdoors
 */
export function usualDischargeK(
  refrigerant: Refrigerant,
  air: { readonly outdoorTemperatureK: number; readonly returnTemperatureK: number },
): number | undefined {
  if (!curves.has(refrigerant)) curves.set(refrigerant, curveOf(refrigerant));
  const curve = curves.get(refrigerant);
  if (curve === undefined) return undefined;
  const outdoorK = air.outdoorTemperatureK - outdoorNodesK[1];
  const returnK = air.returnTemperatureK - returnNodesK[0];
  return (
    curve.middleK +
    curve.perOutdoorK * outdoorK +
    curve.perOutdoorSquared * outdoorK ** 2 +
    curve.perReturnK * returnK
  );
}

function curveOf(refrigerant: Refrigerant): Curve | undefined {
  try {
    const [low, middle, high] = outdoorNodesK.map((outdoorK) =>
      cycleK(refrigerant, outdoorK, returnNodesK[0]),
    );
    const cool = cycleK(refrigerant, outdoorNodesK[1], returnNodesK[1]);
    const step = outdoorNodesK[1] - outdoorNodesK[0];
    return {
      middleK: middle!,
      perOutdoorK: (high! - low!) / (2 * step),
      perOutdoorSquared: (high! + low! - 2 * middle!) / (2 * step ** 2),
      perReturnK: (middle! - cool) / (returnNodesK[0] - returnNodesK[1]),
    };
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}

function cycleK(refrigerant: Refrigerant, outdoorTemperatureK: number, returnTemperatureK: number): number {
  const evaporatorK = returnTemperatureK - evaporatorDifferenceK;
  return idealDischargeK({
    refrigerant,
    suctionPa: saturationPressurePa(refrigerant, evaporatorK, 'dew'),
    suctionTemperatureK: evaporatorK + usualSuperheatK,
    dischargePa: saturationPressurePa(refrigerant, outdoorTemperatureK + condenserDifferenceK, 'bubble'),
    efficiency: usualEfficiency,
  });
}
