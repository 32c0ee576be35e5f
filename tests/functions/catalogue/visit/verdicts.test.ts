import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import type { Given } from '../../../visit/calls.ts';
import { figureOf, refusalOf, textOf } from '../../../visit/calls.ts';

describe('EVAPCHECK', () => {
  const evap = (refrigerant: string, coilF: number, more: Given = {}): string =>
    textOf('EVAPCHECK', {
      refrigerant,
      pressure: figureOf('SATPRESSURE', { refrigerant, temperature: coilF }),
      return_temperature: 75,
      gauge_accuracy: 0.5,
      ...more,
    });

  it('places the coil against return air less 35 ± 5 degF (common practice, no source)', () => {
    expect(evap('R-22', 40)).toMatch(/^In range: mid-coil 40\.0 ± 0\.3 degF, aim 40\.0 ± 5\.0 degF$/);
    expect(evap('R-22', 34)).toMatch(/^Low/);
    expect(evap('R-22', 46)).toMatch(/^High/);
    expect(evap('R-22', 35.2)).toMatch(/^Within doubt/);
    expect(evap('R-22', 31)).toMatch(/^Too cold/);
  });

  it('speaks of charge only when the gates are known to be open', () => {
    expect(evap('R-22', 34)).toMatch(/no word on charge/);
    expect(evap('R-22', 34, { ready: 'Ready: all open' })).toMatch(/short of charge/);
    expect(evap('R-22', 34, { ready: 'Clean first: filter dirty' })).toMatch(/^Refused: .*filter dirty/);
  });

  it('does not call mild weather short of charge (maker’s normal pressures, LRP14AC page 23: 5 degF over 30)', () => {
    const saturation = (pressure: number): number =>
      figureOf('SATTEMP', { refrigerant: 'R-410A', pressure, curve: 'dew' });
    // 137 psig at 75, 150 psig at 105 degF outdoors, return air 80 degF in both.
    const expected = (outdoor_temperature: number): number =>
      figureOf('EXPECTEDEVAP', { return_temperature: 80, outdoor_temperature });
    expect(Math.abs(expected(105) - expected(75) - (saturation(150) - saturation(137)))).toBeLessThan(0.5);

    const mild = { return_temperature: 75, ready: 'Ready' };
    expect(evap('R-22', 34, { ...mild, outdoor_temperature: 95 })).toMatch(/^Low/);
    expect(evap('R-22', 34, { ...mild, outdoor_temperature: 65 })).toMatch(
      /^In range: .*aim 35\.0 ± 5\.0 degF with 65 degF outdoors/,
    );
    expect(evap('R-22', 34, mild)).toMatch(/^Low.*mild weather \(not heard\)/);
    // Below 55 degF outdoors (California RA3.2.1) nothing is judged but ice.
    expect(evap('R-22', 38, { ...mild, outdoor_temperature: 50 })).toMatch(/^Refused: 50\.0 degF outdoors/);
    expect(evap('R-22', 28, { ...mild, outdoor_temperature: 50 })).toMatch(/^Too cold/);
  });

  it('has no aim while the space is pulled down (common practice, no source: 95 degF)', () => {
    expect(evap('R-22', 60, { return_temperature: 95 })).toMatch(/^In range/);
    expect(evap('R-22', 61, { return_temperature: 96 })).toMatch(/^Refused: return air at 96\.0 degF/);
    expect(
      refusalOf('EVAPCHECK', { refrigerant: 'R-22', pressure: 68, return_temperature: 111 }),
    ).toMatchObject({ code: 'out-of-range', parameter: 'return_temperature' });
  });

  it('tells nobody to add or to stop', () => {
    for (const coil of [30, 34, 40, 50])
      expect(evap('R-22', coil, { ready: 'Ready' })).not.toMatch(/\b(add|recover|stop)\b/);
  });

  it('judges freezing at the coldest point of a blend and the aim in its middle (R-407C glides about 10 degF)', () => {
    const dew = 37;
    const pressure = figureOf('SATPRESSURE', { refrigerant: 'R-407C', temperature: dew });
    const bubble = figureOf('SATTEMP', { refrigerant: 'R-407C', pressure, curve: 'bubble' });
    expect(dew - bubble).toBeGreaterThan(9);
    const verdict = evap('R-407C', dew);
    const inlet = Number(/coil inlet ([\d.]+)/.exec(verdict)?.[1]);
    expect(verdict).toMatch(/^Too cold/);
    expect(inlet).toBeGreaterThan(bubble);
    expect(inlet).toBeLessThan((bubble + dew) / 2);
    const warmer = evap('R-407C', 45);
    expect(Number(/coil ([\d.]+)/.exec(warmer)?.[1])).toBeCloseTo(45 - (dew - bubble) / 2, 0);
  });

  it('warns where the doubt of the gauge reaches below freezing', () => {
    expect(evap('R-410A', 33, { gauge_accuracy: 3.5, return_temperature: 70 })).toMatch(
      /may be below freezing/,
    );
  });
});

describe('STANDINGCHECK', () => {
  const standing: Given = {
    refrigerant: 'R-410A',
    pressure: 218.6,
    ambient_temperature: 75,
    off_minutes: 30,
  };

  it('waits for half an hour and does not guess the time', () => {
    expect(textOf('STANDINGCHECK', standing)).toMatch(/^Matches/);
    expect(textOf('STANDINGCHECK', { ...standing, off_minutes: 29 })).toMatch(/^Refused: off for 29 min/);
    expect(textOf('STANDINGCHECK', { ...standing, off_minutes: null })).toMatch(/^Refused: .*not stated/);
  });

  it('compares blends on the bubble curve, not the dew curve', () => {
    const blend = { ...standing, refrigerant: 'R-407C' };
    const bubble = figureOf('SATPRESSURE', { refrigerant: 'R-407C', temperature: 75, curve: 'bubble' });
    const dew = figureOf('SATPRESSURE', { refrigerant: 'R-407C', temperature: 75, curve: 'dew' });
    expect(textOf('STANDINGCHECK', { ...blend, pressure: bubble })).toMatch(/^Matches/);
    expect(textOf('STANDINGCHECK', { ...blend, pressure: dew })).toMatch(/^Mismatch/);
  });

  it('warns about unequal parts above 5 degF', () => {
    expect(textOf('STANDINGCHECK', { ...standing, parts_spread: 5 })).not.toMatch(/parts differ/);
    expect(textOf('STANDINGCHECK', { ...standing, parts_spread: 8 })).toMatch(/parts differ by 8\.0 degF/);
  });

  it('knows an empty circuit and a wrong gas', () => {
    expect(textOf('STANDINGCHECK', { ...standing, pressure: 1 })).toMatch(/^Empty/);
    expect(textOf('STANDINGCHECK', { ...standing, pressure: 132 })).toMatch(/^Mismatch/);
    expect(textOf('STANDINGCHECK', { ...standing, pressure: 260 })).toMatch(/^Non-condensables: 41/);
  });

  it('refuses where unequal parts swallow the limit (R-22 at 75 degF: 5 % is 7.3 psi, 2.2 psi a degF by CoolProp 8.0.0)', () => {
    const at = (parts_spread: number, pressure = 132.2): string =>
      textOf('STANDINGCHECK', {
        refrigerant: 'R-22',
        ambient_temperature: 75,
        off_minutes: 45,
        pressure,
        parts_spread,
      });
    expect(at(5)).toMatch(/^Matches/);
    expect(at(60)).toMatch(/^Refused: 0\.\d ± 6\d\.\d psi .*another gas could be inside/);
    for (let spread = 8; spread <= 100; spread += 4) expect(at(spread)).toMatch(/^Refused/);
    // So far off that no doubt excuses it.
    expect(at(10, 190)).toMatch(/^Non-condensables/);
    expect(at(10, 60)).toMatch(/^Mismatch/);
  });

  it('says so when gauge and probe cannot decide', () => {
    expect(textOf('STANDINGCHECK', { ...standing, pressure: 232 })).toMatch(/^Within doubt: .*add nothing/);
  });
});

describe('SUPERHEATCHECK and SPLITCHECK', () => {
  const line: Given = {
    refrigerant: 'R-410A',
    pressure: 118,
    line_temperature: 62,
    return_wet_bulb: 67,
    outdoor_temperature: 95,
  };

  it('gives no advice on charge without a readiness verdict', () => {
    expect(textOf('SUPERHEATCHECK', line)).toMatch(/^High: superheat 22\.\d ± 2\.4 degF.*no word on charge/);
    expect(textOf('SUPERHEATCHECK', { ...line, ready: 'Ready' })).toMatch(/short of charge or a restriction/);
  });

  it('names floodback or a bad probe before anything else when the superheat is below zero (definition)', () => {
    for (const more of [{}, { metering: 'valve' }, { outdoor_temperature: null }, { ready: 'Ready' }]) {
      const said = textOf('SUPERHEATCHECK', { ...line, line_temperature: 35.2, ...more });
      expect(said).toMatch(/^Floodback or probe: superheat -4\.\d ± .*liquid runs back.*probe is loose/);
      expect(said).not.toMatch(/too much|recover|\badd\b/);
    }
  });

  it('hears the split first: air comes before superheat (California RA3.2.2, airflow before charge)', () => {
    const low = { ...line, line_temperature: 44, ready: 'Ready' };
    expect(textOf('SUPERHEATCHECK', { ...low, split: 'High: split 26.0 ± 1.4 degF' })).toMatch(
      /^Refused: the air comes first/,
    );
    expect(textOf('SUPERHEATCHECK', { ...low, split: 'Normal: split 19.0 ± 1.4 degF' })).toMatch(/^Low/);
    expect(textOf('SUPERHEATCHECK', low)).toMatch(/^Low.*split was not heard, air comes first/);
  });

  it('tells nobody to add, recover or stop, whatever the readings', () => {
    for (const metering of ['capillary', 'orifice', 'valve'])
      for (const refrigerant of ['R-410A', 'R-32', 'R-290'])
        for (const line_temperature of [20, 45, 60, 75, 100])
          expect(
            textOf('SUPERHEATCHECK', { ...line, refrigerant, metering, line_temperature, ready: 'Ready' }),
          ).not.toMatch(/\b(add|adding|recover|vent|stop)\b/i);
  });

  it('is never on target 9 degF under the published table (makers’ charging table, 14ACX page 26)', () => {
    const dewF = line['line_temperature'] as number;
    const zeroF = dewF - Number(/superheat ([\d.]+)/.exec(textOf('SUPERHEATCHECK', line))?.[1]);
    for (const [outdoor, wetBulb, target] of [
      [75, 62, 15],
      [95, 72, 22],
      [115, 76, 24],
      [105, 76, 26],
      [80, 76, 35],
    ] as const)
      for (const role of ['installer', 'verifier'])
        for (const accuracy of [0, 3.5])
          expect(
            textOf('SUPERHEATCHECK', {
              ...line,
              line_temperature: zeroF + target - 9,
              outdoor_temperature: outdoor,
              return_wet_bulb: wetBulb,
              role,
              gauge_accuracy: accuracy,
            }),
          ).toMatch(/^(Low|Within doubt)/);
  });

  it('holds a valve to 4 to 25 degF for the installer (California 2008, page RA3-15)', () => {
    const zeroF = 62 - 22;
    const at = (superheat: number, role: string): string =>
      textOf('SUPERHEATCHECK', {
        ...line,
        line_temperature: zeroF + superheat,
        metering: 'valve',
        role,
        gauge_accuracy: 0,
        probe_accuracy: 0,
      });
    expect(at(3, 'installer')).toMatch(/^Low/);
    expect(at(3.5, 'verifier')).toMatch(/^On target/);
    expect(at(4.5, 'installer')).toMatch(/^On target/);
    expect(at(26, 'installer')).toMatch(/^High/);
    expect(at(25.5, 'verifier')).toMatch(/^On target/);
  });

  it('needs the weather for a target', () => {
    expect(textOf('SUPERHEATCHECK', { ...line, return_wet_bulb: null })).toMatch(
      /^Refused: return_wet_bulb is needed/,
    );
  });

  it('says "within doubt" near the edge of the split band', () => {
    expect(textOf('SPLITCHECK', { return_temperature: 76, supply_temperature: 60.5 })).toMatch(
      /^Within doubt: split 15\.5 ± 1\.4 degF/,
    );
  });

  it('refuses a supply that is not colder and a wet bulb above the dry bulb (definition)', () => {
    expect(textOf('SPLITCHECK', { return_temperature: 75, supply_temperature: 75 })).toMatch(/^Refused/);
    expect(
      textOf('SPLITCHECK', { return_temperature: 75, supply_temperature: 58, return_wet_bulb: 78 }),
    ).toMatch(/^Refused: return_wet_bulb cannot be above/);
  });

  it('falls back to the rough band outside the published table (70 to 84 degF, from memory)', () => {
    expect(
      textOf('SPLITCHECK', { return_temperature: 90, supply_temperature: 72, return_wet_bulb: 72 }),
    ).toMatch(/^Normal: split 18\.0 .*rough band 15 degF to 22 degF outside the published table/);
    expect(refusalOf('TARGETSPLIT', { return_temperature: 90, return_wet_bulb: 72 }).code).toBe(
      'out-of-range',
    );
  });

  it('refuses a capacitor nobody measured', () => {
    expect(textOf('CAPACITORCHECK', { label: '35' })).toMatch(/^Refused: measured is needed/);
  });

  it('works in SI', () => {
    const si = { refrigerant: 'R-410A', pressure: '118 psig', line_temperature: 16.67, units: 'SI' };
    expect(figureOf('SUPERHEAT', si)).toBeCloseTo(
      (figureOf('SUPERHEAT', { refrigerant: 'R-410A', pressure: 118, line_temperature: 62.006 }) * 5) / 9,
      6,
    );
  });
});

describe('ranges and blanks', () => {
  it('goes through a column, and a bad cell fails alone', () => {
    const result = call('SUPERHEAT', {
      refrigerant: 'R-410A',
      pressure: [[118], [null], ['wet'], [130]],
      line_temperature: 55,
    });
    if (!Array.isArray(result)) throw new Error('no range');
    const column = result.map(([cell]) => cell);
    expect(column[0]).toBeTypeOf('number');
    expect(column[1]).toBe('');
    expect(column[2]).toMatchObject({ code: 'invalid-argument', parameter: 'pressure' });
    expect(column[3]).toBeTypeOf('number');
  });

  it('counts the discharge pressure from vacuum at the site', () => {
    const low = figureOf('COMPRESSIONRATIO', { suction_pressure: 68, discharge_pressure: 260 });
    const high = figureOf('COMPRESSIONRATIO', {
      suction_pressure: 68,
      discharge_pressure: 260,
      elevation: 7000,
    });
    expect(high).toBeGreaterThan(low);
    expect(
      refusalOf('COMPRESSIONRATIO', { suction_pressure: '-14.7 psig', discharge_pressure: 260 }).code,
    ).toBe('out-of-range');
  });
});

describe('VOLTAGECHECK legs', () => {
  const legs = (...[volts, second, third]: number[]): string =>
    textOf('VOLTAGECHECK', { volts: volts ?? 0, rated_volts: '230', second_leg: second, third_leg: third });

  it('derates three phases above 1 % and stops above 5 % (NEMA MG 1 14.36, from memory)', () => {
    expect(legs(230, 231, 229)).toMatch(/^In band/);
    expect(legs(230, 236, 228)).toMatch(/^Unbalanced: legs differ by 2\.0%; .*derated/);
    expect(legs(230, 250, 220)).toMatch(/^Unbalanced: .*do not run it/);
  });

  it('lets the legs of a split service differ up to 5 %', () => {
    expect(textOf('VOLTAGECHECK', { volts: 118, rated_volts: '115', second_leg: 124 })).toMatch(
      /^In band: .*legs within 2\.5%/,
    );
    expect(textOf('VOLTAGECHECK', { volts: 110, rated_volts: '115', second_leg: 126 })).toMatch(
      /^Unbalanced/,
    );
  });
});
