import { describe, expect, test } from 'vitest';
import { FileError } from '../../../../functions/workbook/file/file-error.ts';
import { rowsOf } from '../../../../functions/office-work/gather/read-log.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';
import { buildXlsx } from '../../workbook/build-xlsx.ts';
import type { TestCell } from '../../workbook/build-xlsx.ts';

const us = unitSystem('US');
const ounceKg = 0.028349523125;
const csv = (...lines: string[]) => new TextEncoder().encode(lines.join('\n'));
const read = (...lines: string[]) => rowsOf('log.csv', csv(...lines), us).rows;

describe('columns of a log', () => {
  test('are found by name, heading or alias, with units in brackets, among others and in any order', () => {
    const [row] = read(
      'added [g],Mood,unit_id,visit_id,Date,set number,"Outdoor dry bulb (degC)"',
      '85.0485693750,fine,U-1,V-1,2026-07-14,1,35',
    );
    // Definitions: the ounce is 28.349523125 g; 35 °C = 308.15 K.
    expect(row?.values['added']).toBeCloseTo(3 * ounceKg, 12);
    expect(row?.values['outdoor_db']).toBeCloseTo(308.15, 9);
    expect(row?.values['unit_id']).toBe('U-1');
  });

  test.each([
    [
      'above',
      ['', '', '', '', 'g', '°C'],
      ['Unit', 'Visit', 'Set', 'Date and time', 'Added', 'Outdoor dry bulb'],
    ],
    [
      'below',
      ['Unit', 'Visit', 'Set', 'Date and time', 'Added', 'Outdoor dry bulb'],
      ['', '', '', '', '(g)', '(°C)'],
    ],
  ])('take their units from a row %s the headings', (_where, first, second) => {
    const rows = read(first.join(','), second.join(','), 'U-1,V-1,1,2026-07-14 10:30,100,20');
    expect(rows).toHaveLength(1);
    expect(rows[0]?.values['added']).toBeCloseTo(0.1, 12);
    expect(rows[0]?.values['outdoor_db']).toBeCloseTo(293.15, 9);
    expect(rows[0]?.place.row).toBe(3);
  });

  test('a unit in the heading stands before the row of units', () => {
    const [row] = read(',,,,g', 'Unit,Visit,Set,Date and time,Added (oz)', 'U-1,V-1,1,2026-07-14,2');
    expect(row?.values['added']).toBeCloseTo(2 * ounceKg, 12);
  });

  test('a weight in a unit of volume takes the whole file out, with the row of the heading', () => {
    const lines = ['Unit,Visit,Set,Date and time,Added (fl oz)', 'U-1,V-1,1,2026-07-14,2'];
    expect(() => read(...lines)).toThrow(FileError);
    expect(() => read(...lines)).toThrow(/row 1.*fl oz is no unit for Added/);
  });

  test('a file without a log says which headings it lacks', () => {
    expect(() => read('Shoe size', '44')).toThrow(/headings of a log.*Unit, Visit, Set/);
  });
});

describe('cells of a log', () => {
  const log = ['Unit,Visit,Set,Date and time,Added'];

  test('names that look like numbers stay names', () => {
    const rows = read(...log, '12.10,007,1,2026-07-14,0', '12.1,1e5,1,2026-07-14,0');
    expect(rows.map(({ values }) => [values['unit_id'], values['visit_id']])).toEqual([
      ['12.10', '007'],
      ['12.1', '1e5'],
    ]);
  });

  test('semicolons between cells make the comma a point', () => {
    const [row] = read('Unit;Visit;Set;Date and time;Added', 'U-1;V-1;1;2026-07-14;2,5');
    expect(row?.values['added']).toBeCloseTo(2.5 * ounceKg, 12);
  });

  test('what cannot be read is kept with its place, not dropped', () => {
    const [row] = read(...log, 'U-1,V-1,1,2026-07-14,some');
    expect(row?.values['added']).toBeUndefined();
    expect(row?.unreadable.map(({ field }) => field)).toEqual(['added']);
    expect(row?.place.row).toBe(2);
  });

  test('blank is blank and zero is zero', () => {
    const rows = read(...log, 'U-1,V-1,1,2026-07-14,', 'U-1,V-1,2,2026-07-14,0');
    expect(rows.map(({ values }) => values['added'])).toEqual([undefined, 0]);
  });

  test('empty rows and headings that come again are no rows', () => {
    expect(read(...log, ',,,,', 'U-1,V-1,1,2026-07-14,1', ...log, 'U-1,V-1,2,2026-07-14,1')).toHaveLength(2);
  });

  test('a quotation mark that is never closed is named with its row', () => {
    expect(() => read(...log, 'U-1,V-1,1,2026-07-14,1', 'U-1,"V-1,2,2026-07-14,1')).toThrow(/row 3/);
  });
});

describe('a workbook', () => {
  const cells = (rows: readonly (readonly TestCell[])[]): Record<string, TestCell> =>
    Object.fromEntries(
      rows.flatMap((row, at) =>
        row.map((cell, column): [string, TestCell] => [`${'ABCDEF'[column] ?? ''}${at + 1}`, cell]),
      ),
    );

  test('gives its log and its register, and leaves out summaries of the log', () => {
    const bytes = buildXlsx({
      sheets: [
        {
          name: 'Log',
          cells: cells([
            ['Unit', 'Visit', 'Set', 'Date and time', 'Added'],
            ['U-1', 'V-1', 1, 46_217.5, 3],
          ]),
        },
        // Repeats units, dates and ounces of the log, as a sheet of sums does.
        {
          name: 'By visit',
          cells: cells([
            ['Visit', 'Date', 'Unit', 'Technician', 'Added'],
            ['V-1', 46_217, 'U-1', 'A', 3],
          ]),
        },
        {
          name: 'Units',
          cells: cells([
            ['Unit', 'Refrigerant', 'Nameplate charge'],
            ['U-1', 'R-410A', 14],
          ]),
        },
      ],
    });
    const { rows } = rowsOf('log.xlsx', bytes, us);
    expect(rows.map(({ from, place }) => [from.table.name, place.sheet])).toEqual([
      ['visit log', 'Log'],
      ['unit register', 'Units'],
    ]);
    // 46217 is 2026-07-14 in every spreadsheet: 20,648 days after 1970-01-01.
    expect(rows[0]?.values['date_time']).toBeCloseTo(20_648.5, 9);
  });

  test('that counts its days from 1904 has the same days', () => {
    const bytes = buildXlsx({
      uses1904: true,
      sheets: [
        {
          name: 'Log',
          cells: cells([
            ['Unit', 'Visit', 'Set', 'Date and time', 'Added'],
            ['U-1', 'V-1', 1, 44_755, 3],
          ]),
        },
      ],
    });
    // ECMA-376 Part 1, 18.17.4.1: the two calendars are 1462 days apart.
    expect(rowsOf('log.xlsx', bytes, us).rows[0]?.values['date_time']).toBe(20_648);
  });
});
