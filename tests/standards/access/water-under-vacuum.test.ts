import { describe, expect, it } from 'vitest';
import { waterSaturationTemperatureK } from '../../../src/air/water-saturation.ts';
import { findUnit, toSi } from '../../../src/units/conversion.ts';
import type { Unit } from '../../../src/units/quantities.ts';

const micronPa = 101_325 / 760_000;
const curve = 'ASHRAE Fundamentals 2017 ch.1 eqs 5-6 (ice and liquid) via an open library, computed';

describe('water under vacuum', () => {
  it('VAC-01 a micron of mercury is 0.133322 Pa (definition, 1 torr = 101325/760 Pa)', () => {
    expect(toSi(1, findUnit('vacuum', 'micron') as Unit, 0)).toBeCloseTo(0.133322, 6);
  });

  it('VAC-02 one atmosphere is 760000 microns (definition)', () => {
    expect(toSi(760_000, findUnit('vacuum', 'micron') as Unit, 0)).toBeCloseTo(101_325, 6);
  });

  it.each<[string, number, number, string]>([
    ['VAC-06', 200, -28.1, curve],
    ['VAC-07', 250, -24.3, curve],
    ['VAC-09', 1000, 0.8, curve],
    ['VAC-10', 1500, 8.7, curve],
    ['VAC-11', 2000, 14.5, curve],
    ['VAC-12', 4000, 29, curve],
    ['VAC-13', 4579, 32, curve],
    ['VAC-14', 5000, 34.2, curve],
    ['VAC-16', 20_000, 71.8, curve],
    ['VAC-17', 25_400, 79, curve],
    ['VAC-18', 50_000, 100.6, curve],
    ['VAC-20', 200_000, 151.5, curve],
    ['VAC-21', 760_000, 212, curve],
  ])('%s %d microns boils or sublimes water at %d degF', (_, microns, expected) => {
    const found = waterSaturationTemperatureK(microns * micronPa) * 1.8 - 459.67;
    // The row allows 0.7; the same equations are met far closer.
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(0.1);
  });

  it('refuses no pressure at all', () => {
    expect(() => waterSaturationTemperatureK(0)).toThrowError(/water equations/);
    expect(() => waterSaturationTemperatureK(Number.NaN)).toThrowError(/water equations/);
  });
});
