import { describe, expect, it } from 'vitest';
import * as conditions from '../../src/records/conditions.ts';
import type { Condition, RecordRow } from '../../src/records/index.ts';
import { isRequiredHere, recordTables } from '../../src/records/index.ts';
import { lineOf } from './declared/line.ts';
import { registerLines } from './declared/registers.ts';
import { visitLogLines } from './declared/visit-log.ts';

interface ExpectedTable {
  readonly head: string;
  readonly fields: readonly (readonly [group: string, line: string])[];
}

function expectedTables(text: string): ExpectedTable[] {
  return text
    .trim()
    .split(/^## /m)
    .slice(1)
    .map((block) => {
      const [head = '', ...lines] = block.trim().split('\n');
      let group = '';
      const fields: [string, string][] = [];
      for (const line of lines) {
        if (line.startsWith('# ')) group = line.slice(2);
        else fields.push([group, line]);
      }
      return { head, fields };
    });
}

const expected = expectedTables(visitLogLines + registerLines);

describe('the declared tables', () => {
  it('stand in the order of the sheets, each with its title and key', () => {
    expect(recordTables.map(({ name, title, key }) => `${name} | ${title} | ${key.join(', ')}`)).toEqual(
      expected.map(({ head }) => head),
    );
  });

  it.each(expected)('$head', ({ head, fields }) => {
    const table = recordTables.find(({ name }) => head.startsWith(`${name} |`));
    expect(table?.fields.map((field) => [field.group, lineOf(field)])).toEqual(fields);
  });
});

describe('fields needed in some rows', () => {
  /** Rows that need the field, rows that do not; a number of zero is an answer but nothing was added, fitted or taken. */
  const cases: readonly [Condition, readonly string[], readonly RecordRow[], readonly RecordRow[]][] = [
    [
      conditions.whenPressureRead,
      ['liquid_pressure', 'suction_pressure'],
      [{ suction_pressure: 5e5 }, { liquid_pressure: 2e6 }],
      [{}, { suction_line: 290 }],
    ],
    [
      conditions.whenStanding,
      ['compressor_state', 'liquid_pressure', 'suction_pressure'],
      [
        { compressor_state: 'off', suction_pressure: 9e5 },
        { compressor_state: 'off', liquid_pressure: 9e5 },
      ],
      [
        { compressor_state: 'off' },
        { compressor_state: 'running', suction_pressure: 5e5 },
        { suction_pressure: 5e5 },
      ],
    ],
    // Common practice: 208 V supplies sag, 120 V ones never come near 180 V.
    [
      conditions.whenTwoLegs,
      ['volts_run'],
      [{ volts_run: 180 }, { volts_run: 208 }],
      [{ volts_run: 179.9 }, { volts_run: '208' }, {}],
    ],
    [
      conditions.whenWeighed,
      ['added', 'recovered'],
      [{ added: 0.1 }, { recovered: 0.1 }, { added: 0, recovered: 0.1 }],
      [{ added: 0, recovered: 0 }, {}, { added: '1' }],
    ],
    [conditions.whenAdded, ['added'], [{ added: 0.1 }], [{ added: 0 }, { recovered: 0.1 }, {}]],
    [conditions.whenLeakFound, ['leak_found'], [{ leak_found: true }], [{ leak_found: false }, {}]],
    [conditions.whenLeakFixed, ['leak_fixed'], [{ leak_fixed: true }], [{ leak_fixed: false }, {}]],
    [
      conditions.whenTested,
      [
        'test_end_pressure',
        'test_end_temperature',
        'test_gas',
        'test_start_pressure',
        'test_start_temperature',
      ],
      [
        { test_gas: 'nitrogen' },
        { test_start_pressure: 1e6 },
        { test_start_temperature: 295 },
        { test_end_pressure: 1e6 },
        { test_end_temperature: 295 },
      ],
      [{}, { suction_pressure: 5e5 }],
    ],
    [
      conditions.whenPumped,
      ['vacuum_end', 'vacuum_minutes', 'vacuum_start'],
      [{ vacuum_start: 40 }, { vacuum_end: 60 }, { vacuum_minutes: 600 }],
      [{}, { vacuum_far_end: true }],
    ],
    [conditions.whenTapAdded, ['tap_added'], [{ tap_added: 1 }], [{ tap_added: 0 }, { tap_left: 1 }, {}]],
    [conditions.whenAirflowGiven, ['airflow'], [{ airflow: 0.15 }], [{ airflow_how: 'chart' }, {}]],
    [
      conditions.whenRetired,
      ['status'],
      [{ status: 'retired' }, { status: 'scrapped' }],
      [{ status: 'in use' }, { status: 'stored' }, {}],
    ],
  ];

  it.each(cases)('%o', ({ uses, when }, looksAt, needed, free) => {
    expect([...uses].sort()).toEqual(looksAt);
    for (const row of needed) expect(when(row), JSON.stringify(row)).toBe(true);
    for (const row of free) expect(when(row), JSON.stringify(row)).toBe(false);
  });

  const needs = (table: string, row: RecordRow): string[] =>
    (recordTables.find(({ name }) => name === table)?.fields ?? [])
      .filter((field) => typeof field.required !== 'boolean' && isRequiredHere(field, row))
      .map(({ name }) => name);

  it('of the registers', () => {
    // Only a recovery cylinder is filled in the field and retested; nitrogen is no refrigerant. Common practice.
    const refilled = ['gas', 'water_capacity', 'service_pressure', 'last_test', 'test_due'];
    expect(needs('cylinder register', { kind: 'recovery' })).toEqual(refilled);
    expect(needs('cylinder register', { kind: 'virgin' })).toEqual(['gas']);
    expect(needs('cylinder register', { kind: 'nitrogen' })).toEqual([]);
    expect(needs('instruments', { kind: 'scale' })).toEqual(['scale_step']);
    expect(needs('instruments', { kind: 'gauge' })).toEqual([]);
    expect(needs('unit register', { status: 'scrapped' })).toEqual(['gas_recovered_on', 'gas_recovered_by']);
    expect(needs('unit register', { status: 'in use' })).toEqual([]);
  });

  it('say which fields of their own table they look at', () => {
    for (const { name, fields } of recordTables) {
      const names = fields.map((field) => field.name);
      for (const field of fields) {
        if (typeof field.required === 'boolean') continue;
        expect(field.required.uses.length, `${name} ${field.name}`).toBeGreaterThan(0);
        expect(names, `${name} ${field.name}`).toEqual(expect.arrayContaining([...field.required.uses]));
      }
    }
  });
});
