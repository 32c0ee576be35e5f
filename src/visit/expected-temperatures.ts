import { fahrenheitDifferenceK, fahrenheitK } from '../units/trade.ts';

/** Return air above evaporator saturation, for coils at about 400 cfm a ton. Common practice, no source. */
export const evaporatorDifferenceK = fahrenheitDifferenceK(35);

/** By how much a healthy unit may lie beside it. Common practice, no source. */
export const evaporatorBandK = fahrenheitDifferenceK(5);

/** Condensing saturation above outdoor air. Common practice, no source: 20 to 30 degF, high-efficiency units lowest. */
export const condenserDifferenceK = fahrenheitDifferenceK(25);

export const condenserBandK = fahrenheitDifferenceK(5);

/** Above it the space is still being pulled down and no coil rule holds. Common practice, no source. */
export const highestReturnK = fahrenheitK(95);

/** Outdoor air for which the usual difference holds: the rating point of air conditioners. */
const ratingOutdoorK = fahrenheitK(95);

/**
 * Fall of the evaporator per degree of cooler outdoor air: less head pressure, less flow through the same tube.
 * Source: a maker's normal suction pressures, R-410A, 137 psig at 75 to 150 psig at 105 degF (LRP14AC page 23, table 10).
 */
const evaporatorPerOutdoor = 1 / 6;

/**
 * Evaporator saturation to expect: return air less the usual difference, less a sixth of what the weather lacks to 95 degF.
 *
 * @param input - the outdoor air moves the figure only when it is given
 * @returns [K]
 */
export function expectedEvaporatorK(input: {
  readonly returnTemperatureK: number;
  readonly differenceK: number;
  readonly outdoorTemperatureK?: number | undefined;
}): number {
  const { returnTemperatureK, differenceK, outdoorTemperatureK = ratingOutdoorK } = input;
  return returnTemperatureK - differenceK + (outdoorTemperatureK - ratingOutdoorK) * evaporatorPerOutdoor;
}

/** Condensing saturation to expect: outdoor air plus the usual difference [K]. */
export function expectedCondensingK(input: {
  readonly outdoorTemperatureK: number;
  readonly differenceK: number;
}): number {
  return input.outdoorTemperatureK + input.differenceK;
}
