import { CalcError } from '../errors.ts';
import { psychrometrics, zeroCelsiusK } from './psychrometrics.ts';
import { temperatureText } from './temperature-text.ts';

/** Air whose moisture is known from a wet bulb. */
export interface WetBulbReading {
  readonly dryBulbK: number;
  readonly wetBulbK: number;
  /** Absolute pressure of the air [Pa]. */
  readonly pressurePa: number;
}

/** Air whose moisture is known from a humidity sensor. */
export interface RelativeHumidityReading {
  readonly dryBulbK: number;
  /** 0 to 1. */
  readonly relativeHumidity: number;
  /** Absolute pressure of the air [Pa]. */
  readonly pressurePa: number;
}

/** Room, coil and outdoor air; above it the vapor pressure of water nears the air pressure at high sites. */
export const lowestDryBulbK = zeroCelsiusK - 40;
export const highestDryBulbK = zeroCelsiusK + 60;

/** The library never returns less than this; at it, the reading asked for less than no water. */
const driestHumidityRatio = 1e-7;

/**
 * Water over dry air by mass, from dry bulb and wet bulb.
 *
 * @throws CalcError refused - wet bulb above dry bulb, or so far below it that the air would hold less than no water;
 *   out-of-range - dry bulb outside -40 to 60 degC
 * @source ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35 (psychrolib 1.1.1)
 */
export function humidityRatio(air: WetBulbReading): number {
  checkDryBulb(air.dryBulbK);
  if (air.wetBulbK > air.dryBulbK) {
    throw new CalcError(
      `wet bulb ${temperatureText(air.wetBulbK)} is above dry bulb ${temperatureText(air.dryBulbK)}: one of the probes is wrong, or they are swapped`,
      {
        code: 'refused',
        parameter: 'wet_bulb',
        received: temperatureText(air.wetBulbK),
        limit: `the dry bulb or less, ${temperatureText(air.dryBulbK)}`,
      },
    );
  }
  const ratio = psychrometrics.ratioFromWetBulb(air, air.wetBulbK);
  if (ratio <= driestHumidityRatio) {
    throw new CalcError(
      `wet bulb ${temperatureText(air.wetBulbK)} is lower than perfectly dry air at ${temperatureText(air.dryBulbK)} could give`,
      {
        code: 'refused',
        parameter: 'wet_bulb',
        received: temperatureText(air.wetBulbK),
        limit: 'a wet bulb that leaves some moisture in the air',
      },
    );
  }
  return ratio;
}

/**
 * Water over dry air by mass, from dry bulb and relative humidity.
 *
 * @source ASHRAE Handbook Fundamentals 2017, chapter 1, equations 12 and 20 (psychrolib 1.1.1)
 */
export function humidityRatioFromRelativeHumidity(air: RelativeHumidityReading): number {
  checkDryBulb(air.dryBulbK);
  if (!(air.relativeHumidity >= 0 && air.relativeHumidity <= 1)) {
    throw new CalcError('relative humidity must be 0 to 100 %', {
      code: 'out-of-range',
      parameter: 'relative_humidity',
      received: `${String(air.relativeHumidity * 100)} %`,
      limit: '0 to 100 %',
    });
  }
  return psychrometrics.ratioFromRelativeHumidity(air, air.relativeHumidity);
}

/**
 * Thermodynamic wet bulb from dry bulb and relative humidity, by bisection to 0.001 K.
 *
 * @returns [K]
 * @source ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35 (psychrolib 1.1.1)
 */
export function wetBulbK(air: RelativeHumidityReading): number {
  return psychrometrics.wetBulbK({ ...air, humidityRatio: humidityRatioFromRelativeHumidity(air) });
}

/** Relative humidity, 0 to 1. @source ASHRAE Handbook Fundamentals 2017, chapter 1, equation 22 (psychrolib 1.1.1) */
export function relativeHumidity(air: WetBulbReading): number {
  return psychrometrics.relativeHumidity({ ...air, humidityRatio: humidityRatio(air) });
}

/** Dew point of the air [K]. @source ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5, 6 and 36 (psychrolib 1.1.1) */
export function airDewPointK(air: WetBulbReading): number {
  return psychrometrics.dewPointK({ ...air, humidityRatio: humidityRatio(air) });
}

/**
 * Enthalpy per mass of dry air, counted from dry air and liquid water at 0 degC [J/kg].
 *
 * @source ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30 (psychrolib 1.1.1)
 */
export function airEnthalpyJPerKg(air: WetBulbReading): number {
  return psychrometrics.enthalpyJPerKg({ ...air, humidityRatio: humidityRatio(air) });
}

/**
 * Volume of the mixture per mass of dry air [m3/kg].
 *
 * @source ASHRAE Handbook Fundamentals 2017, chapter 1, equation 26 (psychrolib 1.1.1)
 */
export function airSpecificVolumeM3PerKg(air: WetBulbReading): number {
  return psychrometrics.specificVolumeM3PerKg({ ...air, humidityRatio: humidityRatio(air) });
}

function checkDryBulb(dryBulbK: number): void {
  if (dryBulbK >= lowestDryBulbK && dryBulbK <= highestDryBulbK) return;
  throw new CalcError('dry bulb is outside the range of moist air', {
    code: 'out-of-range',
    parameter: 'dry_bulb',
    received: temperatureText(dryBulbK),
    limit: `${temperatureText(lowestDryBulbK)} to ${temperatureText(highestDryBulbK)}`,
  });
}
