import { describe, expect, it } from 'vitest';
import { runningCapacitanceF } from '../../../src/visit/capacitor-check.ts';
import {
  frequencyTolerance,
  legUnbalance,
  unbalanceDerating,
  unbalanceStop,
} from '../../../src/visit/voltage-check.ts';
import type { Given } from '../../visit/calls.ts';
import { figureOf, textOf } from '../../visit/calls.ts';
import { tradeRows } from '../trade-rows.ts';

const rows = tradeRows(new URL('./supply-rows.csv', import.meta.url));

describe('electricity', () => {
  const supply = (volts: number, rated_volts: string, more: Given = {}): string =>
    textOf('VOLTAGECHECK', { volts, rated_volts, ...more });
  rows.words('ELEC-02', () => {
    for (const volts of [103.5, 115, 126.5]) expect(supply(volts, '115')).toMatch(/^In band/);
    expect(supply(103.4, '115')).toMatch(/^Low/);
    expect(supply(126.6, '115')).toMatch(/^High/);
  });
  rows.words('ELEC-04', () => {
    for (const volts of [187.2, 208, 230, 253]) expect(supply(volts, '208/230')).toMatch(/^In band/);
    expect(supply(187.1, '208/230')).toMatch(/^Low/);
    expect(supply(253.1, '208/230')).toMatch(/^High/);
  });
  rows.words('ELEC-05', () => {
    expect(frequencyTolerance).toBe(0.05);
    expect(supply(115, '115', { frequency: 57 })).toMatch(/^In band/);
    expect(supply(115, '115', { frequency: 56.9 })).toMatch(/^Frequency/);
  });
  rows.words('ELEC-07', () => {
    const volts = 230 * (1 - 0.051);
    expect(supply(volts, '230', { frequency: 60 * 1.016 })).toMatch(/^In band/);
    // Each inside its own limit, together 5.1 + 4.95 = 10.05 %.
    expect(supply(volts, '230', { frequency: 60 * 1.0495 })).toMatch(
      /^Frequency: .*10\.1%|^Frequency: .*10%/,
    );
  });
  rows.figure('ELEC-12', () => 100 * unbalanceDerating);
  rows.figure('ELEC-13', () => 100 * unbalanceStop);
  rows.figure('ELEC-14', () => 100 * legUnbalance([118, 124]));
  const running = (amps: number, volts: number): string =>
    textOf('CAPACITORCHECK', { label: '32', amps, volts, tolerance: 1 });
  rows.figure('ELEC-15', () => 1e6 * capacitance(4.5, 370));
  rows.figure('ELEC-16', () => 1e6 * capacitance(1, 1));
  it('says the capacitance from amps and volts in its verdict (definition: 32.3 uF at 4.5 A, 370 V)', () => {
    expect(running(4.5, 370)).toMatch(/^Good: 32\.3 uF from amps and volts/);
  });
  rows.words('ELEC-18', () => {
    const measured = (value: number): string =>
      textOf('CAPACITORCHECK', { label: '88-108 uF', measured: value });
    for (const value of [88, 100, 108]) expect(measured(value)).toMatch(/^Good/);
    expect(measured(87.9)).toMatch(/^Weak/);
    expect(measured(108.1)).toMatch(/^High/);
  });
  rows.figure('ELEC-19', () => figureOf('CORDDROP', { amps: 14, length: 100, wire_gauge: 12 }));
  rows.figure('ELEC-21', () => figureOf('EXPECTEDAMPS', { capacity: 13500, efficiency: 9.5, volts: 115 }));

  rows.setAside({
    'ELEC-09': 'range of the utility at the outlet, from memory; the unit is judged by its own nameplate',
    'ELEC-10': 'range of the utility at the meter, from memory; the unit is judged by its own nameplate',
    'ELEC-26': 'rating of a generator, not a reading of the unit; the volts it gives are judged instead',
  });
});

function capacitance(amps: number, volts: number): number {
  return runningCapacitanceF({ amps, volts, frequencyHz: 60 });
}

rows.nothingForgotten();
