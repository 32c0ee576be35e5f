import { standardAtmospherePa } from './standard-atmosphere.ts';

/** Standard air, 0.075 lb/ft3: dry air near 70 degF at sea level, in which fans and capacities are rated (ASHRAE, AMCA). */
export const standardAirDensityKgPerM3 = (0.075 * 0.45359237) / 0.3048 ** 3;

/** 0.24 Btu/(lb degF) in J/(kg K): with the density above it makes the trade's 1.08 Btu/h per cfm and degF. */
export const dryAirHeatCapacityJPerKgK = 0.24 * 4186.8;

/**
 * Dry-air density used for a trade airflow: standard air thinned by the local pressure, same temperature.
 *
 * @param pressurePa - local atmosphere, absolute [Pa]
 * @returns [kg/m3]
 * @source ideal gas; 0.075 lb/ft3 at 101325 Pa
 */
export function siteAirDensityKgPerM3(pressurePa: number): number {
  return (standardAirDensityKgPerM3 * pressurePa) / standardAtmospherePa(0);
}
