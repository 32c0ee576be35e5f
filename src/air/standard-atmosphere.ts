import { CalcError } from '../errors.ts';

const seaLevelPressurePa = 101_325;
const seaLevelTemperatureK = 288.15;
const lapseRateKPerM = 0.0065;
const exponent = 5.25588;

/** 1,000 ft below and 15,000 ft above the sea. */
export const lowestElevationM = -304.8;
export const highestElevationM = 4572;

/**
 * Temperature of the standard atmosphere at an elevation, T0 - L h [K].
 *
 * @source U.S. Standard Atmosphere 1976, troposphere
 */
export function standardAtmosphereTemperatureK(elevationM: number): number {
  return seaLevelTemperatureK - lapseRateKPerM * elevationM;
}

/**
 * Pressure of the standard atmosphere at an elevation.
 * p = p0 (T(h) / T0)^(g M / (R L)), T(h) = T0 - L h
 *
 * @param elevationM - above sea level [m], -304.8 to 4572
 * @returns absolute pressure [Pa]
 * @throws CalcError out-of-range
 * @source U.S. Standard Atmosphere 1976, troposphere
 */
export function standardAtmospherePa(elevationM: number): number {
  if (!(elevationM >= lowestElevationM && elevationM <= highestElevationM)) {
    throw new CalcError('elevation is outside the range of the service', {
      code: 'out-of-range',
      parameter: 'elevation',
      received: `${String(elevationM)} m`,
      limit: `${String(lowestElevationM)} to ${String(highestElevationM)} m`,
    });
  }
  return seaLevelPressurePa * (standardAtmosphereTemperatureK(elevationM) / seaLevelTemperatureK) ** exponent;
}

/**
 * Elevation at which the standard atmosphere has a pressure: `standardAtmospherePa` turned round. A barometer read on the spot
 * stands for the elevation that a gauge behaves like there, whatever the weather.
 *
 * @param pressurePa - as read on the spot, not reduced to sea level [Pa]
 * @returns [m]
 * @source U.S. Standard Atmosphere 1976, troposphere
 */
export function standardElevationM(pressurePa: number): number {
  const share = (pressurePa / seaLevelPressurePa) ** (1 / exponent);
  return (seaLevelTemperatureK * (1 - share)) / lapseRateKPerM;
}
