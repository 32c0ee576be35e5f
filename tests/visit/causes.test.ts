import { describe, expect, it } from 'vitest';
import type { Deviation } from '../../src/visit/diagnosis/deviation.ts';
import { deviations } from '../../src/visit/diagnosis/deviations.ts';
import type { JudgedCause } from '../../src/visit/diagnosis/fault-signs.ts';
import { faultSigns, judgedCauses, signSource } from '../../src/visit/diagnosis/fault-signs.ts';
import { beliefs } from '../../src/visit/diagnosis/likelihood.ts';
import { rankCauses } from '../../src/visit/diagnosis/rank-causes.ts';
import type { Sign, Symptom } from '../../src/visit/diagnosis/symptoms.ts';
import { everySymptom } from '../../src/visit/diagnosis/symptoms.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../src/units/trade.ts';
import type { Given } from './calls.ts';
import { causesOf, looked, nothingMeasured, refusalOf } from './calls.ts';
import { scenarios, starvedRoofUnit } from './scenarios.ts';

describe('fault scenarios (sign table applied by hand to reading sets of our own)', () => {
  it.each(scenarios)('$name', ({ readings, first, next, confidence }) => {
    const [line] = causesOf(readings);
    expect(line?.[1]).toBe(first);
    if (confidence !== undefined) expect(line?.[2]).toBe(confidence);
    if (next) expect(line?.[6]).toMatch(next);
  });
});

describe('the ranking', () => {
  const unmistakable = (cause: JudgedCause): Deviation[] =>
    everySymptom.flatMap((symptom): Deviation[] => {
      const sign = faultSigns[cause][symptom];
      return sign === '+' || sign === '0' || sign === '-' ? [{ symptom, sign, said: [] }] : [];
    });

  it.each(judgedCauses.map((cause) => ({ cause })))(
    'puts $cause first when all its signs are there',
    ({ cause }) => {
      const [first] = rankCauses(unmistakable(cause), nothingMeasured);
      expect(first?.causes).toEqual([cause]);
      expect(first?.belief).toBeGreaterThan(0.5);
      expect(first?.against).toEqual([]);
    },
  );

  it('shares belief out completely (definition)', () => {
    const found = new Map<Symptom, Sign>([
      ['split', '-'],
      ['amps', '+'],
    ]);
    const sum = [...beliefs(found).values()].reduce((total, share) => total + share, 0);
    expect(sum).toBeCloseTo(1, 12);
  });

  it('does not call a unit sound whose superheat is out of its band while air, discharge and amps are normal (rule of ours)', () => {
    const found: Deviation[] = [
      { symptom: 'superheat', sign: '+', said: [] },
      { symptom: 'split', sign: '0', said: [] },
      { symptom: 'discharge', sign: '0', said: [] },
      { symptom: 'amps', sign: '0', said: [] },
    ];
    const ranked = rankCauses(found, nothingMeasured);
    const sound = ranked.findIndex(({ causes }) => causes.includes('nothing wrong'));
    const starved = ranked.findIndex(({ causes }) => causes.includes('low charge'));
    expect(starved).toBeLessThan(sound);
  });

  it('keeps low charge and restriction together until subcooling has a sign', () => {
    const starved = unmistakable('low charge').filter(({ symptom }) => symptom !== 'subcooling');
    const doubtful: Deviation = { symptom: 'subcooling', sign: 'within doubt', said: [] };
    for (const found of [starved, [...starved, doubtful]]) {
      expect(rankCauses(found, nothingMeasured)[0]?.causes).toEqual(['low charge', 'restriction']);
      expect(rankCauses(found, nothingMeasured)[0]?.next).toBe('subcooling');
    }
  });
});

describe('readings and their doubt', () => {
  const split = (splitF: number, airProbeF: number): Deviation | undefined =>
    deviations({
      ...nothingMeasured,
      returnTemperatureK: fahrenheitK(76),
      supplyTemperatureK: fahrenheitK(76 - splitF),
      airProbeK: fahrenheitDifferenceK(airProbeF),
    })[0];

  it('gives a sign only when the doubt does not reach across the edge (rough band 15 to 22 degF)', () => {
    expect(split(14, 0)?.sign).toBe('-');
    expect(split(14, 1)?.sign).toBe('within doubt');
    expect(split(18, 1)?.sign).toBe('0');
    expect(split(24, 1)?.sign).toBe('+');
    expect(split(23, 1)?.sign).toBe('within doubt');
  });

  it('has nothing to say about what was not measured', () => {
    expect(deviations(nothingMeasured)).toEqual([]);
  });

  it('takes no sign from amps while the supply is out of its band or unknown', () => {
    const amps = { ...nothingMeasured, amps: 14, ratedAmps: 10 };
    const ratedVolts = { lowerV: 115, upperV: 115 };
    expect(deviations(amps)).toEqual([]);
    expect(deviations({ ...amps, gates: { volts: 100, ratedVolts } })).toEqual([]);
    expect(deviations({ ...amps, gates: { volts: 115, ratedVolts } })[0]?.sign).toBe('+');
  });
});

describe('gates and refusals', () => {
  const starved = starvedRoofUnit;

  it('leaves causes inside the circuit unproven while a gate was not looked at, and says at which to look', () => {
    const [first] = causesOf({ ...starved, filter: 'not seen' });
    expect(first?.slice(0, 3)).toEqual(['1', 'low charge or restriction', 'unproven']);
    expect(first?.[6]).toBe('look at the filter');
    expect(first?.[5]).toMatch(/the filter$/);
  });

  it.each<[string, Given, string]>([
    ['frost', { frost: 'inlet only' }, 'ice'],
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
    expect(first?.slice(1, 3)).toEqual(['low charge or restriction', 'not judged']);
    expect(first?.[6]).toMatch(/add nothing; recover and identify/);
  });

  it('shows where its signs come from', () => {
    const last = causesOf(starved).at(-1);
    expect(last?.[1]).toBe('source');
    expect(last?.[3]).toBe(signSource);
  });
});
