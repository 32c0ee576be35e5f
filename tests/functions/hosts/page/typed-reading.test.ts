import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import { understood } from '../../../../functions/hosts/page/worker/typed-reading.ts';
import { visitTableOf } from '../../../../functions/hosts/page/worker/visit/visit-table.ts';
import { serialOf } from '../../../../functions/workbook/model/serial-date.ts';

const nothing = (): undefined => undefined;
const session = new LogSession(
  new Uint8Array(readFileSync(join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx'))),
  nothing,
  nothing,
);
session.workbook.recalculate({ everything: true });
const readings = visitTableOf(session.workbook);
if (readings === undefined) throw new Error('the sample has no readings');
const { table, columns } = readings;
/** 1 September 2026, 9:40 in the morning. */
const now = new Date(2026, 8, 1, 9, 40);
const day = (year: number, month: number, date: number): number => serialOf(year, month, date, 1900);

function read(field: string, typed: string): number | string | undefined {
  const column = columns.get(field);
  if (column === undefined) throw new Error(`no column ${field}`);
  const meant = understood(session, table.sheet, { row: table.firstRow, column }, typed, now);
  if (meant === undefined) return undefined;
  return 'refusal' in meant ? meant.refusal : (meant.content as { value: number }).value;
}

/**
 * Factors: 1 psi = 6.894 757 kPa, 1 bar = 14.503 774 psi, 1 oz = 28.349 523 g, 1 ft = 0.3048 m (NIST SP 811, appendix B);
 * 1 in of mercury = 0.491 154 psi (the same). The first unit of the sample stands at 640 ft: psia less its air pressure.
 */
describe('readings as people write them, in a log that reads psig, degF, oz and lb', () => {
  test.each([
    ['suction_pressure', '62 psig', 62],
    ['suction_pressure', '62psig', 62],
    ['suction_pressure', '62 PSI', 62],
    ['suction_pressure', '427 kPa', 61.93],
    ['suction_pressure', '4.3 bar', 62.37],
    ['suction_pressure', '62,5', 62.5],
    ['suction_pressure', '-5 psig', -5],
    ['outdoor_db', '80F', 80],
    ['outdoor_db', '80 °F', 80],
    ['outdoor_db', '26.7 C', 80.06],
    ['outdoor_db', '26,7 degC', 80.06],
    ['added', '1 lb 2 oz', 18],
    ['added', '1lb 2oz', 18],
    ['added', '370g', 13.051],
    ['added', '0.37 kg', 13.051],
    ['added', '12 oz', 12],
    ['added', '5/16 oz', 0.3125],
    ['cyl_start', '24 lb 3.5 oz', 24.21875],
    ['cyl_start', '24 lb', 24],
    ['cyl_start', '11 kg', 24.2508],
    ['volts_run', '115 V', 115],
    ['amps_total', '8.4A', 8.4],
    ['amps_total', '8,4 A', 8.4],
    ['watts', '1.1 kW', 1100],
    ['minutes_since_change', '20 min', 20],
    ['minutes_since_change', '1 h', 60],
    ['vacuum_end', '400 microns', 400],
    ['cap_label', '35 uF', 35],
  ])('%s: %s', (field, typed, expected) => {
    const value = read(field, typed);
    expect(value).toBeTypeOf('number');
    expect(Math.abs(Number(value) - expected) / Math.max(1, Math.abs(expected))).toBeLessThan(2e-4);
  });

  test.each([
    ['date_time', '6/3/26 9:40am', day(2026, 6, 3) + 580 / 1440],
    ['date_time', '6/3/2026 9:40', day(2026, 6, 3) + 580 / 1440],
    ['date_time', '13.04.2026', day(2026, 4, 13)],
    ['date_time', '13.04.2026 17:05', day(2026, 4, 13) + 1025 / 1440],
    ['date_time', '2026-11-25 9:40 pm', day(2026, 11, 25) + 1300 / 1440],
    ['date_time', 'today', day(2026, 9, 1)],
    ['date_time', 'now', day(2026, 9, 1) + 580 / 1440],
    ['date_time', '9:40', day(2026, 9, 1) + 580 / 1440],
    ['date_time', '9 pm', day(2026, 9, 1) + 21 / 24],
    ['date_time', 'today 8:15', day(2026, 9, 1) + 495 / 1440],
    ['verified_on', 'today', day(2026, 9, 1)],
    ['verified_on', '6/3/26', day(2026, 6, 3)],
    ['cal_date', '2026-03-16', day(2026, 3, 16)],
  ])('%s: %s', (field, typed, expected) => {
    expect(Number(read(field, typed))).toBeCloseTo(expected, 9);
  });

  test.each([
    ['added', '13 fl oz', 'by weight'],
    ['added', '12-14 oz', 'which of the two'],
    ['added', '12 to 14', 'which of the two'],
    ['added', 'a little', 'a number'],
    ['suction_pressure', '62 oz', 'a known unit'],
    ['outdoor_db', 'hot', 'Such as'],
    ['date_time', '31/31/26', 'no date here'],
    ['date_time', 'last Tuesday', 'no date here'],
    ['date_time', '25:99', 'no date here'],
    ['verified_on', '9:40', 'no date here'],
  ])('%s: %s is refused in words with an example', (field, typed, words) => {
    const told = read(field, typed);
    expect(told).toBeTypeOf('string');
    expect(String(told)).toContain(words);
  });

  test('plain figures, blanks, formulas and free text are left to the cell', () => {
    for (const typed of ['62', '', '=A1', "'62 psig", '1,234'])
      expect(read('suction_pressure', typed)).toBeUndefined();
    expect(read('note', '62 psig at noon')).toBeUndefined();
  });

  test('a gauge that reads from vacuum takes a gauge figure with the air pressure on top', () => {
    const gauge = columns.get('gauge_reference');
    if (gauge === undefined) throw new Error('no column');
    const sheet = table.sheet.index;
    session.type(sheet, [{ row: table.firstRow, column: gauge, typed: 'absolute' }], false);
    // Standard atmosphere at 640 ft: 99.004 kPa (ISO 2533), 14.36 psi.
    expect(Number(read('suction_pressure', '62 psig'))).toBeCloseTo(76.36, 1);
    session.undo();
  });
});

test('what was typed with a unit stands in the cell in the unit of its column, and is told', () => {
  const column = columns.get('added') ?? 0;
  const spot = { row: table.firstRow, column };
  const outcome = session.type(table.sheet.index, [{ ...spot, typed: '1 lb 4 oz' }], false);
  expect(outcome.notice).toBe('“1 lb 4 oz” is 20 oz');
  expect(table.sheet.value(spot.row, column)).toBe(20);
  const refused = session.type(table.sheet.index, [{ ...spot, typed: '13 fl oz' }], false);
  expect(refused.wasRefused).toBe(true);
  expect(table.sheet.value(spot.row, column)).toBe(20);
});
