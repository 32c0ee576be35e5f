import { CalcError } from '../errors.ts';
import { psychrometrics, zeroCelsiusK } from './psychrometrics.ts';
import { temperatureText } from './temperature-text.ts';

/** Range of the equations, -100 to 200 degC, less a tenth so that rounding does not step over it. */
const lowestK = zeroCelsiusK - 99.9;
const highestK = zeroCelsiusK + 199.9;

/** Triple point of water: below it the vapor stands over ice. 611.657 Pa: Guildner, Johnson and Jones 1976, as in IAPWS. */
export const triplePointK = 273.16;
export const triplePointPa = 611.657;

/**
 * Saturation pressure of water: over ice below the triple point, over liquid above it.
 *
 * @param temperatureK - 173.25 to 473.05 K
 * @returns absolute pressure [Pa]
 * @throws CalcError out-of-range
 * @source Hyland and Wexler 1983, ASHRAE Transactions 89(2A), as printed in ASHRAE Handbook Fundamentals 2017, chapter 1,
 *   equations 5 (ice) and 6 (liquid) (psychrolib 1.1.1)
 */
export function waterSaturationPressurePa(temperatureK: number): number {
  if (!(temperatureK >= lowestK && temperatureK <= highestK)) {
    throw new CalcError('temperature is outside the range of the water equations', {
      code: 'out-of-range',
      parameter: 'temperature',
      received: temperatureText(temperatureK),
      limit: `${temperatureText(lowestK)} to ${temperatureText(highestK)}`,
    });
  }
  return psychrometrics.waterSaturationPa(temperatureK);
}

export const lowestWaterPressurePa = waterSaturationPressurePa(lowestK);
export const highestWaterPressurePa = waterSaturationPressurePa(highestK);

/** Halvings of 300 K until the step is below a billionth of a kelvin. */
const halvings = 40;

/**
 * Temperature at which water boils, or ice sublimes, at a pressure: the saturation pressure inverted by bisection.
 * The equations for ice and liquid meet at the triple point within 0.01 %, so the curve rises throughout.
 *
 * @param pressurePa - absolute, 0.0014 Pa to 1.55 MPa
 * @returns [K]
 * @throws CalcError out-of-range
 */
export function waterSaturationTemperatureK(pressurePa: number): number {
  if (!(pressurePa >= lowestWaterPressurePa && pressurePa <= highestWaterPressurePa)) {
    throw new CalcError('pressure is outside the range of the water equations', {
      code: 'out-of-range',
      parameter: 'vacuum',
      received: `${String(pressurePa)} Pa abs`,
      limit: `${lowestWaterPressurePa.toPrecision(3)} to ${highestWaterPressurePa.toPrecision(3)} Pa abs`,
    });
  }
  let coldK = lowestK;
  let warmK = highestK;
  for (let step = 0; step < halvings; step += 1) {
    const middleK = (coldK + warmK) / 2;
    if (waterSaturationPressurePa(middleK) < pressurePa) coldK = middleK;
    else warmK = middleK;
  }
  return (coldK + warmK) / 2;
}
