import type { Refrigerant } from '../refrigerants/index.ts';
import { saturationTemperatureK } from '../refrigerants/index.ts';
import type { InstrumentAccuracy } from './instrument-accuracy.ts';
import { combinedDoubt, saturationDoubtK } from './instrument-accuracy.ts';

export interface LineReading {
  readonly refrigerant: Refrigerant;
  /** Absolute [Pa]. */
  readonly pressurePa: number;
  /** Of the pipe where the pressure is read [K]. */
  readonly lineTemperatureK: number;
}

/**
 * Superheat of the suction line: T line - T dew(p). Negative when the line is colder than the dew point.
 *
 * @returns [K]
 * @throws CalcError out-of-range outside the saturation curve
 * @source definition; the dew curve is where the last drop boils
 */
export function superheatK({ refrigerant, pressurePa, lineTemperatureK }: LineReading): number {
  return lineTemperatureK - saturationTemperatureK(refrigerant, pressurePa, 'dew');
}

/**
 * Subcooling of the liquid line: T bubble(p) - T line. Negative when the line is warmer than the bubble point.
 *
 * @returns [K]
 * @throws CalcError out-of-range outside the saturation curve
 * @source definition; the bubble curve is where the last vapor condenses
 */
export function subcoolingK({ refrigerant, pressurePa, lineTemperatureK }: LineReading): number {
  return saturationTemperatureK(refrigerant, pressurePa, 'bubble') - lineTemperatureK;
}

/**
 * Doubt of a superheat ('dew') or a subcooling ('bubble'): gauge and probe, root of the sum of squares.
 *
 * @returns half-width [K]
 */
export function lineDoubtK(
  reading: {
    readonly refrigerant: Refrigerant;
    readonly pressurePa: number;
    readonly curve: 'dew' | 'bubble';
  },
  { gaugePa, probeK }: InstrumentAccuracy,
): number {
  return combinedDoubt(saturationDoubtK({ ...reading, gaugePa }), probeK);
}
