import { describe, expect, it } from 'vitest';
import { dischargeLimitK } from '../../../src/visit/discharge-check.ts';
import { lowestOutdoorK, settlingS } from '../../../src/visit/gates.ts';
import { liquidGaugePa } from '../../../src/visit/instrument-accuracy.ts';
import { psiPa } from '../../../src/units/trade.ts';
import type { CellInput } from '../../../functions/runtime/cells.ts';
import type { Given } from '../../visit/calls.ts';
import { figureOf, refusalOf, textOf } from '../../visit/calls.ts';
import { tradeRows } from '../trade-rows.ts';

const rows = tradeRows(new URL('./reading-rows.csv', import.meta.url));

const saturation = (refrigerant: string, pressure: CellInput, curve: string, elevation = 0): number =>
  figureOf('SATTEMP', { refrigerant, pressure, curve, elevation });
const pressureAt = (refrigerant: string, temperature: number, curve: string): number =>
  figureOf('SATPRESSURE', { refrigerant, temperature, curve });

describe('altitude', () => {
  rows.figure('ALT-01', () => saturation('R-22', 68.5, 'dew', 5000));
  const error = (refrigerant: string, pressure: number): number =>
    saturation(refrigerant, pressure, 'dew') - saturation(refrigerant, pressure, 'dew', 5000);
  rows.figure('ALT-04', () => error('R-410A', 118));
  rows.figure('ALT-06', () => error('R-134a', 35));
});

describe('superheat and subcooling', () => {
  const suction = { refrigerant: 'R-407C', pressure: 63, line_temperature: 52 };
  rows.figure('SH-03', () => figureOf('SUPERHEAT', suction));
  rows.figure('SH-04', () => {
    // What the wrong curve would give; ours must differ from it by the glide.
    const wrong = 52 - saturation('R-407C', 63, 'bubble');
    expect(wrong - figureOf('SUPERHEAT', suction)).toBeGreaterThan(10);
    return wrong;
  });
  rows.figure('SC-01', () =>
    figureOf('SUBCOOLING', { refrigerant: 'R-410A', pressure: 365, line_temperature: 98 }),
  );
  const liquid = { refrigerant: 'R-407C', pressure: 260, line_temperature: 100 };
  rows.figure('SC-02', () => figureOf('SUBCOOLING', liquid));
  rows.figure('SC-03', () => {
    const wrong = saturation('R-407C', 260, 'dew') - 100;
    expect(wrong - figureOf('SUBCOOLING', liquid)).toBeGreaterThan(7);
    return wrong;
  });
  rows.figure('SC-04', () =>
    figureOf('SUBCOOLING', { refrigerant: 'R-22', pressure: 226.4, line_temperature: 100 }),
  );
});

describe('target superheat', () => {
  const target = (return_wet_bulb: number, outdoor_temperature: number): number =>
    figureOf('TARGETSUPERHEAT', { return_wet_bulb, outdoor_temperature });
  const equation = (wetBulb: number, outdoor: number): number => (3 * wetBulb - 80 - outdoor) / 2;
  rows.setAside(
    Object.fromEntries(
      ['01', '02', '03', '04', '06', '07', '08', '10'].map((number) => [
        `TSH-${number}`,
        'field equation, common practice: the function holds the published table, which its help sets against it',
      ]),
    ),
  );
  for (const [id, wetBulb, outdoor] of [
    ['TSH-11', 62, 100],
    ['TSH-12', 60, 95],
  ] as const) {
    rows.words(id, () => {
      const error = refusalOf('TARGETSUPERHEAT', { return_wet_bulb: wetBulb, outdoor_temperature: outdoor });
      expect(error.code).toBe('refused');
      expect(error.message).toMatch(/below 5 degF.*warm the space or come back/);
    });
  }

  /** Superheat this far from a target of 13 degF (66 degF wet bulb, 90 degF outdoors), instruments without doubt. */
  const judged = (differenceF: number, more: Given = {}): string => {
    const dewF = saturation('R-410A', 118, 'dew');
    return textOf('SUPERHEATCHECK', {
      refrigerant: 'R-410A',
      pressure: 118,
      line_temperature: dewF + 13 + differenceF,
      ready: 'Ready',
      return_wet_bulb: 66,
      outdoor_temperature: 90,
      gauge_accuracy: 0,
      probe_accuracy: 0,
      ...more,
    });
  };
  rows.words('TSH-14', () => {
    for (const difference of [-5, -4.9, 0, 4.9, 5]) expect(judged(difference)).toMatch(/^On target/);
    expect(judged(5.1)).toMatch(/^High/);
    expect(judged(-5.1)).toMatch(/^Low/);
  });
  rows.words('TSH-15', () => {
    for (const difference of [-6, 0, 6])
      expect(judged(difference, { role: 'verifier' })).toMatch(/^On target/);
    expect(judged(6.1, { role: 'verifier' })).toMatch(/^High/);
    expect(judged(-6.1, { role: 'verifier' })).toMatch(/^Low/);
  });
  rows.words('TSH-16', () => {
    // The standard goes on to "add"; a single check names the evidence, DONEXT hears the rest.
    expect(judged(9)).toMatch(/^High: .*difference \+9\.0 degF; the coil is starved: short of charge/);
    expect(judged(9)).not.toMatch(/\badd\b/);
  });
  rows.words('TSH-17', () => {
    expect(judged(-7)).toMatch(/^Low: .*difference -7\.0 degF; more liquid .* too much charge/);
    expect(judged(-7)).not.toMatch(/\brecover\b/);
  });
  it('does not say so when ordinary instruments leave it in doubt (2.4 degF by root-sum-square)', () => {
    const ordinary = { gauge_accuracy: 3.5, probe_accuracy: 1.8 };
    expect(judged(-7, ordinary)).toMatch(/^Within doubt: superheat 6\.0 ± 2\.4 degF/);
    expect(judged(9, ordinary)).toMatch(/^High: superheat 22\.0 ± 2\.4 degF/);
  });
  rows.figure('TSH-18', () => settlingS / 60);
  rows.figure('TSH-19', () => (lowestOutdoorK * 9) / 5 - 459.67);
  rows.words('TSH-20', () => {
    expect(
      textOf('READYCHECK', { volts: 115, rated_volts: '115', frost: 'none', outdoor_temperature: 30 }),
    ).toMatch(/weigh in/);
  });
  rows.words('TSH-22', () => {
    const at = (superheat: number): string => judged(superheat - 13, { metering: 'valve', role: 'verifier' });
    for (const superheat of [3, 14, 26]) expect(at(superheat)).toMatch(/^On target/);
    expect(at(2.9)).toMatch(/^Low/);
    expect(at(26.1)).toMatch(/^High/);
  });

  rows.figure('TSH-31', () => target(56, 55));
  rows.figure('TSH-32', () => target(58, 55));
  rows.figure('TSH-34', () => equation(50, 55) - target(50, 55));
  rows.figure('TSH-35', () => equation(60, 55) - target(60, 55));
});

describe('doubt of gauges and probes', () => {
  rows.figure('TSH-25', () => liquidGaugePa / psiPa(1));
  rows.figure('TSH-26', () =>
    figureOf('DOUBT', { refrigerant: 'R-410A', pressure: 118, gauge_accuracy: 3.5, probe_accuracy: 0 }),
  );
  rows.figure('TSH-27', () =>
    figureOf('DOUBT', { refrigerant: 'R-22', pressure: 68.6, gauge_accuracy: 3.5, probe_accuracy: 0 }),
  );
  rows.figure('TSH-36', () => figureOf('DOUBT', { refrigerant: 'R-410A', pressure: 118 }));
});

describe('temperature split', () => {
  const target = (return_wet_bulb: number): number =>
    figureOf('TARGETSPLIT', { return_temperature: 70, return_wet_bulb });
  rows.figure('SPLIT-02', () => target(52));
  rows.figure('SPLIT-04', () => target(58));
  rows.figure('SPLIT-05', () => target(60));
  rows.figure('SPLIT-06', () => target(63));
  rows.figure('SPLIT-07', () => target(65));

  const judged = (differenceF: number, more: Given = {}): string => {
    const split = figureOf('TARGETSPLIT', { return_temperature: 75, return_wet_bulb: 62 }) + differenceF;
    return textOf('SPLITCHECK', {
      return_temperature: 75,
      supply_temperature: 75 - split,
      return_wet_bulb: 62,
      probe_accuracy: 0,
      ...more,
    });
  };
  rows.words('SPLIT-08', () => {
    for (const difference of [-3, 0, 3]) expect(judged(difference)).toMatch(/^Normal/);
    expect(judged(-3.1)).toMatch(/^Low/);
    expect(judged(3.1)).toMatch(/^High/);
  });
  rows.words('SPLIT-09', () => {
    for (const difference of [-4, 0, 4]) expect(judged(difference, { role: 'verifier' })).toMatch(/^Normal/);
    expect(judged(-4.1, { role: 'verifier' })).toMatch(/^Low/);
    expect(judged(4.1, { role: 'verifier' })).toMatch(/^High/);
  });
  rows.words('SPLIT-11', () => {
    expect(judged(-5, { probe_accuracy: 1 })).toMatch(/^Low: .*the air flows, capacity is likely low/);
  });
  rows.words('SPLIT-13', () => {
    const rough = (split: number): string =>
      textOf('SPLITCHECK', { return_temperature: 76, supply_temperature: 76 - split, probe_accuracy: 0 });
    for (const split of [15, 18, 22]) expect(rough(split)).toMatch(/^Normal/);
    expect(rough(14.9)).toMatch(/^Low/);
    expect(rough(22.1)).toMatch(/^High/);
  });
});

describe('expected temperatures', () => {
  rows.figure('EXP-01', () => Number(figureOf('EXPECTEDEVAP', { return_temperature: 75 }).toFixed(9)));
  rows.figure('EXP-02', () => Number(figureOf('EXPECTEDEVAP', { return_temperature: 80 }).toFixed(9)));
  rows.words('EXP-05', () => {
    const verdict = textOf('EVAPCHECK', {
      refrigerant: 'R-22',
      pressure: pressureAt('R-22', 30, 'dew'),
      return_temperature: 75,
      gauge_accuracy: 0.5,
    });
    expect(verdict).toMatch(
      /^Too cold: coil inlet 30\.0 .*below 32 degF, ice risk; look at filter.*before charge/,
    );
  });
  rows.figure('EXP-07', () => saturation('R-410A', 417, 'bubble') - 95);
  rows.figure('EXP-08', () => 75 - saturation('R-410A', 100, 'dew'));
});

describe('standing pressure', () => {
  const bubble: readonly (readonly [string, string, number])[] = [
    ['STAND-01', 'R-22', 60],
    ['STAND-02', 'R-22', 75],
    ['STAND-03', 'R-22', 90],
    ['STAND-05', 'R-410A', 75],
    ['STAND-08', 'R-32', 75],
    ['STAND-10', 'R-134a', 60],
    ['STAND-12', 'R-134a', 90],
    ['STAND-13', 'R-454B', 60],
    ['STAND-14', 'R-454B', 75],
    ['STAND-15', 'R-454B', 90],
    ['STAND-16', 'R-290', 60],
    ['STAND-17', 'R-290', 75],
    ['STAND-18', 'R-290', 90],
  ];
  for (const [id, refrigerant, ambient] of bubble) {
    rows.figure(id, () => {
      const verdict = textOf('STANDINGCHECK', {
        refrigerant,
        pressure: Number(rows.row(id).expected),
        ambient_temperature: ambient,
        off_minutes: 60,
      });
      expect(verdict).toMatch(/^Matches/);
      return pressureAt(refrigerant, ambient, 'bubble');
    });
  }
  const standing = { refrigerant: 'R-22', pressure: 150, ambient_temperature: 75, off_minutes: 60 };
  rows.figure('STAND-19', () => {
    const excess = /^Non-condensables: ([\d.]+) ± /.exec(textOf('STANDINGCHECK', standing));
    return Number(excess?.[1]);
  });
  rows.words('STAND-21', () => {
    expect(
      textOf('STANDINGCHECK', {
        refrigerant: 'R-410A',
        pressure: 218,
        ambient_temperature: 75,
        off_minutes: 60,
      }),
    ).toMatch(/what is inside, not how much/);
  });
});

describe('compression', () => {
  const ratio = (refrigerant: string): number =>
    figureOf('COMPRESSIONRATIO', {
      suction_pressure: pressureAt(refrigerant, 40, 'dew'),
      discharge_pressure: pressureAt(refrigerant, 120, 'bubble'),
    });
  rows.figure('CR-01', () => ratio('R-410A'));
  rows.figure('CR-02', () => ratio('R-22'));
  rows.words('CR-04', () => {
    const right = figureOf('COMPRESSIONRATIO', { suction_pressure: 68, discharge_pressure: 260 });
    expect(right).toBeCloseTo(3.32, 2);
    expect(right).not.toBeCloseTo(260 / 68, 1);
  });
  rows.figure('CR-05', () =>
    figureOf('COMPRESSIONRATIO', { suction_pressure: 68, discharge_pressure: 260, elevation: 5000 }),
  );
  const discharge = (refrigerant: string): number =>
    figureOf('EXPECTEDDISCHARGE', {
      refrigerant,
      suction_pressure: pressureAt(refrigerant, 40, 'dew'),
      suction_line: 55,
      discharge_pressure: pressureAt(refrigerant, 120, 'bubble'),
      efficiency: 70,
    });
  rows.figure('DIS-02', () => discharge('R-22'));
  rows.figure('DIS-04', () => discharge('R-290'));
  rows.figure('DIS-10', () => Number(((dischargeLimitK * 9) / 5 - 459.67).toFixed(9)));
});

rows.nothingForgotten();
