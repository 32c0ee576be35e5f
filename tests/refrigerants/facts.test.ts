import { describe, expect, it } from 'vitest';
import { findRefrigerant, refrigerants } from '../../src/refrigerants/index.ts';

describe('facts', () => {
  it.each(refrigerants().map((r) => [r.designation, r] as const))('of %s are complete', (_, gas) => {
    const mass = gas.composition.reduce((sum, c) => sum + c.massFraction, 0);
    const moles = gas.composition.reduce((sum, c) => sum + c.moleFraction, 0);
    expect(mass).toBeCloseTo(1, 9);
    expect(moles).toBeCloseTo(1, 9);
    expect(gas.composition.length > 1).toBe(gas.isBlend);
    expect(gas.molarMassKgPerMol).toBeGreaterThan(0.03);
    expect(gas.usualOil).not.toBe('');
    expect(Object.keys(gas.gwp).length).toBeGreaterThanOrEqual(3);
    expect(gas.qualityGrade.doubtK).toBeGreaterThan(0);
    for (const source of Object.values(gas.sources)) expect(source).not.toBe('');
  });

  it('a blend has the molar mass of its composition (arithmetic: 1 / Σ w/M, molar masses of IUPAC weights)', () => {
    // R-454B: 1 / (0.689/52.024 + 0.311/114.0416) = 62.614 g/mol
    expect(findRefrigerant('R-454B').molarMassKgPerMol).toBeCloseTo(0.062614, 6);
  });

  it('zeotropes leave the cylinder as liquid, azeotropes and single gases either way (series of standard 34)', () => {
    expect(findRefrigerant('R-407C').leavesCylinderAs).toBe('liquid');
    expect(findRefrigerant('R-454B').leavesCylinderAs).toBe('liquid');
    expect(findRefrigerant('R-507A').leavesCylinderAs).toBe('liquid or vapor');
    expect(findRefrigerant('R-22').leavesCylinderAs).toBe('liquid or vapor');
  });

  it.each([
    ['R-22', 0.055],
    ['R-12', 1],
    ['R-410A', 0],
    // 0.74 in the lists of the protocol: 73.8 % R-12.
    ['R-500', 0.738],
  ])('%s depletes ozone by %d (Montreal Protocol, from memory)', (designation, odp) => {
    expect(findRefrigerant(designation).odp).toBeCloseTo(odp, 4);
  });

  it.each([
    ['R-22', 'A1'],
    ['R-410A', 'A1'],
    ['R-32', 'A2L'],
    ['R-454B', 'A2L'],
    ['R-152a', 'A2'],
    ['R-290', 'A3'],
    ['R-123', 'B1'],
  ])('%s is %s (ASHRAE 34, from memory)', (designation, safetyClass) => {
    expect(findRefrigerant(designation).safetyClass).toBe(safetyClass);
  });

  it('critical points of blends are close to those of standard tables (from memory, ± 1 K and ± 2 %)', () => {
    const [r454b, r407a] = [findRefrigerant('R-454B'), findRefrigerant('R-407A')];
    expect(Math.abs(r454b.criticalTemperatureK - 273.15 - 78.1)).toBeLessThan(1);
    expect(Math.abs(r454b.criticalPressurePa / 5.27e6 - 1)).toBeLessThan(0.02);
    expect(Math.abs(r407a.criticalTemperatureK - 273.15 - 82.3)).toBeLessThan(1);
    expect(Math.abs(r407a.criticalPressurePa / 4.52e6 - 1)).toBeLessThan(0.02);
  });
});
