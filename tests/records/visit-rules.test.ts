import { describe, expect, it } from 'vitest';
import { renderPhrase } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import { visitRules } from '../../src/records/visit-rules.ts';
import type { RecordRow, RowContext } from '../../src/records/index.ts';
import { si } from './reading-set.ts';

/*
 * Rules between fields of a reading set, each at its end and just past it, and with a field blank. The figures are common
 * practice of those who keep the record, no source: watts up to 1.02 x volts x amps, capacitor 6 %, cylinder two scale
 * steps, scale 1 % of the charge, calibration 12 months, pressure test not above the low side of the nameplate.
 * Sentences: regression.
 */
const reader = { units: unitSystem('US'), atmospherePa: 101_325 };

/** What all rules together find in a row that holds nothing else. */
function found(row: RecordRow, context: RowContext = {}): string[] {
  return visitRules.flatMap((rule) => {
    const finding = rule(row, context);
    return finding ? [`${finding.severity} ${finding.field}: ${renderPhrase(finding.message, reader)}`] : [];
  });
}

const degF = (value: number): number => si(value, 'temperature', 'degF');
const oz = (value: number): number => si(value, 'mass', 'oz');

interface Case {
  readonly rule: string;
  /** Breaks the rule, every field of it needed. */
  readonly row: RecordRow;
  readonly context?: RowContext;
  readonly finding: string;
  /** Rows that keep the rule, the nearest first. */
  readonly kept: readonly RecordRow[];
}

const cases: readonly Case[] = [
  {
    rule: 'no reading set of tomorrow',
    row: { date_time: 20_001 },
    context: { today: 20_000 },
    finding: 'reject date_time: Date is in the future',
    kept: [{ date_time: 20_000.99 }, { date_time: 19_000 }],
  },
  {
    rule: 'none before the unit was there',
    row: { date_time: 19_999.99 },
    context: { installedOn: 20_000 },
    finding: 'reject date_time: Date is before the unit was installed',
    kept: [{ date_time: 20_000 }, { date_time: 20_500 }],
  },
  {
    rule: 'wet bulb of the return air not above dry bulb',
    row: { return_wb: degF(81), return_db: degF(80) },
    finding: 'reject return_wb: Return wet bulb 81.0 degF is above return dry bulb 80.0 degF',
    kept: [{ return_wb: degF(80), return_db: degF(80) }],
  },
  {
    rule: 'wet bulb of the supply air not above dry bulb',
    row: { supply_wb: degF(61), supply_db: degF(60) },
    finding: 'reject supply_wb: Supply wet bulb 61.0 degF is above supply dry bulb 60.0 degF',
    kept: [{ supply_wb: degF(60), supply_db: degF(60) }],
  },
  {
    rule: 'supply air cooler than return air',
    row: { compressor_state: 'running', supply_db: 300, return_db: 300 },
    finding: 'warn supply_db: Supply air is no cooler than return air while the compressor runs',
    kept: [
      { compressor_state: 'running', supply_db: 299.9, return_db: 300 },
      { compressor_state: 'off', supply_db: 301, return_db: 300 },
    ],
  },
  {
    rule: 'suction below liquid pressure',
    row: { compressor_state: 'running', suction_pressure: 1e6, liquid_pressure: 1e6 },
    finding: 'reject suction_pressure: Suction pressure is not below liquid pressure while running',
    kept: [
      { compressor_state: 'running', suction_pressure: 999_999, liquid_pressure: 1e6 },
      { compressor_state: 'off', suction_pressure: 1e6, liquid_pressure: 1e6 },
      { compressor_state: 'short cycling', suction_pressure: 2e6, liquid_pressure: 1e6 },
    ],
  },
  {
    rule: 'true power not above apparent power',
    // 100 V x 10 A = 1000 VA, and 2 % of it for the meters.
    row: { watts: 1021, volts_run: 100, amps_total: 10 },
    finding: 'reject watts: Watts 1021 W exceed volts times amps, 1000 W',
    kept: [
      { watts: 1020, volts_run: 100, amps_total: 10 },
      { watts: 5, volts_run: 100, amps_total: 10 },
    ],
  },
  {
    rule: 'capacitor within 6 % of its label, low',
    row: { cap_measured: 46.9e-6, cap_label: 50e-6 },
    finding: 'warn cap_measured: Run capacitor is more than 6 % off its label',
    kept: [
      { cap_measured: 47e-6, cap_label: 50e-6 },
      { cap_measured: 53e-6, cap_label: 50e-6 },
    ],
  },
  {
    rule: 'capacitor within 6 % of its label, high',
    row: { cap_measured: 53.1e-6, cap_label: 50e-6 },
    finding: 'warn cap_measured: Run capacitor is more than 6 % off its label',
    kept: [{ cap_measured: 53e-6, cap_label: 50e-6 }],
  },
  {
    rule: 'the gas of the unit',
    row: { gas_in_unit: 'R-410A', gas_added: 'R-32' },
    finding: 'reject gas_added: Gas added R-32 is not the gas in the unit, R-410A: stop',
    kept: [{ gas_in_unit: 'R-32', gas_added: 'R-32' }],
  },
  {
    rule: 'no more than the nameplate',
    row: { added: oz(14.1) },
    context: { nameplateKg: oz(14) },
    finding: 'reject added: Added 14.1 oz is above the nameplate, 14.0 oz',
    kept: [{ added: oz(14) }, { added: oz(14) + 1e-10 }, { added: 0 }],
  },
  {
    rule: 'nothing added to an unknown charge',
    row: { mass_basis: 'unknown', added: oz(0.1) },
    finding: 'warn mass_basis: Refrigerant was added without knowing what the unit held',
    kept: [
      { mass_basis: 'unknown', added: 0 },
      { mass_basis: 'residual weighed', found: oz(9), added: oz(3) },
    ],
  },
  {
    rule: 'a scale fine enough',
    row: { scale_step: oz(0.15) },
    context: { nameplateKg: oz(14) },
    // 0.15 of 14 is 1.07 %, by division.
    finding: 'warn scale_step: Scale step is 1.1% of the charge; 1 % or less is good',
    kept: [{ scale_step: oz(0.139) }],
  },
  {
    rule: 'a scale calibrated within 12 months',
    // Common practice: a leap year has 366 days.
    row: { date_time: 20_367, cal_date: 20_000 },
    finding: 'warn cal_date: Scale was calibrated more than 12 months before the visit',
    kept: [{ date_time: 20_366, cal_date: 20_000 }],
  },
  {
    rule: 'no test pressure above the low side',
    row: { test_start_pressure: 2_000_100 },
    context: { lowSideDesignPa: 2_000_000 },
    finding: 'reject test_start_pressure: Test pressure is above the low-side pressure of the nameplate',
    kept: [{ test_start_pressure: 2_000_000 }, { test_start_pressure: 2_000_000.5 }],
  },
  {
    rule: 'a vacuum that rises or holds',
    row: { vacuum_start: 40, vacuum_end: 39 },
    finding: 'reject vacuum_end: Vacuum cannot get deeper with the pump shut off',
    kept: [
      { vacuum_start: 40, vacuum_end: 40 },
      { vacuum_start: 40, vacuum_end: 60 },
    ],
  },
  {
    rule: 'no tap on a flammable gas',
    row: { tap_added: 1 },
    context: { flammable: true },
    finding: 'reject tap_added: A line tap must not be fitted to a unit with a flammable gas',
    kept: [{ tap_added: 0 }],
  },
];

describe('rules between fields', () => {
  it.each(cases)('$rule', ({ row, context, finding, kept }) => {
    expect(found(row, context)).toEqual([finding]);
    for (const other of kept) expect(found(other, context), JSON.stringify(other)).toEqual([]);
  });

  it.each(cases)('$rule: not asked while a field or the fact about the unit is blank', ({ row, context }) => {
    for (const name of Object.keys(row)) {
      expect(found({ ...row, [name]: undefined }, context), name).toEqual([]);
    }
    if (context) expect(found(row)).toEqual([]);
  });

  it('every rule of the log is tried here or as the account of the cylinder', () => {
    const rules = new Set(cases.map(({ finding }) => finding));
    // The capacitor stands twice, once for each side; the account of the cylinder below.
    expect(visitRules).toHaveLength(rules.size + 1);
  });

  it('a gas that is not flammable may be tapped', () => {
    expect(found({ tap_added: 1 }, { flammable: false })).toEqual([]);
  });
});

describe('the cylinder against what was booked', () => {
  // Two weighings, each good to a step of 0.1 oz: common practice, no source. Starts and ends: start less end by hand.
  const scale = { scale_step: oz(0.1) };
  const weighed = (start: number, end: number, booked: RecordRow): string[] =>
    found({ ...scale, cyl_start: oz(start), cyl_end: oz(end), ...booked });
  const gap = (differ: string, booked: string, unexplained: string): string[] => [
    `reject cyl_end: Cylinder weights differ by ${differ} oz, booked are ${booked} oz: ${unexplained} oz unexplained`,
  ];

  it.each<[string, number, number, RecordRow, string[]]>([
    ['charged, to the ounce', 100, 96.5, { added: oz(3), hose: oz(0.5) }, []],
    ['charged, two steps too many', 100, 96.3, { added: oz(3), hose: oz(0.5) }, []],
    ['charged, two steps too few', 100, 96.7, { added: oz(3), hose: oz(0.5) }, []],
    ['more left than booked', 100, 96.2, { added: oz(3), hose: oz(0.5) }, gap('3.8', '3.5', '0.3')],
    ['less left than booked', 100, 96.8, { added: oz(3), hose: oz(0.5) }, gap('3.2', '3.5', '0.3')],
    ['hose only', 100, 99.5, { hose: oz(0.5) }, []],
    ['nothing booked', 100, 99.5, {}, gap('0.5', '0.0', '0.5')],
    ['recovered, to the ounce', 100, 112, { recovered: oz(12), added: 0 }, []],
    ['recovered, less arrived', 100, 111, { recovered: oz(12), added: 0 }, gap('11.0', '12.0', '1.0')],
    ['recovered with a hose loss', 100, 112, { recovered: oz(12), hose: oz(1) }, []],
    ['recovered and charged in one row', 100, 50, { recovered: oz(12), added: oz(12) }, []],
  ])('%s', (_, start, end, booked, expected) => {
    expect(weighed(start, end, booked)).toEqual(expected);
  });

  it('needs both weights and the step', () => {
    const row: RecordRow = { ...scale, cyl_start: oz(100), cyl_end: oz(90), added: oz(1) };
    expect(found(row)).toHaveLength(1);
    for (const name of ['cyl_start', 'cyl_end', 'scale_step']) {
      expect(found({ ...row, [name]: undefined }), name).toEqual([]);
    }
  });
});
