import { describe, expect, it } from 'vitest';
import {
  airflowFromHeatM3PerS,
  humidityRatio,
  humidityRatioFromRelativeHumidity,
  sensibleCapacityW,
  standardAtmospherePa,
  totalCapacityW,
  waterSaturationPressurePa,
  waterSaturationTemperatureK,
  wetBulbK,
} from '../../src/air/index.ts';
import { errorOf } from '../error-of.ts';

/*
 * Every refusal names the cell, what stood in it and what may stand there, in both systems of units.
 * Conversions by definition: 37 degC = 98.6 degF, 17 degC = 62.6 degF, 7 degC = 44.6 degF.
 */
const at37 = 310.15;
const at17 = 290.15;
const at7 = 280.15;
const pressurePa = 101_325;

describe('refusals of the air', () => {
  it.each<[string, () => unknown, object]>([
    [
      'wet bulb above dry bulb',
      () => humidityRatio({ dryBulbK: at17, wetBulbK: at37, pressurePa }),
      {
        code: 'refused',
        parameter: 'wet_bulb',
        received: '98.6 degF (37.0 degC)',
        limit: 'the dry bulb or less, 62.6 degF (17.0 degC)',
      },
    ],
    [
      'less than no water',
      () => humidityRatio({ dryBulbK: at37, wetBulbK: at7, pressurePa }),
      {
        code: 'refused',
        parameter: 'wet_bulb',
        received: '44.6 degF (7.0 degC)',
        limit: 'a wet bulb that leaves some moisture in the air',
      },
    ],
    [
      'dry bulb too low',
      () => humidityRatio({ dryBulbK: 233.05, wetBulbK: 233, pressurePa }),
      {
        code: 'out-of-range',
        parameter: 'dry_bulb',
        received: '-40.2 degF (-40.1 degC)',
        limit: '-40.0 degF (-40.0 degC) to 140.0 degF (60.0 degC)',
      },
    ],
    [
      'relative humidity above all',
      () => humidityRatioFromRelativeHumidity({ dryBulbK: at17, relativeHumidity: 1.5, pressurePa }),
      { code: 'out-of-range', parameter: 'relative_humidity', received: '150 %', limit: '0 to 100 %' },
    ],
    [
      'relative humidity below zero',
      () => humidityRatioFromRelativeHumidity({ dryBulbK: at17, relativeHumidity: -0.5, pressurePa }),
      { code: 'out-of-range', parameter: 'relative_humidity', received: '-50 %' },
    ],
    [
      'supply warmer than return',
      () => sensibleCapacityW({ airflowM3PerS: 1, returnDryBulbK: at7, supplyDryBulbK: at17, pressurePa }),
      {
        code: 'refused',
        parameter: 'supply_dry_bulb',
        received: '62.6 degF (17.0 degC)',
        limit: 'the return air or less, 44.6 degF (7.0 degC)',
      },
    ],
    [
      'supply with more heat than return',
      () =>
        totalCapacityW({
          airflowM3PerS: 1,
          returnDryBulbK: at37,
          returnWetBulbK: at17 + 3,
          supplyDryBulbK: at37 - 1,
          supplyWetBulbK: at37 - 1,
          pressurePa,
        }),
      {
        code: 'refused',
        parameter: 'supply_wet_bulb',
        received: '96.8 degF (36.0 degC)',
        limit: 'a supply wet bulb below the return wet bulb',
      },
    ],
    [
      'no temperature rise',
      () => airflowFromHeatM3PerS({ heatW: 1000, temperatureRiseK: 0, pressurePa }),
      { code: 'out-of-range', parameter: 'temperature_rise', received: '0 K', limit: 'more than 0 K' },
    ],
    [
      'water too cold',
      () => waterSaturationPressurePa(173.15),
      {
        code: 'out-of-range',
        parameter: 'temperature',
        received: '-148.0 degF (-100.0 degC)',
        limit: '-147.8 degF (-99.9 degC) to 391.8 degF (199.9 degC)',
      },
    ],
    ['water too hot', () => waterSaturationPressurePa(473.15), { received: '392.0 degF (200.0 degC)' }],
    [
      'a vacuum below the water curve',
      () => waterSaturationTemperatureK(0.001),
      {
        code: 'out-of-range',
        parameter: 'vacuum',
        received: '0.001 Pa abs',
        // Hyland and Wexler give 0.0014 Pa at -100 degC and 1.555 MPa at 200 degC (ASHRAE handbook, from memory).
        limit: expect.stringMatching(/^0\.0014\d? to 1\.5\de\+6 Pa abs$/) as string,
      },
    ],
    [
      'a pressure above the water curve',
      () => waterSaturationTemperatureK(2e6),
      { received: '2000000 Pa abs' },
    ],
    [
      'an elevation above the service',
      () => standardAtmospherePa(4573),
      { code: 'out-of-range', parameter: 'elevation', received: '4573 m', limit: '-304.8 to 4572 m' },
    ],
    ['an elevation below it', () => standardAtmospherePa(-305), { received: '-305 m' }],
  ])('%s', (_, run, expected) => {
    expect(errorOf(run)).toMatchObject(expected);
  });

  it('has its limits inside', () => {
    const wettest = { dryBulbK: at17, relativeHumidity: 1, pressurePa };
    expect(wetBulbK(wettest)).toBeCloseTo(at17, 2); // definition: saturated air
    // Definition: dry air holds no water; the library never gives less than 1e-7.
    expect(humidityRatioFromRelativeHumidity({ ...wettest, relativeHumidity: 0 })).toBeLessThanOrEqual(1e-7);
    for (const dryBulbK of [233.15, 333.15])
      expect(humidityRatio({ dryBulbK, wetBulbK: dryBulbK, pressurePa })).toBeGreaterThan(0);
    const still = { airflowM3PerS: 1, returnDryBulbK: at17, supplyDryBulbK: at17, pressurePa };
    expect(sensibleCapacityW(still)).toBe(0);
    expect(totalCapacityW({ ...still, returnWetBulbK: at7, supplyWetBulbK: at7 })).toBe(0);
    // U.S. Standard Atmosphere 1976 at -1000 ft and 15000 ft: 105.04 and 57.18 kPa (published table, from memory).
    expect(standardAtmospherePa(-304.8) / 1000).toBeCloseTo(105.04, 1);
    expect(standardAtmospherePa(4572) / 1000).toBeCloseTo(57.18, 1);
    const coldest = waterSaturationPressurePa(273.15 - 99.9);
    expect(waterSaturationTemperatureK(coldest)).toBeCloseTo(173.25, 6);
    const hottest = waterSaturationPressurePa(273.15 + 199.9);
    expect(waterSaturationTemperatureK(hottest)).toBeCloseTo(473.05, 6);
  });
});
