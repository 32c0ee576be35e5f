import { CalcError } from '../errors.ts';
import { dryAirHeatCapacityJPerKgK, siteAirDensityKgPerM3 } from './standard-air.ts';

export interface HeaterReading {
  /** Electric power that ends up in the air: heater strip and fan [W]. */
  readonly heatW: number;
  /** Supply less return [K]. */
  readonly temperatureRiseK: number;
  /** Local atmosphere, absolute [Pa]. */
  readonly pressurePa: number;
}

/**
 * Airflow from the electric heat put in and the temperature rise.
 * V = P / (rho cp dT), rho = 0.075 lb/ft3 times the pressure ratio
 *
 * @returns [m3/s], counted at standard temperature
 * @throws CalcError out-of-range - rise not above zero
 * @source energy balance; standard air of ASHRAE Handbook Fundamentals
 */
export function airflowFromHeatM3PerS(reading: HeaterReading): number {
  if (!(reading.temperatureRiseK > 0)) {
    throw new CalcError('temperature rise must be above zero', {
      code: 'out-of-range',
      parameter: 'temperature_rise',
      received: `${String(reading.temperatureRiseK)} K`,
      limit: 'more than 0 K',
    });
  }
  return (
    reading.heatW /
    (siteAirDensityKgPerM3(reading.pressurePa) * dryAirHeatCapacityJPerKgK * reading.temperatureRiseK)
  );
}

const wattsPerTon = 3516.8528;
const cubicFeetPerMinute = 0.3048 ** 3 / 60;

/**
 * Airflow per cooling capacity below which a charge test means nothing: more than 300 cfm a ton is required when the
 * flow is measured in place of the temperature-split test.
 *
 * @source California Energy Commission, 2008 Residential Appendices RA3.2.2.7 (CEC-400-2008-004-CMF)
 */
export const chargeTestAirflowM3PerSPerW = (300 * cubicFeetPerMinute) / wattsPerTon;

/** Whether there is enough air over the coil for a verdict on the charge. */
export function airflowAllowsChargeTest(coil: {
  readonly airflowM3PerS: number;
  readonly capacityW: number;
}): boolean {
  return coil.airflowM3PerS > chargeTestAirflowM3PerSPerW * coil.capacityW;
}
