import { beforeAll, describe, expect, test } from 'vitest';

import type { CellValue } from '../../functions/workbook/model/values.ts';
import { CellError } from '../../functions/workbook/model/values.ts';
import type { Recalculation } from '../../functions/workbook/recalculate.ts';
import { visits } from '../../sample-workbooks/visit-log/scenario/visits.ts';
import { readings } from '../../sample-workbooks/visit-log/sheets/readings.ts';
import { columnNumber } from '../../sample-workbooks/writing/address.ts';
import { recalculateSample } from '../../sample-workbooks/writing/cached-values.ts';
import { committed } from './built.ts';

let result: Recalculation;
beforeAll(() => {
  result = recalculateSample(committed('visit-log', 'others'));
});

function sheet(name: string) {
  const found = result.loaded.sheets.find((part) => part.sheet.name === name)?.sheet;
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
}

function cell(row: number, heading: string): CellValue {
  return sheet('Readings').value(row - 1, columnNumber(readings.letters(heading)) - 1);
}

/** Rows of the log that belong to a visit. */
function rowsOf(visit: string): number[] {
  const rows: number[] = [];
  for (let row = readings.firstRow; row <= readings.lastRow; row += 1) {
    if (cell(row, 'Visit') === visit) rows.push(row);
  }
  return rows;
}

const number = (row: number, heading: string): number => {
  const value = cell(row, heading);
  if (typeof value !== 'number') throw new Error(`${heading} in row ${String(row)} is ${String(value)}`);
  return value;
};

describe('the scenario', () => {
  test('has about forty sets over twelve units, one free row, and the cases the log must show', () => {
    const sets = visits.flatMap((visit) => visit.sets);
    expect(sets.length).toBeGreaterThanOrEqual(40);
    expect(new Set(visits.map((visit) => visit.unit)).size).toBe(12);
    expect(sets.some((set) => set.frost === 'full')).toBe(true);
    expect(sets.some((set) => set.compressor === 'off')).toBe(true);
  });

  /** Gauge readings that belong to these saturation temperatures. Source: CoolProp 8, standard atmosphere of the site. */
  test.each([
    { visit: 'V-101', set: 6, expected: 41, gas: 'R-410A at 640 ft' },
    { visit: 'V-103', set: 2, expected: 43, gas: 'R-32 at 640 ft' },
    { visit: 'V-104', set: 4, expected: 40.5, gas: 'R-410A at 8,200 ft' },
    { visit: 'V-105', set: 3, expected: 42, gas: 'R-22 at 8,200 ft' },
    { visit: 'V-109', set: 3, expected: 43, gas: 'R-407C dew at 590 ft' },
    { visit: 'V-110', set: 2, expected: 41, gas: 'R-134a at 640 ft' },
  ])('$gas: the coil of $visit is at $expected °F', ({ visit, set, expected }) => {
    const row = rowsOf(visit)[set - 1] ?? 0;
    // A gauge is read to 1 psi, which is up to 0.7 °F for R-134a.
    expect(Math.abs(number(row, 'Suction saturation') - expected)).toBeLessThan(0.75);
  });

  test('superheat falls and the coil warms as ounces go in', () => {
    for (const visit of ['V-101', 'V-104', 'V-113']) {
      const rows = rowsOf(visit).filter((row) => cell(row, 'Compressor') === 'running');
      const superheats = rows.map((row) => number(row, 'Superheat'));
      const coils = rows.map((row) => number(row, 'Suction saturation'));
      expect(superheats).toEqual([...superheats].sort((a, b) => b - a));
      expect(coils).toEqual([...coils].sort((a, b) => a - b));
    }
  });

  test('what left a cylinder is what was booked, within two steps of the scale', () => {
    for (let row = readings.firstRow; row <= readings.lastRow; row += 1) {
      const unexplained = cell(row, 'Unexplained');
      if (typeof unexplained === 'number') expect(Math.abs(unexplained)).toBeLessThanOrEqual(0.2);
    }
  });
});

describe('"Do next" follows the order of the job', () => {
  /** What the story of each visit asks for; by the rules of the job, not by what the sheet happened to say. */
  test.each([
    ['V-101', ['clean-first', 'add', 'add', 'measure-more', 'wait', 'stop-enough']],
    ['V-102', ['clean-first', 'wait', 'done']],
    ['V-107', ['thaw-first', 'wait', 'done']],
    ['V-112', ['measure-more', 'recover-and-weigh-in', 'refer']],
    ['V-114', ['too-cold']],
  ])('%s', (visit, expected) => {
    expect(rowsOf(visit).map((row) => cell(row, 'Action'))).toEqual(expected);
  });

  test.each(['V-106', 'V-110'])('%s puts the supply right before anything else', (visit) => {
    expect(cell(rowsOf(visit)[0] ?? 0, 'Action')).toBe('fix-supply-first');
  });

  test('V-105 finds air in the circuit, standing and running, and stops at the nameplate after the weigh-in', () => {
    expect(rowsOf('V-105').map((row) => cell(row, 'Action'))).toEqual([
      'recover-and-identify',
      'recover-and-identify',
      'stop-mass-limit',
    ]);
  });

  test('every answer has its reason, and the next ounces stand only beside an answer that adds', () => {
    for (let row = readings.firstRow; row <= readings.lastRow; row += 1) {
      if (cell(row, 'Unit') === null || cell(row, 'Unit') === '') continue;
      expect(String(cell(row, 'Why'))).not.toBe('');
      expect(typeof cell(row, 'Next step') === 'number').toBe(cell(row, 'Action') === 'add');
    }
  });
});

describe('refusals', () => {
  test('no verdict about charge passes a closed gate', () => {
    let closed = 0;
    for (let row = readings.firstRow; row <= readings.lastRow; row += 1) {
      const ready = cell(row, 'Ready');
      if (typeof ready !== 'string' || ready === '' || ready.startsWith('Ready')) continue;
      closed += 1;
      for (const heading of ['Coil check', 'Superheat check', 'Split check']) {
        const verdict = cell(row, heading);
        if (verdict !== '' && verdict !== null) expect(verdict).toMatch(/^Refused/);
      }
      expect(cell(row, 'Next step')).not.toBeTypeOf('number');
    }
    expect(closed).toBeGreaterThanOrEqual(8);
  });

  test('no room and no next step where nobody weighed what is inside', () => {
    for (let row = readings.firstRow; row <= readings.lastRow; row += 1) {
      if (cell(row, 'Mass known by') !== 'unknown') continue;
      expect(cell(row, 'Room')).toBe('unknown');
      expect(cell(row, 'Next step') ?? '').toBe('');
    }
  });

  test('a free row stays empty in every computed column', () => {
    const free = Array.from(
      { length: readings.lastRow - readings.firstRow + 1 },
      (_, index) => readings.firstRow + index,
    ).filter((row) => cell(row, 'Unit') === null);
    expect(free.length).toBeGreaterThan(10);
    const computed = readings.native.columns.filter(({ fill }) => fill !== undefined);
    for (const row of free) {
      for (const { heading } of computed) {
        if (heading === 'Pressure units') continue;
        expect(cell(row, heading) ?? '', `${heading}, row ${String(row)}`).toBe('');
      }
    }
  });
});

describe('the visit card', () => {
  test('fills in for every visit of the log without an error', () => {
    const card = sheet('Visit card');
    for (const { visit } of visits) {
      result.loaded.workbook.setValue(card, 3, 1, visit);
      result.loaded.workbook.recalculate();
      for (const formula of card.formulaCells()) {
        expect(formula.value, `${visit}, row ${String(formula.row + 1)}`).not.toBeInstanceOf(CellError);
      }
      const unit = visits.find((candidate) => candidate.visit === visit)?.unit;
      expect(card.value(4, 1)).toBe(unit);
    }
  });

  test('charges weighed ounces only: V-104 took 2.7 oz of R-410A at 2.60', () => {
    const card = sheet('Visit card');
    result.loaded.workbook.setValue(card, 3, 1, 'V-104');
    result.loaded.workbook.recalculate();
    const price = [...Array(60).keys()].find((row) => card.value(row, 2) === 'Refrigerant, net') ?? -1;
    // 1.0 + 1.0 + 0.7 oz weighed in, nothing recovered, 2.60 an ounce in the price list: 7.02.
    expect(card.value(price, 3)).toBeCloseTo(7.02, 9);
  });
});

describe('the unit system', () => {
  test('SI reads the same numbers as other units and says so in the headings', () => {
    const again = recalculateSample(committed('visit-log', 'others'));
    const settings = again.loaded.sheets.find(({ sheet: { name } }) => name === 'Settings')?.sheet;
    if (settings === undefined) throw new Error('no settings');
    const row = [...Array(40).keys()].find((index) => settings.value(index, 0) === 'Unit system') ?? -1;
    again.loaded.workbook.setValue(settings, row, 1, 'SI');
    again.loaded.workbook.recalculate();
    const chart = again.loaded.sheets.find(({ sheet: { name } }) => name === 'Pressure chart')?.sheet;
    expect(chart?.value(6, 0)).toBe('°C');
    expect(chart?.value(7, 1)).toBe('kPa');
    expect(chart?.value(8, 0)).toBe(-20);
  });
});
