import { describe, expect, it } from 'vitest';
import {
  airDewPointK,
  airEnthalpyJPerKg,
  airSpecificVolumeM3PerKg,
  humidityRatio,
  relativeHumidity,
  waterSaturationPressurePa,
  wetBulbK,
} from '../../../src/air/index.ts';
import { psychrometrics } from '../../../src/air/psychrometrics.ts';
import { fahrenheitK, psiaPa, toBtuPerLb, toFahrenheit, toFt3PerLb, toPsia } from './trade-units.ts';

const table2 = 'ASHRAE Fundamentals 2017 ch.1 Table 2, read';
const table3 = 'ASHRAE Fundamentals 2017 ch.1 Table 3, read';
const example1 = 'ASHRAE Fundamentals 2017 ch.1 Example 1, as printed, read';
const library = 'test suite of an open psychrometric library, read';
const computed = 'ASHRAE Fundamentals 2017 ch.1 equations via an open psychrometric library, computed';

type Quantity = 'ratio' | 'dewPoint' | 'humidity' | 'enthalpy' | 'volume' | 'grains';

/** What each quantity is in trade units, from dry bulb, wet bulb [degF] and pressure [psia]. */
const measure: Record<Quantity, (dry: number, wet: number, psia: number) => number> = {
  ratio: (dry, wet, psia) => humidityRatio(air(dry, wet, psia)),
  grains: (dry, wet, psia) => 7000 * humidityRatio(air(dry, wet, psia)),
  dewPoint: (dry, wet, psia) => toFahrenheit(airDewPointK(air(dry, wet, psia))),
  humidity: (dry, wet, psia) => 100 * relativeHumidity(air(dry, wet, psia)),
  enthalpy: (dry, wet, psia) => toBtuPerLb(airEnthalpyJPerKg(air(dry, wet, psia))),
  volume: (dry, wet, psia) => toFt3PerLb(airSpecificVolumeM3PerKg(air(dry, wet, psia))),
};

function air(dry: number, wet: number, psia: number) {
  return { dryBulbK: fahrenheitK(dry), wetBulbK: fahrenheitK(wet), pressurePa: psiaPa(psia) };
}

const fromWetBulb: readonly [string, Quantity, number, number, number, number, number, string][] = [
  ['PSY-33', 'dewPoint', 100, 65, 14.696, 40, 1, example1],
  ['PSY-34', 'humidity', 100, 65, 14.696, 13, 1, example1],
  ['PSY-35', 'volume', 100, 65, 14.696, 14.22, 0.02, example1],
  // 0.03 % of the value
  ['PSY-36', 'ratio', 86, 77, 14.175, 0.0187193, 0.0000056, library],
  ['PSY-37', 'ratio', 30.2, 23, 14.175, 0.00114657, 0.00000034, library],
  ['PSY-40', 'ratio', 80, 67, 14.696, 0.01117, 0.00005, computed],
  ['PSY-41', 'dewPoint', 80, 67, 14.696, 60.3, 0.2, computed],
  ['PSY-43', 'enthalpy', 80, 67, 14.696, 31.45, 0.05, computed],
  ['PSY-44', 'volume', 80, 67, 14.696, 13.849, 0.02, computed],
  ['PSY-45', 'grains', 80, 67, 14.696, 78.2, 0.4, computed],
  ['PSY-46', 'ratio', 75, 63, 14.696, 0.00953, 0.00005, computed],
  ['PSY-49', 'enthalpy', 75, 63, 14.696, 28.43, 0.05, computed],
  ['PSY-51', 'grains', 75, 63, 14.696, 66.7, 0.4, computed],
  ['PSY-52', 'ratio', 78, 65, 14.696, 0.01021, 0.00005, computed],
  ['PSY-54', 'humidity', 78, 65, 14.696, 49.9, 0.3, computed],
  ['PSY-55', 'enthalpy', 78, 65, 14.696, 29.9, 0.05, computed],
  ['PSY-57', 'grains', 78, 65, 14.696, 71.4, 0.4, computed],
  ['PSY-58', 'ratio', 85, 70, 14.696, 0.01227, 0.00005, computed],
  ['PSY-59', 'dewPoint', 85, 70, 14.696, 62.9, 0.2, computed],
  ['PSY-60', 'humidity', 85, 70, 14.696, 47.7, 0.3, computed],
  ['PSY-61', 'enthalpy', 85, 70, 14.696, 33.88, 0.05, computed],
  ['PSY-62', 'volume', 85, 70, 14.696, 14.002, 0.02, computed],
  ['PSY-65', 'dewPoint', 95, 75, 14.696, 66.8, 0.2, computed],
  ['PSY-66', 'humidity', 95, 75, 14.696, 39.8, 0.3, computed],
  ['PSY-67', 'enthalpy', 95, 75, 14.696, 38.32, 0.05, computed],
  ['PSY-68', 'volume', 95, 75, 14.696, 14.299, 0.02, computed],
  ['PSY-71', 'dewPoint', 70, 58.5, 14.696, 50.6, 0.2, computed],
  ['PSY-72', 'humidity', 70, 58.5, 14.696, 50.2, 0.3, computed],
  ['PSY-73', 'enthalpy', 70, 58.5, 14.696, 25.33, 0.05, computed],
];

describe('moist air against the handbook', () => {
  it.each(fromWetBulb)('%s %s at %d/%d degF', (_, quantity, dry, wet, psia, expected, tolerance) => {
    expect(Math.abs(measure[quantity](dry, wet, psia) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it.each<[string, number, number, number, number, string]>([
    ['PSY-76', 75, 0.5, 62.6, 0.2, computed],
    ['PSY-78', 72, 0.4, 57.3, 0.2, computed],
  ])('%s wet bulb of %d degF at %d', (_, dry, humidity, expected, tolerance) => {
    const wet = wetBulbK({
      dryBulbK: fahrenheitK(dry),
      relativeHumidity: humidity,
      pressurePa: psiaPa(14.696),
    });
    expect(Math.abs(toFahrenheit(wet) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it('PSY-81 refuses a wet bulb above the dry bulb (physical identity)', () => {
    expect(() => humidityRatio(air(75, 76, 14.696))).toThrowError(/wet bulb .*76\.0 degF.* above dry bulb/);
  });

  it.each<[string, number, number, number, string]>([
    ['PSY-11', 23, 0.0024863, 0.01, table2],
    ['PSY-14', 122, 0.086863, 0.01, table2],
  ])('%s saturated air at %d degF', (_, dry, expected, share) => {
    // Ideal-gas formula without the enhancement factor: within 1 % of the table.
    expect(Math.abs(humidityRatio(air(dry, dry, 14.696)) / expected - 1)).toBeLessThanOrEqual(share);
  });

  it.each<[string, number, number, number, string]>([
    ['PSY-21', 41, 15.699, 0.01, table2],
    ['PSY-22', 77, 40.576, 0.01, table2],
  ])('%s enthalpy of saturated air at %d degF', (_, dry, expected, share) => {
    expect(Math.abs(toBtuPerLb(airEnthalpyJPerKg(air(dry, dry, 14.696))) / expected - 1)).toBeLessThanOrEqual(
      share,
    );
  });

  it.each<[string, number, number, string]>([
    ['PSY-01', -4, 0.014974, table3],
    ['PSY-02', 23, 0.058268, table3],
    ['PSY-03', 41, 0.12656, table3],
    ['PSY-04', 77, 0.45973, table3],
    ['PSY-05', 122, 1.7914, table3],
    ['PSY-06', 212, 14.7094, table3],
    ['PSY-07', 300, 67.0206, table3],
  ])('%s water saturation at %d degF', (_, temperature, expected) => {
    // 0.03 % as the row asks.
    expect(
      Math.abs(toPsia(waterSaturationPressurePa(fahrenheitK(temperature))) / expected - 1),
    ).toBeLessThanOrEqual(0.0003);
  });

  it('PSY-38 enthalpy from dry bulb and humidity ratio (ASHRAE ch.1 h = 0.240 t + W (1061 + 0.444 t), read)', () => {
    const enthalpy = toBtuPerLb(
      psychrometrics.enthalpyJPerKg({ dryBulbK: fahrenheitK(86), humidityRatio: 0.02 }),
    );
    expect(Math.abs(enthalpy / 42.6168 - 1)).toBeLessThanOrEqual(0.0003);
  });

  it('PSY-39 density from dry bulb and humidity ratio (test suite of an open psychrometric library, read)', () => {
    const volume = toFt3PerLb(
      psychrometrics.specificVolumeM3PerKg({
        dryBulbK: fahrenheitK(86),
        humidityRatio: 0.02,
        pressurePa: psiaPa(14.175),
      }),
    );
    expect(Math.abs(1.02 / volume / 0.0692908 - 1)).toBeLessThanOrEqual(0.0003);
  });
});
