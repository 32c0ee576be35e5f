import { CalcError } from '../errors.ts';
import type { Refrigerant } from './refrigerant.ts';

export type SaturationCurve = 'dew' | 'bubble';

/** Rounding in a unit conversion must not push a value over the end of a table that it sits on. */
const rounding = 1e-9;

/** Both unit systems, because these messages are read as they are. */
function pressureText(pascal: number): string {
  return `${(pascal / 1e6).toPrecision(4)} MPa abs (${(pascal / 6894.757293168).toPrecision(4)} psia)`;
}

/** A temperature in a message, in both scales. */
export function temperatureText(kelvin: number): string {
  return `${(kelvin - 273.15).toFixed(1)} degC (${(kelvin * 1.8 - 459.67).toFixed(1)} degF)`;
}

function outOfRange(parameter: 'pressure' | 'temperature', message: string): CalcError {
  return new CalcError(message, { code: 'out-of-range', parameter });
}

function checkPressure(refrigerant: Refrigerant, pressurePa: number, curve: SaturationCurve): void {
  const fit = refrigerant.saturation;
  const lowest = fit.lowestPressurePa(curve);
  const highest = fit.highestPressurePa(curve);
  if (pressurePa >= lowest * (1 - rounding) && pressurePa <= highest * (1 + rounding)) return;
  const name = refrigerant.designation;
  if (!(pressurePa > 0))
    throw outOfRange('pressure', 'pressure is at or below absolute zero (a full vacuum)');
  if (pressurePa < lowest) {
    throw outOfRange(
      'pressure',
      `pressure is below the range of the ${name} table, which starts at ${pressureText(lowest)}`,
    );
  }
  const critical = refrigerant.criticalPressurePa;
  if (pressurePa >= critical) {
    throw outOfRange(
      'pressure',
      `pressure is above the critical pressure of ${name}, ${pressureText(critical)}`,
    );
  }
  throw outOfRange(
    'pressure',
    `pressure is above the range of the ${name} table, which ends at ${pressureText(highest)}, just below the critical pressure`,
  );
}

function checkTemperature(refrigerant: Refrigerant, temperatureK: number): void {
  const { lowestTemperatureK, highestTemperatureK } = refrigerant.saturation;
  if (
    temperatureK >= lowestTemperatureK * (1 - rounding) &&
    temperatureK <= highestTemperatureK * (1 + rounding)
  ) {
    return;
  }
  const name = refrigerant.designation;
  if (!(temperatureK > 0)) throw outOfRange('temperature', 'temperature is at or below absolute zero');
  if (temperatureK < lowestTemperatureK) {
    throw outOfRange(
      'temperature',
      `temperature is below the range of the ${name} table, which starts at ${temperatureText(lowestTemperatureK)}`,
    );
  }
  const critical = refrigerant.criticalTemperatureK;
  if (temperatureK >= critical) {
    throw outOfRange(
      'temperature',
      `temperature is above the critical temperature of ${name}, ${temperatureText(critical)}: no liquid can exist`,
    );
  }
  throw outOfRange(
    'temperature',
    `temperature is above the range of the ${name} table, which ends at ${temperatureText(highestTemperatureK)}, just below the critical temperature`,
  );
}

/**
 * Saturation temperature at a pressure, on the dew or the bubble curve.
 * Newton on the derived series of ln p(T); within 0.001 K of the solved equation of state.
 * @param pressurePa - absolute [Pa]
 * @returns [K]
 * @throws CalcError out-of-range: at or below absolute zero, below or above the table, above critical
 */
export function saturationTemperatureK(
  refrigerant: Refrigerant,
  pressurePa: number,
  curve: SaturationCurve,
): number {
  checkPressure(refrigerant, pressurePa, curve);
  return refrigerant.saturation.temperatureK(pressurePa, curve);
}

/**
 * Saturation pressure at a temperature, on the dew or the bubble curve.
 * @returns absolute [Pa]
 * @throws CalcError out-of-range: below or above the table, above critical
 */
export function saturationPressurePa(
  refrigerant: Refrigerant,
  temperatureK: number,
  curve: SaturationCurve,
): number {
  checkTemperature(refrigerant, temperatureK);
  return refrigerant.saturation.pressurePa(temperatureK, curve);
}

/** Density of the liquid at its bubble point [kg/m3]. @throws CalcError out-of-range */
export function saturatedLiquidDensity(refrigerant: Refrigerant, temperatureK: number): number {
  checkTemperature(refrigerant, temperatureK);
  return refrigerant.saturation.liquidDensity(temperatureK);
}

/** Density of the vapor at its dew point [kg/m3]. @throws CalcError out-of-range */
export function saturatedVaporDensity(refrigerant: Refrigerant, temperatureK: number): number {
  checkTemperature(refrigerant, temperatureK);
  return refrigerant.saturation.vaporDensity(temperatureK);
}

/**
 * Enthalpy of vapor at its dew point less that of liquid at its bubble point, both at this temperature [J/kg].
 * For a blend the two belong to slightly different pressures.
 * @throws CalcError out-of-range
 */
export function latentHeat(refrigerant: Refrigerant, temperatureK: number): number {
  checkTemperature(refrigerant, temperatureK);
  return refrigerant.saturation.latentHeat(temperatureK);
}

/**
 * Glide: dew temperature less bubble temperature at one pressure [K]; zero for a single substance.
 * @param pressurePa - absolute [Pa]
 * @throws CalcError out-of-range
 */
export function glideK(refrigerant: Refrigerant, pressurePa: number): number {
  return (
    saturationTemperatureK(refrigerant, pressurePa, 'dew') -
    saturationTemperatureK(refrigerant, pressurePa, 'bubble')
  );
}
