import { describe, expect, it } from 'vitest';
import {
  findRefrigerant,
  glideK,
  latentHeat,
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../src/refrigerants/index.ts';
import { errorOf } from '../error-of.ts';

/** Which side is wrong must be said; the limits named are the critical point and the lower end of each model. */
describe('outside the range', () => {
  const gas = findRefrigerant('R-410A');

  it.each([
    [0, 'absolute zero'],
    [-5000, 'absolute zero'],
    [Number.NaN, 'absolute zero'],
    [20_000, 'below the range'],
    [4.7e6, 'above the range'],
    // Critical pressure of R-410A as published with its equation (Lemmon 2003): 4.9012 MPa.
    [4.95e6, 'above the critical pressure of R-410A, 4.901 MPa'],
    [Infinity, 'above the critical pressure'],
  ])('pressure %d Pa', (pressurePa, words) => {
    const error = errorOf(() => saturationTemperatureK(gas, pressurePa, 'dew'));
    expect(error).toMatchObject({ code: 'out-of-range', parameter: 'pressure' });
    expect(error.message).toContain(words);
  });

  it.each([
    [0, 'absolute zero'],
    [Number.NaN, 'absolute zero'],
    [150, 'below the range'],
    [343, 'above the range'],
    // Critical temperature of R-410A as published with its equation (Lemmon 2003): 344.494 K = 71.3 degC.
    [350, 'above the critical temperature of R-410A, 71.3 degC'],
  ])('temperature %d K', (temperatureK, words) => {
    for (const action of [
      () => saturationPressurePa(gas, temperatureK, 'bubble'),
      () => saturatedLiquidDensity(gas, temperatureK),
      () => saturatedVaporDensity(gas, temperatureK),
      () => latentHeat(gas, temperatureK),
    ]) {
      const error = errorOf(action);
      expect(error).toMatchObject({ code: 'out-of-range', parameter: 'temperature' });
      expect(error.message).toContain(words);
    }
  });

  it('glide names the pressure too', () => {
    expect(errorOf(() => glideK(gas, 0)).parameter).toBe('pressure');
  });

  it('the ends themselves are inside, for every refrigerant', () => {
    for (const refrigerant of refrigerants()) {
      const { saturation } = refrigerant;
      for (const curve of ['dew', 'bubble'] as const) {
        for (const end of [saturation.lowestTemperatureK, saturation.highestTemperatureK]) {
          const pressurePa = saturationPressurePa(refrigerant, end, curve);
          expect(saturationTemperatureK(refrigerant, pressurePa, curve)).toBeCloseTo(end, 6);
        }
      }
    }
  });

  it('covers service: 1 kPa or the lower limit of the model, up to close under the critical point', () => {
    for (const { saturation, designation, criticalTemperatureK } of refrigerants()) {
      const low = saturation.lowestPressurePa('dew');
      const limited = ['R-744', 'R-115', 'R-116', 'R-125', 'R-404A', 'R-407C', 'R-410A', 'R-507A'];
      if (!limited.includes(designation)) expect(low, designation).toBeLessThan(1100);
      expect(saturation.highestTemperatureK / criticalTemperatureK, designation).toBeGreaterThan(0.985);
    }
  });
});
