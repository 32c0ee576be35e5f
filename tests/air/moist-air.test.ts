import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airDewPointK,
  humidityRatio,
  relativeHumidity,
  sensibleCapacityW,
  totalCapacityW,
  waterSaturationPressurePa,
  waterSaturationTemperatureK,
  wetBulbK,
} from '../../src/air/index.ts';

const dryBulb = fc.double({ min: 274, max: 330, noNaN: true });
const humidity = fc.double({ min: 0.05, max: 1, noNaN: true });
const pressure = fc.double({ min: 60_000, max: 105_000, noNaN: true });

describe('moist air holds together', () => {
  it('relative humidity comes back from the wet bulb it gave', () => {
    fc.assert(
      fc.property(dryBulb, humidity, pressure, (dryBulbK, share, pressurePa) => {
        const wet = wetBulbK({ dryBulbK, relativeHumidity: share, pressurePa });
        // The library bisects the wet bulb to 0.001 K, which is worth up to 0.0002 of humidity in cold air.
        expect(relativeHumidity({ dryBulbK, wetBulbK: wet, pressurePa })).toBeCloseTo(share, 3);
      }),
    );
  });

  it('dew point <= wet bulb <= dry bulb', () => {
    fc.assert(
      fc.property(dryBulb, humidity, pressure, (dryBulbK, share, pressurePa) => {
        const wet = wetBulbK({ dryBulbK, relativeHumidity: share, pressurePa });
        expect(wet).toBeLessThanOrEqual(dryBulbK + 1e-9);
        expect(airDewPointK({ dryBulbK, wetBulbK: wet, pressurePa })).toBeLessThanOrEqual(wet + 0.01);
      }),
    );
  });

  it('the water curve inverts and rises through the triple point', () => {
    fc.assert(
      fc.property(fc.double({ min: 180, max: 470, noNaN: true }), (temperatureK) => {
        const back = waterSaturationTemperatureK(waterSaturationPressurePa(temperatureK));
        // Ice and liquid equations meet within 0.01 % of pressure at the triple point, worth 0.002 K.
        expect(Math.abs(back - temperatureK)).toBeLessThan(0.003);
      }),
    );
  });

  it('meets the triple point of water, 611.657 Pa at 273.16 K (IAPWS), within 0.02 %', () => {
    expect(waterSaturationPressurePa(273.16) / 611.657).toBeCloseTo(1, 3);
  });
});

describe('moist air refuses', () => {
  const seaLevel = { pressurePa: 101_325 };
  it('a wet bulb so low that the air would hold less than no water', () => {
    expect(() => humidityRatio({ dryBulbK: 305, wetBulbK: 280, ...seaLevel })).toThrowError(/dry air/);
  });
  it('a dry bulb out of range', () => {
    expect(() => humidityRatio({ dryBulbK: 340, wetBulbK: 300, ...seaLevel })).toThrowError(/dry bulb/);
    expect(() => humidityRatio({ dryBulbK: Number.NaN, wetBulbK: 300, ...seaLevel })).toThrowError(
      /dry bulb/,
    );
  });
  it('a relative humidity above one', () => {
    expect(() => wetBulbK({ dryBulbK: 300, relativeHumidity: 1.01, ...seaLevel })).toThrowError(/0 to 100 %/);
  });
  it('cooling that warms', () => {
    const reading = { airflowM3PerS: 0.15, returnDryBulbK: 290, supplyDryBulbK: 300, ...seaLevel };
    expect(() => sensibleCapacityW(reading)).toThrowError(/warmer/);
    expect(() => totalCapacityW({ ...reading, returnWetBulbK: 288, supplyWetBulbK: 292 })).toThrowError(
      /more heat/,
    );
  });
});
