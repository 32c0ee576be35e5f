import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import type { CalcError } from '../../../../src/errors.ts';

const flammable = ['R-32', 'R-454B', 'R-452B', 'R-1234yf', 'R-152a', 'R-290', 'propane', 'R-600a'];
const notFlammable = ['R-22', 'R-410A', 'R-134a', 'R-407C', 'R-404A'];

describe('access functions in a sheet', () => {
  it.each(flammable)('no tap for %s (class by ASHRAE 34)', (refrigerant) => {
    expect(call('TAPSIZE', { tube: '1/4', line: 'suction', refrigerant })).toMatch(
      /^Refused: R-\w+ is A(2L|2|3), flammable/,
    );
  });

  it.each(notFlammable)('a tap for %s (class by ASHRAE 34)', (refrigerant) => {
    expect(call('TAPSIZE', { tube: '1/4', line: 'suction', refrigerant })).toMatch(/^1\/4 in: /);
  });

  it('reads tubes as fractions, decimals and millimeters', () => {
    const sizes = call('TAPSIZE', {
      tube: [['5/16'], [0.3125], ['7.94 mm'], ['8 mm'], ['5/16 in'], ['0.3125"']],
      line: 'suction',
      refrigerant: 'R-22',
    }) as string[][];
    for (const [size] of sizes) expect(size).toMatch(/^5\/16 in: /);
  });

  it('N2-04: 250 psig at 95 degF to 70 degF at 5000 ft is 238.2 psig (ideal gas, absolute units, computed)', () => {
    const found = call('TESTPRESSURE', {
      start_pressure: 250,
      start_temperature: 95,
      end_temperature: 70,
      low_side: 300,
      elevation: 5000,
    });
    expect(Math.abs((found as number) - 238.2)).toBeLessThanOrEqual(0.2);
  });

  it('says what loss a year a test still misses (ideal gas and squares of the pressures, by hand)', () => {
    const test = {
      start_pressure: 300,
      start_temperature: 70,
      end_pressure: 300,
      end_temperature: 70,
      low_side: 320,
      free_volume: '1.5 L',
      probe_doubt: 0,
    };
    const missed = (more: Readonly<Record<string, string | number>>): number =>
      Number(/up to ([\d.]+) oz\/year/.exec(call('TESTCHECK', { ...test, ...more }) as string)?.[1]);
    // Two gauge readings of 1 psi: 1.414 psi = 9751 Pa. n = 9751 x 0.0015 / (8.314 x 294.3) = 5.98 mmol a day,
    // 2.18 mol a year; x 0.1 kg/mol x 1.5 = 0.327 kg = 11.5 oz.
    expect(missed({ hours: 24 })).toBeCloseTo(11.5, 0);
    expect(missed({ hours: 1 })).toBeCloseTo(11.5 * 24, -1);
    // R-410A: 72.6 g/mol, 201 psig at 70 degF (CoolProp 8.0.0): (215.7^2 - 14.7^2) / (314.7^2 - 14.7^2) = 0.469.
    expect(missed({ hours: 24, refrigerant: 'R-410A' })).toBeCloseTo(11.5 * 0.726 * 0.469, 0);
    expect(call('TESTCHECK', { ...test, hours: 24 })).toMatch(/^Holds: .* after 24 h up to/);
    expect(call('TESTCHECK', { ...test })).not.toMatch(/year/);
  });

  it('says above which nameplate pressure a test is refused', () => {
    const outcome = call('TESTPRESSURE', {
      start_pressure: 300,
      start_temperature: 70,
      end_temperature: 70,
      low_side: 150,
    }) as CalcError;
    expect(outcome.code).toBe('refused');
    expect(outcome.message).toMatch(/300\.0 psig .* above the low side on the nameplate, 150\.0 psig/);
  });

  it('gives no number without the nameplate', () => {
    expect(
      call('TESTPRESSURE', { start_pressure: 300, start_temperature: 70, end_temperature: 70, low_side: '' }),
    ).toBe('');
  });

  it('counts microns from zero at every elevation', () => {
    expect(call('WATERBOILS', { vacuum: 500 })).toBeCloseTo(
      call('WATERBOILS', { vacuum: '66.66 Pa' }) as number,
      2,
    );
    expect((call('WATERBOILS', { vacuum: 500, elevation: 5000 }) as CalcError).code).toBe('unknown-name');
  });

  it('answers in the units of the reader', () => {
    const reading = { vacuum_start: '60 Pa', vacuum_end: '110 Pa', minutes: 10, far_end: true };
    expect(call('VACUUMCHECK', { ...reading, units: 'SI' })).toMatch(
      /^Dry and tight: 60\.0 Pa to 110\.0 Pa in 10 min/,
    );
  });
});
