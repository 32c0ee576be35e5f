import { describe, expect, it } from 'vitest';
import { standardAtmospherePa, standardAtmosphereTemperatureK } from '../../../src/air/index.ts';
import { toFahrenheit, toPsia } from './trade-units.ts';

const handbook = 'ASHRAE Handbook Fundamentals 2017 ch.1 Table 1, read';
const formula = 'ASHRAE Fundamentals 2017 ch.1 eq.3 / US Standard Atmosphere 1976, computed';

describe('standard atmosphere', () => {
  it.each<[string, number, number, number, string]>([
    ['ATM-02', 0, 14.696, 0.01, handbook],
    ['ATM-03', 1000, 14.175, 0.01, handbook],
    ['ATM-04', 3000, 13.173, 0.01, handbook],
    ['ATM-05', 10000, 10.108, 0.01, handbook],
    ['ATM-21', 2000, 13.664, 0.005, formula],
    ['ATM-22', 4000, 12.692, 0.005, formula],
    ['ATM-23', 5000, 12.228, 0.005, formula],
    ['ATM-24', 6000, 11.777, 0.005, formula],
    ['ATM-25', 7000, 11.34, 0.005, formula],
    ['ATM-26', 8000, 10.916, 0.005, formula],
  ])('%s pressure at %d ft', (_, feet, expected, tolerance) => {
    expect(Math.abs(toPsia(standardAtmospherePa(feet * 0.3048)) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it.each<[string, number, number, number, string]>([
    ['ATM-11', -1000, 62.6, 0.2, handbook],
    ['ATM-12', 0, 59, 0.2, handbook],
    ['ATM-13', 1000, 55.4, 0.2, handbook],
    ['ATM-15', 10000, 23.4, 0.2, handbook],
    ['ATM-16', 30000, -47.8, 0.2, handbook],
  ])('%s temperature at %d ft', (_, feet, expected, tolerance) => {
    expect(
      Math.abs(toFahrenheit(standardAtmosphereTemperatureK(feet * 0.3048)) - expected),
    ).toBeLessThanOrEqual(tolerance);
  });

  it.each([-501, 6001, Number.NaN])('refuses %d m', (elevationM) => {
    expect(() => standardAtmospherePa(elevationM)).toThrowError(/elevation/);
  });
});
