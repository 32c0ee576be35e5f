import { describe, expect, it } from 'vitest';
import { checkRow, recordTables, visitLog } from '../../src/records/index.ts';
import { healthySet, si } from './reading-set.ts';
import type { Quantity } from '../../src/units/quantities.ts';

/*
 * What the record takes, field by field, as the people who keep it agreed: common practice, no source. Ends are allowed.
 */
type Ends = readonly [lowest: number | undefined, highest: number | undefined];

const limits: readonly [field: string, unit: string, reject: Ends, warn?: Ends][] = [
  ['minutes_since_change', 'min', [0, 600], [15, undefined]],
  ['elevation', 'ft', [-1000, 15_000]],
  ['outdoor_db', 'degF', [-20, 135], [55, undefined]],
  ['return_db', 'degF', [40, 110]],
  ['return_wb', 'degF', [35, 90]],
  ['supply_db', 'degF', [25, 105]],
  ['supply_wb', 'degF', [25, 90]],
  ['airflow', 'cfm', [50, 2000]],
  ['suction_line', 'degF', [0, 120]],
  ['liquid_line', 'degF', [40, 170]],
  ['discharge_line', 'degF', [60, 320], [undefined, 225]],
  ['volts_idle', 'V', [80, 280]],
  ['volts_run', 'V', [80, 280]],
  ['volts_leg2', 'V', [80, 280]],
  ['amps_total', 'A', [0, 60]],
  ['amps_comp', 'A', [0, 60]],
  ['amps_fan', 'A', [0, 60]],
  ['watts', 'W', [0, 6000]],
  ['cap_measured', 'uF', [1, 200]],
  ['cap_label', 'uF', [1, 200]],
  ['suction_pressure', 'psig', [-14.7, 400]],
  ['liquid_pressure', 'psig', [0, 700]],
  ['vacuum_start', 'micron', [0, 760_000]],
  ['vacuum_end', 'micron', [0, 760_000]],
  ['tap_added', '', [0, 1]],
];

const fieldOf = (name: string) => {
  const field = visitLog.fields.find((one) => one.name === name);
  if (!field) throw new Error(`no field ${name}`);
  return field;
};

describe('limits of the visit log', () => {
  it.each(limits)('%s in %s', (name, unit, reject, warn = [undefined, undefined]) => {
    const field = fieldOf(name);
    if (unit !== '') expect(field.unit).toBe(unit);
    expect([field.reject?.minimum, field.reject?.maximum]).toEqual(reject);
    expect([field.warn?.minimum, field.warn?.maximum]).toEqual(warn);
  });

  it.each(limits.filter(([, unit]) => !['psig', ''].includes(unit)))(
    '%s takes its ends and nothing outside them',
    (name, unit, [lowest, highest]) => {
      const found = (value: number): string[] =>
        checkRow(visitLog, { ...healthySet, [name]: si(value, fieldOf(name).quantity as Quantity, unit) })
          .filter(({ field, severity }) => field === name && severity === 'reject')
          .map(({ severity }) => severity);
      // Ends of one field may still clash with others; those findings name the other field or warn.
      if (lowest !== undefined) expect(found(lowest - 0.5)).toContain('reject');
      if (highest !== undefined) expect(found(highest + 0.5)).toContain('reject');
    },
  );
});

describe('words of the record', () => {
  const choicesOf = (table: string, name: string): readonly string[] => {
    const field = recordTables.find((one) => one.name === table)?.fields.find((one) => one.name === name);
    return field?.choices ?? [];
  };

  it.each<[string, string, readonly string[]]>([
    ['visit log', 'cert_type', ['I', 'II', 'III', 'Universal']],
    ['visit log', 'filter', ['clean', 'dirty', 'blocked', 'not seen']],
    ['visit log', 'evap_coil', ['clean', 'dirty', 'blocked', 'not seen']],
    ['visit log', 'cond_coil', ['clean', 'dirty', 'blocked', 'not seen']],
    ['visit log', 'fan', ['clean', 'dirty', 'blocked', 'not seen']],
    ['visit log', 'frost', ['none', 'inlet only', 'part', 'full', 'not seen']],
    ['visit log', 'airflow_how', ['measured', 'chart', 'assumed']],
    ['visit log', 'compressor_state', ['running', 'off', 'short cycling']],
    ['visit log', 'gauge_reference', ['gauge', 'absolute', 'gauge zeroed at site']],
    ['visit log', 'mass_basis', ['nameplate weighed in', 'residual weighed', 'unknown']],
    ['visit log', 'leak_method', ['soap', 'electronic', 'dye', 'nitrogen', 'ultrasound']],
    ['visit log', 'test_gas', ['nitrogen']],
    ['visit log', 'tap_od', ['1/4', '5/16', '3/8', '1/2', '5/8']],
    ['unit register', 'kind', ['roof', 'window', 'through-wall', 'portable', 'other']],
    ['unit register', 'metering', ['capillary', 'orifice', 'valve']],
    ['unit register', 'status', ['in use', 'stored', 'retired', 'scrapped']],
    ['unit register', 'charge_method', ['nameplate', 'measured']],
    ['cylinder register', 'kind', ['virgin', 'reclaimed', 'recovery', 'nitrogen']],
    ['cylinder register', 'place', ['truck', 'shop', 'supplier']],
    ['price list', 'unit', ['oz', 'each', 'h', 'mile', 'trip']],
    ['staff', 'cert_type', ['I', 'II', 'III', 'Universal']],
  ])('%s: %s', (table, name, words) => {
    expect(choicesOf(table, name)).toEqual(words);
  });

  it('of the reason and the stage, whatever their order', () => {
    expect(new Set(choicesOf('visit log', 'reason'))).toEqual(
      new Set(['no cool', 'weak cool', 'ice', 'trips', 'noise', 'leak', 'routine', 'warranty']),
    );
    expect(choicesOf('visit log', 'stage')).toEqual(
      expect.arrayContaining(['as found', 'after cleaning', 'after step', 'final']),
    );
  });
});

describe('what must be filled in', () => {
  const always = (table: string): string[] =>
    (recordTables.find((one) => one.name === table)?.fields ?? [])
      .filter(({ required }) => required === true)
      .map(({ name }) => name);

  it('in every row of the visit log', () => {
    expect(new Set(always('visit log'))).toEqual(
      new Set([
        ...['visit_id', 'set_no', 'unit_id', 'date_time', 'technician_id', 'cert_type', 'reason', 'stage'],
        ...['minutes_since_change', 'elevation', 'outdoor_db', 'return_db', 'return_wb', 'supply_db'],
        ...['filter', 'evap_coil', 'cond_coil', 'vents', 'fan', 'frost', 'compressor_state', 'source'],
        ...['volts_idle', 'volts_run', 'amps_total', 'amps_comp', 'amps_fan', 'gas_in_unit', 'mass_basis'],
        ...['added', 'recovered', 'hose', 'leak_found', 'tap_added', 'tap_left', 'photo_label'],
      ]),
    );
  });

  it.each<[string, readonly string[]]>([
    ['staff', ['technician_id', 'name', 'cert_type', 'cert_no', 'flammable_trained']],
    ['instruments', ['instrument_id', 'kind', 'cal_date']],
    ['price list', ['code', 'description', 'unit', 'sell', 'valid_from']],
    ['thresholds', ['name', 'value', 'source', 'checked_on']],
    ['cylinder movements', ['cyl_id', 'date', 'purpose', 'gross_before', 'gross_after']],
    ['cylinder register', ['cyl_id', 'kind', 'tare', 'status', 'place', 'opened_on', 'opening_gross']],
  ])('in every row of the %s', (table, names) => {
    expect(always(table)).toEqual(names);
  });

  /** A row that makes a field necessary, and what the finding then says. */
  const needed = (change: Record<string, string | number | boolean | undefined>): string[] =>
    checkRow(visitLog, { ...healthySet, ...change })
      .filter(({ severity }) => severity === 'missing')
      .map(({ field }) => field);

  it.each<[string, Record<string, string | number | boolean | undefined>, readonly string[]]>([
    ['an airflow', { airflow: 0.15, airflow_how: undefined }, ['airflow_how']],
    ['no airflow', { airflow: undefined, airflow_how: undefined }, []],
    ['a pressure', { suction_pressure: 6e5, gauge_reference: undefined }, ['gauge_reference']],
    ['a leak', { leak_found: true }, ['leak_place', 'leak_method', 'leak_fixed']],
    ['no leak', { leak_found: false }, []],
    [
      'a leak that was repaired',
      { leak_found: true, leak_place: 'tap', leak_method: 'soap', leak_fixed: true },
      ['verified_on'],
    ],
    ['a tap', { tap_added: 1, tap_left: 1 }, ['tap_od']],
    [
      'a pressure test',
      { test_gas: 'nitrogen' },
      ['test_start_pressure', 'test_start_temperature', 'test_end_pressure', 'test_end_temperature'],
    ],
    ['a vacuum', { vacuum_start: 40 }, ['vacuum_end', 'vacuum_minutes', 'vacuum_far_end']],
  ])('with %s', (_, change, fields) => {
    expect(needed(change)).toEqual(fields);
  });
});
