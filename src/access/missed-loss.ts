import type { Refrigerant } from '../refrigerants/index.ts';
import { saturationPressurePa } from '../refrigerants/index.ts';

/** What a standing nitrogen test was: how long, and in how much space. */
export interface TestScope {
  readonly heldS: number;
  /** Gas space of the circuit with hoses and gauges [m3]. */
  readonly freeVolumeM3: number;
  /** What will be inside afterwards; without it any refrigerant, at the test pressure. */
  readonly refrigerant?: Refrigerant | undefined;
}

const gasConstant = 8.314_462_618;

/** No common refrigerant is much heavier: the bound when the gas is not named [kg/mol]. */
const heavyMolarMass = 0.1;

/** Vapor of a refrigerant runs through the same gap this much easier than nitrogen: 17.8 over about 12 uPa s. From memory. */
const thinnerThanNitrogen = 1.5;

/**
 * Refrigerant that leaks in a year through a gap whose nitrogen loss stayed within the doubt of the test.
 *
 * nitrogen: n/t = dp V / (R T t); refrigerant: the same gap, flow by (p1^2 - p2^2) over viscosity, standing at its saturation
 *
 * @param test - doubt of the pressure comparison [Pa], test pressure absolute [Pa], temperature of the unit [K]
 * @returns [kg/s]
 * @throws CalcError out-of-range when the temperature lies off the saturation curve
 * @source ideal gas; laminar flow of a gas through a capillary (EN 1779 conversions, from memory); viscosities from memory
 */
export function missedLossKgPerS(
  test: {
    readonly doubtPa: number;
    readonly testPa: number;
    readonly temperatureK: number;
    readonly atmospherePa: number;
  },
  { heldS, freeVolumeM3, refrigerant }: TestScope,
): number {
  const { doubtPa, testPa, temperatureK, atmospherePa } = test;
  const molPerS = (doubtPa * freeVolumeM3) / (gasConstant * temperatureK * heldS);
  if (refrigerant === undefined) return molPerS * heavyMolarMass * thinnerThanNitrogen;
  const insidePa = saturationPressurePa(refrigerant, temperatureK, 'dew');
  const drive = (pressurePa: number): number => Math.max(0, pressurePa ** 2 - atmospherePa ** 2);
  // A test at hardly more than the air drives nothing and so tells nothing.
  const share = drive(insidePa) / Math.max(drive(testPa), 1);
  return molPerS * refrigerant.molarMassKgPerMol * thinnerThanNitrogen * share;
}
