import { describe, expect, it } from 'vitest';
import { atmosphereOfRow } from '../../src/records/index.ts';

describe('the atmosphere that the gauges of a row read from', () => {
  it('is that of the elevation in the standard atmosphere', () => {
    // ISO 2533 (1975): 84 307 Pa at 1,524 m (5,000 ft), from the published equation.
    expect(atmosphereOfRow({ elevation: 1524 })).toBeCloseTo(84_307, -1);
  });

  it('is what a barometer showed there, whatever the elevation says', () => {
    expect(atmosphereOfRow({ elevation: 1524, barometer: 86_000 })).toBe(86_000);
  });

  it('does not believe a barometer that shows what no place on land has', () => {
    expect(atmosphereOfRow({ elevation: 0, barometer: 4000 })).toBe(101_325);
  });
});
