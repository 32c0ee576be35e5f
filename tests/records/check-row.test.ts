import { describe, expect, it } from 'vitest';
import { renderPhrase } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import type { RecordRow, RowContext } from '../../src/records/index.ts';
import { checkRow, completenessOf, visitLog } from '../../src/records/index.ts';
import { healthySet, si } from './reading-set.ts';

const reader = { units: unitSystem('US'), atmospherePa: 101_325 };

/** "severity field: message" of every finding. */
function findings(changes: RecordRow, context?: RowContext): string[] {
  return checkRow(visitLog, { ...healthySet, ...changes }, context).map(
    ({ field, severity, message }) => `${severity} ${field}: ${renderPhrase(message, reader)}`,
  );
}

const ounces = (value: number): number => si(value, 'mass', 'oz');
const pounds = (value: number): number => si(value, 'mass', 'lb');

/** A top-up with everything that it needs. */
const topUp: RecordRow = {
  mass_basis: 'residual weighed',
  found: 0.25,
  added: ounces(3),
  added_reason: 'leak',
  hose: ounces(0.5),
  gas_added: 'R-410A',
  cyl_id: 'C-3',
  cyl_start: pounds(20),
  cyl_end: pounds(20 - 3.5 / 16),
  scale_id: 'S-1',
  scale_step: ounces(0.1),
  cal_date: 20_500,
};

describe('a row of the visit log', () => {
  it('passes when complete and plausible', () => {
    expect(findings({})).toEqual([]);
    expect(findings(topUp)).toEqual([]);
  });

  it('reports what is blank, and takes zero as an answer', () => {
    expect(findings({ added: undefined })).toEqual(['missing added: Added is blank; it is required']);
    expect(findings({ added: 0 })).toEqual([]);
  });

  it('asks for more when refrigerant was added', () => {
    expect(findings({ ...topUp, cyl_id: undefined, cal_date: undefined })).toEqual([
      'missing cyl_id: Cylinder is blank; it is required when refrigerant was added or recovered',
      'missing cal_date: Scale calibrated is blank; it is required when refrigerant was added',
    ]);
  });

  it('rejects and warns at the limits of the record', () => {
    expect(findings({ outdoor_db: si(150, 'temperature', 'degF') })).toEqual([
      'reject outdoor_db: Outdoor dry bulb 150.0 degF is above 135.0 degF',
    ]);
    expect(findings({ outdoor_db: si(135, 'temperature', 'degF') })).toEqual([]);
    expect(findings({ outdoor_db: si(50, 'temperature', 'degF') })).toEqual([
      'warn outdoor_db: Outdoor dry bulb 50.0 degF is below 55.0 degF',
    ]);
    expect(findings({ minutes_since_change: 6 * 60 })).toEqual([
      'warn minutes_since_change: Minutes since change 6 min is below 15 min',
    ]);
    expect(findings({ discharge_line: si(240, 'temperature', 'degF') })).toHaveLength(1);
    expect(findings({ tap_added: 2, tap_od: '1/4' })[0]).toMatch(/^reject tap_added/);
    expect(findings({ set_no: 1.5 })).toEqual(['reject set_no: Set must be a whole number']);
  });

  it('counts gauge limits from the air pressure at the site of the row', () => {
    const elevation = si(5000, 'altitude', 'ft');
    const atmospherePa = 84_307; // U.S. Standard Atmosphere 1976, table, 5,000 ft: 12.228 psia
    const pressure = (gaugePsi: number): number => atmospherePa + gaugePsi * 6894.757;
    const row = { elevation, gauge_reference: 'gauge' };
    expect(findings({ ...row, suction_pressure: pressure(399) })).toEqual([]);
    expect(findings({ ...row, suction_pressure: pressure(401) })).toEqual([
      'reject suction_pressure: Suction pressure 401.0 psi gauge is above 400.0 psi gauge',
    ]);
  });

  it('accepts a numbered stage and no other word', () => {
    expect(findings({ stage: 'after step 2' })).toEqual([]);
    expect(findings({ stage: 'later' })[0]).toMatch(/^reject stage: Stage "later" is none of: as found/);
  });

  it('holds fields against each other', () => {
    const degF = (value: number): number => si(value, 'temperature', 'degF');
    expect(findings({ return_wb: degF(81) })[0]).toMatch(
      /^reject return_wb: Return wet bulb 81.0 degF is above/,
    );
    expect(findings({ supply_db: degF(82) })[0]).toMatch(/^warn supply_db/);
    expect(findings({ supply_db: degF(82), compressor_state: 'off' })).toEqual([]);
    expect(findings({ watts: 116 * 8.4 * 1.02 })).toEqual([]);
    expect(findings({ watts: 116 * 8.4 * 1.03 })[0]).toMatch(/^reject watts/);
    expect(findings({ cap_measured: 37.6e-6, cap_label: 40e-6 })).toEqual([]);
    expect(findings({ cap_measured: 37.5e-6, cap_label: 40e-6 })[0]).toMatch(/^warn cap_measured/);
    expect(
      findings({ vacuum_start: 40, vacuum_end: 30, vacuum_minutes: 600, vacuum_far_end: true })[0],
    ).toMatch(/^reject vacuum_end/);
  });

  it('stops another gas and a tap on a flammable one', () => {
    expect(findings({ ...topUp, gas_added: 'R-22' })).toEqual([
      'reject gas_added: Gas added R-22 is not the gas in the unit, R-410A: stop',
    ]);
    expect(findings({ tap_added: 1, tap_left: 1, tap_od: '1/4' }, { flammable: true })[0]).toMatch(
      /^reject tap_added: A line tap must not/,
    );
  });

  it('weighs the cylinder against what was booked, within two scale steps', () => {
    expect(findings({ ...topUp, cyl_end: pounds(20 - 3.7 / 16) })).toEqual([]);
    expect(findings({ ...topUp, cyl_end: pounds(20 - 4.5 / 16) })).toEqual([
      'reject cyl_end: Cylinder weights differ by 4.5 oz, booked are 3.5 oz: 1.0 oz unexplained',
    ]);
  });

  it('uses what is known of the unit', () => {
    const unit = { nameplateKg: ounces(14), installedOn: 20_649, today: 20_647 };
    expect(findings({}, unit)).toEqual([
      'reject date_time: Date is in the future',
      'reject date_time: Date is before the unit was installed',
    ]);
    expect(findings({ ...topUp, added: ounces(15), hose: 0, cyl_end: pounds(20 - 15 / 16) }, unit)).toContain(
      'reject added: Added 15.0 oz is above the nameplate, 14.0 oz',
    );
    const coarse = { ...topUp, scale_step: ounces(0.5) };
    // 0.5 oz of 14 oz is 3.6 %, by division.
    expect(findings(coarse, { nameplateKg: ounces(14) })).toContain(
      'warn scale_step: Scale step is 3.6% of the charge; 1 % or less is good',
    );
  });
});

describe('completeness', () => {
  it('is filled over required', () => {
    const gaps = { ...healthySet, added: undefined, photo_label: undefined };
    const whole = completenessOf(visitLog, healthySet);
    expect(whole).toMatchObject({ share: 1, missing: [] });
    expect(completenessOf(visitLog, gaps)).toEqual({
      required: whole.required,
      filled: whole.required - 2,
      share: (whole.required - 2) / whole.required,
      missing: ['Added', 'Photo of the label'],
    });
  });

  it('counts 12 of 14 as 85.7 %', () => {
    // Definition: filled / required.
    const fields = Array.from({ length: 14 }, (_, index) => ({
      name: `f${String(index)}`,
      heading: `F ${String(index)}`,
      kind: 'text' as const,
      required: true,
      origin: 'input' as const,
      group: 'g',
      help: 'h',
    }));
    const row = Object.fromEntries(fields.slice(2).map(({ name }) => [name, 'x']));
    const { share } = completenessOf({ name: 't', title: 'T', key: ['f0'], fields, rules: [] }, row);
    expect(100 * share).toBeCloseTo(85.7, 1);
  });
});
