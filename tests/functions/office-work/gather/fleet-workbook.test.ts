import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { unitRegister } from '../../../../src/records/index.ts';
import { fillTemplate } from '../../../../functions/office-work/fill/fill-template.ts';
import { fleetFill } from '../../../../functions/office-work/gather/fleet-fill.ts';
import { Gathering } from '../../../../functions/office-work/gather/gathering.ts';
import { Judge } from '../../../../functions/office-work/gather/judge.ts';
import { rowsOf } from '../../../../functions/office-work/gather/read-log.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';
import { catalogueFunctions } from '../../../../functions/workbook/catalogue-functions.ts';
import type { Recalculation } from '../../../../functions/workbook/recalculate.ts';
import { recalculate } from '../../../../functions/workbook/recalculate.ts';

const root = join(import.meta.dirname, '../../../..');
const template = (name = 'fleet-template.xlsx') =>
  new Uint8Array(readFileSync(join(root, 'sample-workbooks', name)));

const register = [
  'Unit,Site,Refrigerant,Nameplate charge (oz),Installed,Status',
  'R-02,Pier 4,R-410A,17,2024-03-01,in use',
  'W-12,Mill Lane,R-410A,14,2025-10-02,in use',
].join('\n');

const log = [
  'Unit,Visit,Set,Date and time,Technician,Gas in unit,Added (oz),Why added,Recovered,Lost in hoses,Note,Outdoor dry bulb,Verdict',
  'W-12,V-1,1,2026-04-20 09:00,A,R-410A,3,leak,0,0.2,"=HYPERLINK(""http://example.org"",""look"")",-5,low charge',
  'W-12,V-3,1,2026-06-19 10:00,B,R-410A,3,leak,0,0.1,+1 555 0100,60,dirty filter',
  'R-02,V-2,1,2026-05-04 11:00,A,R-410A,0,,0,0,@SUM(A1:A9),61,nothing wrong',
  'R-02,V-2,2,2026-05-04 11:30,A,R-410A,0,,0,0,-2+3,61,',
].join('\n');

function build(
  files: Readonly<Record<string, string>>,
  unitsWord: 'US' | 'SI' = 'US',
  name?: string,
): Recalculation {
  const units = unitSystem(unitsWord);
  const gathering = new Gathering();
  for (const [file, text] of Object.entries(files)) {
    for (const row of rowsOf(file, new TextEncoder().encode(text), unitSystem('US')).rows) gathering.add(row);
  }
  const fill = fleetFill(gathering, {
    units,
    unitsWord,
    judge: new Judge(gathering.rows(unitRegister), new Date(2026, 10, 1)),
    gathered: 'test',
    visitPrice: 95,
    fileName: (file) => file,
  });
  return recalculate(fillTemplate(template(name), fill), catalogueFunctions);
}

const partsOf = (bytes: Uint8Array) => unzipSync(bytes);
const text = (bytes: Uint8Array, part: string) => strFromU8(partsOf(bytes)[part] ?? new Uint8Array());

let fleet: Recalculation;
let sheetOf: (
  name: string,
) => NonNullable<ReturnType<Recalculation['loaded']['workbook']['findTable']>>['sheet'];

beforeAll(() => {
  fleet = build({ 'a.csv': log, 'units.csv': register });
  sheetOf = (name) => {
    const found = fleet.loaded.sheets.find(({ sheet }) => sheet.name === name);
    if (!found) throw new Error(`no sheet ${name}`);
    return found.sheet;
  };
});

/** Value under a heading in a row of a table, rows from 0. */
function cell(result: Recalculation, table: string, row: number, heading: string): unknown {
  const found = result.loaded.workbook.findTable(table);
  if (!found) throw new Error(`no table ${table}`);
  const column = found.columns.indexOf(heading);
  expect(column, `${table} has ${heading}`).toBeGreaterThanOrEqual(0);
  return found.sheet.value(found.firstRow + row, found.left + column);
}

describe('the fleet workbook', () => {
  test('calculates without an error or an unknown function', () => {
    expect(fleet.errors).toEqual([]);
    expect(fleet.kept).toEqual([]);
    expect(fleet.cycles).toEqual([]);
  });

  test('has one row per unit with loss, trend and next call', () => {
    const sheet = sheetOf('Units');
    const row = (at: number) => Array.from({ length: 16 }, (_, column) => sheet.value(at, column));
    // Source: arithmetic, as in the example of FLEETSUMMARY: 3 oz in 60 days between top-ups; 6 of 14 oz within 365 days.
    expect(row(5).slice(0, 2)).toEqual(['R-02', 'Pier 4']);
    const leaking = row(6);
    expect(leaking[0]).toBe('W-12');
    expect(leaking[7]).toBeCloseTo(6, 9);
    expect(leaking[8]).toBeCloseTo((3 * 365) / 60, 9);
    expect(leaking[9]).toBeCloseTo((100 * 6) / 14, 9);
    expect(leaking[10]).toBe('One interval');
    // The log's own words of the last set that has any.
    expect(leaking[6]).toBe('dirty filter');
    expect(row(5)[6]).toBe('nothing wrong');
    // Two visits at 95.
    expect(leaking[15]).toBe(190);
  });

  test('has formulas where it shows figures, and array formulas over exactly the rows there are', () => {
    const units = text(fleet.bytes, 'xl/worksheets/sheet2.xml');
    expect(units).toMatch(/<f t="array" ref="A5:T7">OUNCE\.FLEETSUMMARY\(/);
    const overview = text(fleet.bytes, 'xl/worksheets/sheet1.xml');
    expect(overview.match(/<f>/g)?.length).toBeGreaterThan(100);
    expect(text(fleet.bytes, 'xl/tables/table1.xml')).toContain('ref="A5:CJ9"');
  });

  test('spells our functions as Excel keeps them when it is made for Excel', () => {
    const forExcel = build({ 'a.csv': log, 'units.csv': register }, 'US', 'fleet-template-excel.xlsx');
    expect(text(forExcel.bytes, 'xl/worksheets/sheet2.xml')).toContain('>_xldudf_OUNCE_FLEETSUMMARY(');
    expect(forExcel.errors).toEqual([]);
  });

  test('has native charts that follow cells, with a series for each gas that was added', () => {
    const parts = partsOf(fleet.bytes);
    const charts = Object.keys(parts).filter((name) => /charts\/chart\d+\.xml$/.test(name));
    expect(charts).toHaveLength(4);
    const byGas = text(fleet.bytes, 'xl/charts/chart1.xml');
    expect(byGas.match(/<ser>/g)).toHaveLength(1);
    expect(byGas).toContain('Added by month and gas, oz');
    // Two technicians: rows 23 and 24.
    expect(text(fleet.bytes, 'xl/charts/chart4.xml')).toContain('Figures!$Q$23:$Q$24');
  });

  test('keeps texts that begin like formulas as texts, and numbers as numbers', () => {
    const notes = [0, 1, 2, 3].map((row) => cell(fleet, 'Ledger', row, 'Note'));
    expect(notes).toEqual(['=HYPERLINK("http://example.org","look")', '@SUM(A1:A9)', '-2+3', '+1 555 0100']);
    const ledger = text(fleet.bytes, 'xl/worksheets/sheet3.xml');
    expect(ledger).not.toMatch(/<f[^>]*>[^<]*(?:HYPERLINK|@SUM|555)/);
    expect(ledger.match(/t="inlineStr"><is><t xml:space="preserve">[=+@-]/g)).toHaveLength(4);
    expect(cell(fleet, 'Ledger', 0, 'Outdoor dry bulb')).toBeCloseTo(-5, 9);
  });

  test('written in SI it says the same', () => {
    const metric = build({ 'a.csv': log, 'units.csv': register }, 'SI');
    expect(metric.errors).toEqual([]);
    // Definitions: 3 oz = 85.048569375 g, -5 °F = -20.5556 °C.
    expect(cell(metric, 'Ledger', 0, 'Added')).toBeCloseTo(85.048569375, 6);
    expect(cell(metric, 'Ledger', 0, 'Outdoor dry bulb')).toBeCloseTo(-185 / 9, 6);
    const units = metric.loaded.sheets.find(({ sheet }) => sheet.name === 'Units')?.sheet;
    expect(units?.value(6, 7)).toBeCloseTo(6 * 28.349523125, 6);
    expect(units?.value(6, 9)).toBeCloseTo((100 * 6) / 14, 6);
  });

  test('lists conflicts with both versions and what must be corrected with its cell', () => {
    const other = log.replace('V-3,1,2026-06-19 10:00,B,R-410A,3', 'V-3,1,2026-06-19 10:00,B,R-410A,4');
    const both = build({ 'a.csv': log, 'b.csv': other, 'units.csv': register });
    expect(
      ['Counts', 'File', 'Row', 'Differs in', 'Says'].map((heading) => cell(both, 'Conflicts', 0, heading)),
    ).toEqual(['yes', 'a.csv', '3', 'Added', 'Added: 3']);
    expect(cell(both, 'Conflicts', 1, 'Says')).toBe('Added: 4');
    expect(cell(both, 'Conflicts', 1, 'File')).toBe('b.csv');
    // Counted once: the 3 oz of the first file.
    expect(both.loaded.workbook.findTable('Ledger')?.lastRow).toBe(
      fleet.loaded.workbook.findTable('Ledger')?.lastRow,
    );
    expect(cell(both, 'Ledger', 3, 'Mark')).toBe('conflict');
    // Below 55 °F is a warning of the record; the cell is the one in the log it came from.
    const last = (both.loaded.workbook.findTable('Corrections')?.lastRow ?? 0) - 5;
    const found = Array.from({ length: last + 1 }, (_, row) => ({
      what: cell(both, 'Corrections', row, 'What'),
      cells: cell(both, 'Corrections', row, 'Cells'),
    })).find(({ what }) => String(what).includes('Outdoor dry bulb -5.0 degF'));
    expect(found?.cells).toBe('L2');
  });

  test('a unit that only the log knows gets its row too', () => {
    const more = build({
      'a.csv': `${log}\nX-1,V-9,1,2026-07-01,A,R-22,1,leak,0,0,,70`,
      'units.csv': register,
    });
    expect(text(more.bytes, 'xl/worksheets/sheet2.xml')).toContain('ref="A5:T8"');
    const units = more.loaded.sheets.find(({ sheet }) => sheet.name === 'Units')?.sheet;
    expect([units?.value(7, 0), units?.value(7, 3)]).toEqual(['X-1', 'not in register']);
  });
});
