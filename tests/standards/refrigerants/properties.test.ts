import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  glideK,
  latentHeat,
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../../src/refrigerants/index.ts';

/** What holds for every refrigerant at every temperature, whatever the figures. */
const anywhere = fc.record({
  refrigerant: fc.constantFrom(...refrigerants()),
  fraction: fc.double({ min: 0, max: 1, noNaN: true }),
  curve: fc.constantFrom('dew' as const, 'bubble' as const),
});

function temperatureOf({
  refrigerant,
  fraction,
}: {
  refrigerant: ReturnType<typeof refrigerants>[number];
  fraction: number;
}): number {
  const { lowestTemperatureK, highestTemperatureK } = refrigerant.saturation;
  return lowestTemperatureK + fraction * (highestTemperatureK - lowestTemperatureK);
}

const runs = { numRuns: 3000 };

describe('for any refrigerant and temperature', () => {
  it('temperature → pressure → temperature returns', () => {
    fc.assert(
      fc.property(anywhere, (point) => {
        const temperatureK = temperatureOf(point);
        const pressurePa = saturationPressurePa(point.refrigerant, temperatureK, point.curve);
        expect(
          Math.abs(saturationTemperatureK(point.refrigerant, pressurePa, point.curve) - temperatureK),
        ).toBeLessThan(1e-7);
      }),
      runs,
    );
  });

  it('pressure and vapor density rise, liquid density and latent heat fall', () => {
    fc.assert(
      fc.property(anywhere, (point) => {
        const { refrigerant, curve } = point;
        const cold = Math.min(temperatureOf(point), refrigerant.saturation.highestTemperatureK - 0.01);
        const warm = cold + 0.01;
        expect(saturationPressurePa(refrigerant, warm, curve)).toBeGreaterThan(
          saturationPressurePa(refrigerant, cold, curve),
        );
        expect(saturatedVaporDensity(refrigerant, warm)).toBeGreaterThan(
          saturatedVaporDensity(refrigerant, cold),
        );
        expect(saturatedLiquidDensity(refrigerant, warm)).toBeLessThan(
          saturatedLiquidDensity(refrigerant, cold),
        );
        expect(latentHeat(refrigerant, warm)).toBeLessThan(latentHeat(refrigerant, cold));
      }),
      runs,
    );
  });

  it('the dew pressure is at most the bubble pressure, and the glide is never negative', () => {
    fc.assert(
      fc.property(anywhere, (point) => {
        const temperatureK = temperatureOf(point);
        const dew = saturationPressurePa(point.refrigerant, temperatureK, 'dew');
        const bubble = saturationPressurePa(point.refrigerant, temperatureK, 'bubble');
        // Where a blend is azeotropic the two meet; two separate fits may then cross by their own error.
        expect(dew).toBeLessThanOrEqual(bubble * (1 + 5e-6));
        if (!point.refrigerant.isBlend) expect(dew).toBe(bubble);
        const { saturation } = point.refrigerant;
        if (bubble < saturation.highestPressurePa('dew') && bubble > saturation.lowestPressurePa('dew')) {
          expect(glideK(point.refrigerant, bubble)).toBeGreaterThan(-2e-4);
        }
      }),
      runs,
    );
  });

  it('the slope of ln p against 1/T is smooth: no kink anywhere in a table', () => {
    fc.assert(
      fc.property(anywhere, (point) => {
        const { refrigerant, curve } = point;
        const { lowestTemperatureK, highestTemperatureK } = refrigerant.saturation;
        const middle = Math.min(
          Math.max(temperatureOf(point), lowestTemperatureK + 1),
          highestTemperatureK - 1,
        );
        const log = (shift: number) => Math.log(saturationPressurePa(refrigerant, middle + shift, curve));
        // Curvature over two neighbouring kelvins changes by little of itself.
        const left = (log(0) - 2 * log(-0.5) + log(-1)) / 0.25;
        const right = (log(1) - 2 * log(0.5) + log(0)) / 0.25;
        const slope = (log(1) - log(-1)) / 2;
        expect(slope).toBeGreaterThan(0);
        expect(Math.abs(right - left)).toBeLessThan(0.05 * slope);
      }),
      runs,
    );
  });

  it('vapor is thinner than liquid and evaporation takes heat', () => {
    fc.assert(
      fc.property(anywhere, (point) => {
        const temperatureK = temperatureOf(point);
        expect(saturatedVaporDensity(point.refrigerant, temperatureK)).toBeLessThan(
          saturatedLiquidDensity(point.refrigerant, temperatureK),
        );
        expect(latentHeat(point.refrigerant, temperatureK)).toBeGreaterThan(0);
      }),
      runs,
    );
  });
});
