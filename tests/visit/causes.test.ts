import { describe, expect, it } from 'vitest';
import { causeSource } from '../../src/visit/diagnosis/fault-signs.ts';
import type { Given } from './calls.ts';
import { causesOf, looked, refusalOf } from './calls.ts';
import { scenarios, starvedRoofUnit } from './scenarios.ts';

describe('fault scenarios (reading sets of our own: sizes common practice, directions the sign table)', () => {
  it.each(scenarios)('$name', ({ readings, first, next, confidence }) => {
    const [line] = causesOf(readings);
    expect(line?.[1]).toBe(first);
    if (confidence !== undefined) expect(line?.[2]).toBe(confidence);
    if (next) expect(line?.[6]).toMatch(next);
  });
});

describe('gates and refusals', () => {
  const starved = starvedRoofUnit;

  it('leaves causes inside the circuit unproven while a gate was not looked at, and says at which to look', () => {
    const [first] = causesOf({ ...starved, filter: 'not seen' });
    expect(first?.slice(0, 3)).toEqual(['1', 'low charge', 'unproven']);
    expect(first?.[6]).toBe('look at the filter');
    expect(first?.[5]).toMatch(/the filter$/);
  });

  it.each<[string, Given, string]>([
    ['frost', { frost: 'part' }, 'ice'],
    ['dirt inside', { indoor_coil: 'dirty' }, 'low indoor airflow'],
    ['dirt outside', { outdoor_coil: 'blocked' }, 'dirty condenser'],
    ['supply', { volts: 130 }, 'supply fault'],
  ])('judges nothing inside the circuit behind a closed gate: %s', (_, gate, seen) => {
    const lines = causesOf({ ...starved, ...gate });
    expect(lines[0]?.slice(1, 3)).toEqual([seen, 'seen']);
    for (const cause of ['low charge', 'restriction', 'overcharge', 'non-condensables', 'weak compressor']) {
      expect(lines.find(([, name]) => name === cause)?.[2]).toBe('not judged');
    }
  });

  it.each<[string, Given, string]>([
    ['settling', { minutes_since_change: 14 }, 'minutes_since_change'],
    ['cold outdoors', { outdoor_temperature: 50 }, 'outdoor_temperature'],
    ['valve-fed', { metering: 'valve' }, 'metering'],
    ['wet bulb above dry bulb', { return_wet_bulb: 80 }, 'return_wet_bulb'],
  ])('refuses: %s', (_, given, parameter) => {
    expect(refusalOf('CAUSES', { ...looked, ...starved, ...given })).toMatchObject({
      code: 'refused',
      parameter,
    });
  });

  it('does not take hoses on the wrong side for readings', () => {
    expect(refusalOf('CAUSES', { ...looked, ...starved, liquid_pressure: 80 })).toMatchObject({
      code: 'out-of-range',
      parameter: 'liquid_pressure',
    });
  });

  it('has nothing to report when nothing was measured', () => {
    expect(refusalOf('CAUSES', { ...looked, outdoor_temperature: 90 }).code).toBe('not-available');
  });

  it('says nothing about the amount of a gas that is not identified', () => {
    const [first] = causesOf({ ...starved, standing: 'Mismatch: 60 psi below' });
    expect(first?.slice(1, 3)).toEqual(['low charge', 'not judged']);
    expect(first?.[6]).toMatch(/add nothing; recover and identify/);
  });

  it('shows where its signs come from', () => {
    const last = causesOf(starved).at(-1);
    expect(last?.[1]).toBe('source');
    expect(last?.[3]).toBe(causeSource);
  });
});
