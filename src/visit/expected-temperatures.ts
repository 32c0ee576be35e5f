import { fahrenheitDifferenceK } from '../units/trade.ts';

/** Return air above evaporator saturation, for coils at about 400 cfm a ton. Common practice, no source. */
export const evaporatorDifferenceK = fahrenheitDifferenceK(35);

/** By how much a healthy unit may lie beside it. Common practice, no source. */
export const evaporatorBandK = fahrenheitDifferenceK(5);

/** Condensing saturation above outdoor air. Common practice, no source: 20 to 30 degF, high-efficiency units lowest. */
export const condenserDifferenceK = fahrenheitDifferenceK(25);

export const condenserBandK = fahrenheitDifferenceK(5);

/** Evaporator saturation to expect: return air less the usual difference [K]. */
export function expectedEvaporatorK(input: {
  readonly returnTemperatureK: number;
  readonly differenceK: number;
}): number {
  return input.returnTemperatureK - input.differenceK;
}

/** Condensing saturation to expect: outdoor air plus the usual difference [K]. */
export function expectedCondensingK(input: {
  readonly outdoorTemperatureK: number;
  readonly differenceK: number;
}): number {
  return input.outdoorTemperatureK + input.differenceK;
}
