import { CalcError, naming } from '../errors.ts';
import type { Refrigerant, SinglePhaseProperties } from '../refrigerants/index.ts';
import { saturationTemperatureK, singlePhaseProperties } from '../refrigerants/index.ts';
import { compressionRatio } from './compression-ratio.ts';

export interface CompressionStates {
  readonly refrigerant: Refrigerant;
  /** Absolute [Pa]. */
  readonly suctionPa: number;
  readonly suctionTemperatureK: number;
  /** Absolute [Pa]. */
  readonly dischargePa: number;
  /** Isentropic, above 0 to 1. */
  readonly efficiency: number;
}

/** Isentropic efficiency of small compressors. Common practice, no source. */
export const usualEfficiency = 0.7;

/** Steps of equal pressure ratio; 6 keep the discharge temperature within 0.1 K of many up to a ratio of 6. */
const steps = 6;
const probeStepK = 0.25;

/**
 * Discharge temperature of the ideal cycle: adiabatic compression with an isentropic efficiency, no heat lost from the shell.
 * Along the isentrope dT/d ln p = T p (dv/dT)_p / cp and dh = v dp (midpoint rule); then h(T2) = h1 + dh / efficiency.
 *
 * @returns [K]
 * @throws CalcError out-of-range: suction not superheated, states outside the equation of state, discharge below suction
 * @source first and second law; properties from the equation of state
 */
export function idealDischargeK(states: CompressionStates): number {
  const { refrigerant, suctionPa, suctionTemperatureK, dischargePa, efficiency } = states;
  if (!(efficiency > 0 && efficiency <= 1)) {
    throw new CalcError('efficiency must be above 0 and at most 100 %', {
      code: 'out-of-range',
      parameter: 'efficiency',
      received: String(efficiency),
      limit: 'above 0 to 100 %',
    });
  }
  const dewK = naming({ pressure: 'suction_pressure' }, () =>
    saturationTemperatureK(refrigerant, suctionPa, 'dew'),
  );
  if (suctionTemperatureK < dewK) {
    throw new CalcError('suction_line is below the dew point at suction_pressure: not all vapor', {
      code: 'out-of-range',
      parameter: 'suction_line',
      limit: 'the dew point at suction_pressure or more',
    });
  }
  const ratio = compressionRatio({ suctionPa, dischargePa });
  try {
    return naming({ pressure: 'discharge_pressure' }, () => compressedK(states, ratio));
  } catch (error) {
    throw onTheWay(error);
  }
}

/** Past the suction the temperatures are ours, not the user's: what is wrong with one is said of the pressure it belongs to. */
function onTheWay(error: unknown): unknown {
  if (!(error instanceof CalcError) || error.parameter !== 'temperature') return error;
  return new CalcError(`discharge_pressure is out of reach: on the way there the ${error.message}`, {
    code: error.code,
    parameter: 'discharge_pressure',
  });
}

function compressedK(states: CompressionStates, ratio: number): number {
  const { refrigerant, suctionPa, suctionTemperatureK, dischargePa, efficiency } = states;
  const growth = Math.log(ratio) / steps;
  let temperatureK = suctionTemperatureK;
  let workJPerKg = 0;
  for (let step = 0; step < steps; step += 1) {
    const pressurePa = suctionPa * Math.exp(step * growth);
    const middlePa = pressurePa * Math.exp(growth / 2);
    const half = temperatureK + (growth / 2) * slope(refrigerant, pressurePa, temperatureK).riseK;
    const middle = slope(refrigerant, middlePa, half);
    temperatureK += growth * middle.riseK;
    workJPerKg += growth * middlePa * middle.volume;
  }
  return heatedBy(refrigerant, dischargePa, temperatureK, workJPerKg * (1 / efficiency - 1));
}

/** Rise of temperature per unit of ln p along the isentrope, and specific volume, of a superheated vapor. */
function slope(
  refrigerant: Refrigerant,
  pressurePa: number,
  temperatureK: number,
): { readonly riseK: number; readonly volume: number } {
  const dewK = saturationTemperatureK(refrigerant, pressurePa, 'dew');
  // Close to the dew point the lower probe may not leave the vapor.
  const lowerK = Math.max(temperatureK - probeStepK, dewK);
  const upperK = lowerK + 2 * probeStepK;
  const lower = vapor(refrigerant, pressurePa, lowerK);
  const upper = vapor(refrigerant, pressurePa, upperK);
  const expansion = (upper.volumeM3PerKg - lower.volumeM3PerKg) / (upperK - lowerK);
  const heatCapacity = (upper.enthalpyJPerKg - lower.enthalpyJPerKg) / (upperK - lowerK);
  return {
    riseK: (temperatureK * pressurePa * expansion) / heatCapacity,
    // Half a kelvin of an isobar is straight.
    volume: lower.volumeM3PerKg + expansion * (Math.max(temperatureK, dewK) - lowerK),
  };
}

function vapor(refrigerant: Refrigerant, pressurePa: number, temperatureK: number): SinglePhaseProperties {
  return singlePhaseProperties(refrigerant, { phase: 'superheated vapor', pressurePa, temperatureK });
}

/** Temperature after heating at constant pressure [K]; Newton on the enthalpy, which is nearly straight. */
function heatedBy(refrigerant: Refrigerant, pressurePa: number, fromK: number, heatJPerKg: number): number {
  const enthalpy = (temperatureK: number): number =>
    vapor(refrigerant, pressurePa, temperatureK).enthalpyJPerKg;
  const start = enthalpy(fromK);
  let temperatureK = fromK;
  for (let round = 0; round < 20; round += 1) {
    const here = enthalpy(temperatureK);
    const heatCapacity = (enthalpy(temperatureK + probeStepK) - here) / probeStepK;
    const change = (heatJPerKg - (here - start)) / heatCapacity;
    temperatureK += change;
    if (Math.abs(change) < 1e-6) return temperatureK;
  }
  throw new CalcError('no discharge temperature was found', { code: 'no-convergence' });
}
