import { describe, expect } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import type { JudgedCause } from '../../../src/visit/diagnosis/fault-signs.ts';
import { faultSigns } from '../../../src/visit/diagnosis/fault-signs.ts';
import { causesOf, figureOf, looked, refusalOf, textOf } from '../../visit/calls.ts';
import { tradeRows } from '../trade-rows.ts';

const rows = tradeRows(new URL('./diagnosis-rows.csv', import.meta.url));

const pressureAt = (refrigerant: string, temperature: number, curve: string): number =>
  figureOf('SATPRESSURE', { refrigerant, temperature, curve });

describe('fault signs of fixed-orifice units', () => {
  const pattern = (cause: JudgedCause): string =>
    (['evaporator', 'superheat', 'condensing', 'subcooling', 'discharge', 'condenserRise', 'split'] as const)
      .map((symptom) => faultSigns[cause][symptom])
      .join(' ');
  const published: readonly (readonly [string, JudgedCause])[] = [
    ['FDD-02', 'weak compressor'],
    ['FDD-03', 'restriction'],
    ['FDD-04', 'dirty condenser'],
    ['FDD-05', 'low indoor airflow'],
  ];
  for (const [id, cause] of published) {
    rows.words(id, ({ expected }) => {
      expect(pattern(cause)).toBe(expected);
    });
  }
  rows.words('FDD-11', () => {
    expect(pattern('overcharge')).toBe('+ - + + -0 + -0');
    expect(faultSigns.overcharge.amps).toBe('+');
  });
  rows.words('FDD-12', () => {
    const { evaporator, superheat, condensing, subcooling, discharge, amps, standing } =
      faultSigns['non-condensables'];
    expect([evaporator, superheat, condensing, subcooling, discharge, amps, standing]).toEqual([
      '+0',
      '-0',
      '+',
      '+',
      '+',
      '+',
      '+',
    ]);
  });
  rows.words('FDD-14', () => {
    expect(faultSigns['dirty condenser'].amps).toBe('+');
  });
  rows.words('FDD-15', () => {
    expect(faultSigns['low indoor airflow'].amps).toBe('-0');
  });
  rows.words('FDD-16', () => {
    expect(faultSigns['weak compressor'].amps).toBe('-');
  });
});

describe('what the signs lead to', () => {
  const starved = {
    refrigerant: 'R-410A',
    suction_pressure: 84,
    suction_line: 70,
    return_temperature: 78,
    supply_temperature: 70,
    return_wet_bulb: 65,
    outdoor_temperature: 92,
    gauge_accuracy: 1,
  };
  rows.words('FDD-17', () => {
    // Without the liquid side the commoner of the two leads, and the other stays possible.
    expect(
      causesOf(starved)
        .slice(0, 2)
        .map(([, cause]) => cause),
    ).toEqual(['low charge', 'restriction']);
    // Condensing 110 degF (366 psig): 2 degF of subcooling at a line of 108 degF, 22 degF at 88.
    const liquid = { liquid_pressure: 366, liquid_gauge_accuracy: 1 };
    expect(causesOf({ ...starved, ...liquid, liquid_line: 108 })[0]?.[1]).toBe('low charge');
    expect(causesOf({ ...starved, ...liquid, liquid_line: 88 })[0]?.[1]).toBe('restriction');
  });
  rows.words('FDD-19', () => {
    const everything = {
      ...starved,
      liquid_pressure: 366,
      liquid_gauge_accuracy: 1,
      liquid_line: 88,
      discharge_line: 222,
      condenser_air: 100,
      amps: 6,
      rated_amps: 10,
      standing: 'Matches',
    };
    const first = causesOf(everything)[0];
    expect(first?.[1]).toBe('restriction');
    expect(first?.[6]).toMatch(/works, then starves, has moisture freezing/);
  });
  rows.words('FDD-20', () => {
    // Coil 33 degF: low in the heat; of a mild day a sound unit's is 5 degF lower, and no charge fault is in question.
    const mild = { ...starved, suction_pressure: 102, suction_line: 48, supply_temperature: 60 };
    const range = (outdoor_temperature: number): number =>
      Number(
        /evaporator [^;]* low \(([\d.]+) degF/.exec(
          causesOf({ ...mild, outdoor_temperature })[0]?.[4] ?? '',
        )?.[1],
      );
    expect(range(92) - range(66)).toBeCloseTo(5, 0);
    const places = (outdoor_temperature: number): number =>
      causesOf({ ...mild, outdoor_temperature }).findIndex(([, cause]) => cause === 'low charge');
    expect(places(92)).toBe(1);
    expect(places(66)).toBeGreaterThan(2);
    const cold = call('CAUSES', { ...looked, ...mild, outdoor_temperature: 50 });
    expect(cold).toMatchObject({ code: 'refused', parameter: 'outdoor_temperature' });
  });
});

describe('gates', () => {
  rows.words('GATE-04', () => {
    expect(textOf('READYCHECK', { ...looked, outdoor_temperature: 54.9 })).toMatch(
      /^Cold outdoors: .*weigh in/,
    );
    expect(textOf('READYCHECK', { ...looked, outdoor_temperature: 55 })).toMatch(/^Ready/);
    expect(refusalOf('TARGETSUPERHEAT', { return_wet_bulb: 62, outdoor_temperature: 54.9 }).code).toBe(
      'refused',
    );
  });
  rows.words('GATE-05', () => {
    expect(refusalOf('TARGETSUPERHEAT', { return_wet_bulb: 60, outdoor_temperature: 95 }).code).toBe(
      'refused',
    );
    expect(
      textOf('SUPERHEATCHECK', {
        refrigerant: 'R-410A',
        pressure: 118,
        line_temperature: 50,
        return_wet_bulb: 60,
        outdoor_temperature: 95,
      }),
    ).toMatch(/^Refused: the target is below 5 degF/);
  });
  rows.words('GATE-06', () => {
    expect(textOf('AMPSCHECK', { amps: 9, rated_amps: 10, volts: 100, rated_volts: '115' })).toMatch(
      /^Refused/,
    );
    expect(textOf('AMPSCHECK', { amps: 9, rated_amps: 10 })).toMatch(/^Refused/);
  });
  const standing = { refrigerant: 'R-22', pressure: 150, ambient_temperature: 75, off_minutes: 60 };
  rows.words('GATE-07', () => {
    expect(textOf('STANDINGCHECK', standing)).toMatch(/add nothing, recover and identify/);
    // 5 % of 146.9 psia is 7.3 psi; gauge and probe without doubt show the limit itself.
    const sharp = { ...standing, gauge_accuracy: 0, probe_accuracy: 0 };
    const matching = pressureAt('R-22', 75, 'bubble');
    expect(textOf('STANDINGCHECK', { ...sharp, pressure: matching + 7 })).toMatch(/^Matches/);
    expect(textOf('STANDINGCHECK', { ...sharp, pressure: matching + 7.7 })).toMatch(/^Non-condensables/);
    expect(textOf('STANDINGCHECK', { ...sharp, pressure: matching - 7.7 })).toMatch(/^Mismatch.*add nothing/);
  });
  rows.words('GATE-09', () => {
    expect(refusalOf('CHARGEROOM', { nameplate: 14, mass_basis: 'unknown', added: 0 }).code).toBe('refused');
  });
  rows.setAside({ 'GATE-08': 'the line tap belongs to the access family: see the tests of TAPSIZE' });
});

rows.nothingForgotten();
