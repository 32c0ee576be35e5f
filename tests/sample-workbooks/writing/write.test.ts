import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';

import { dateSerial, columnLetters, columnNumber } from '../../../sample-workbooks/writing/address.ts';
import type { WorkbookRecipe } from '../../../sample-workbooks/writing/recipe.ts';
import { formula } from '../../../sample-workbooks/writing/recipe.ts';
import { fileName, spellFormula } from '../../../sample-workbooks/writing/spelling.ts';
import { writeWorkbook } from '../../../sample-workbooks/writing/write.ts';

const recipe: WorkbookRecipe = {
  title: 'T',
  subject: 'S',
  file: 'small',
  names: { here: 'One!$B$2' },
  sheets: [
    {
      name: 'One',
      gridLines: false,
      freeze: { columns: 1, rows: 1 },
      widths: { A: 12 },
      cells: [
        { at: 'A1', content: 'gas & more', look: { bold: true } },
        { at: 'B1', content: 'call' },
        { at: 'A2', content: 'R-22' },
        { at: 'B2', content: formula('OUNCE.SATTEMP(A2,68.5)') },
      ],
      tables: [
        {
          name: 'Small',
          range: 'A1:B2',
          columns: [{ heading: 'gas & more' }, { heading: 'call', fill: 'OUNCE.SATTEMP(A2,68.5)' }],
        },
      ],
      checks: [
        {
          range: 'A2',
          allow: { kind: 'choices', choices: ['R-22', 'R-32'] },
          title: 'Gas',
          message: 'One of them.',
          strict: true,
        },
      ],
      rules: [{ range: 'B2', when: '$B2>30', look: { bold: true } }],
      print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$1:$1' },
    },
  ],
};

const part = (file: Uint8Array, name: string): string => strFromU8(unzipSync(file)[name] ?? new Uint8Array());

describe('a written workbook', () => {
  test('has the same bytes every time', async () => {
    const [first, second] = [await writeWorkbook(recipe, 'others'), await writeWorkbook(recipe, 'others')];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  test('spells our functions as each target stores them', async () => {
    const sheet = 'xl/worksheets/sheet1.xml';
    expect(part(await writeWorkbook(recipe, 'others'), sheet)).toContain('<f>OUNCE.SATTEMP(A2,68.5)</f>');
    const excel = await writeWorkbook(recipe, 'excel');
    expect(part(excel, sheet)).toContain('<f>_xldudf_OUNCE_SATTEMP(A2,68.5)</f>');
    expect(part(excel, 'xl/tables/table1.xml')).toContain(
      '<calculatedColumnFormula>_xldudf_OUNCE_SATTEMP(A2,68.5)</calculatedColumnFormula>',
    );
  });

  test('carries dropdown, rule, frozen panes and repeated headings', async () => {
    const file = await writeWorkbook(recipe, 'others');
    const sheet = part(file, 'xl/worksheets/sheet1.xml');
    expect(sheet).toContain('<formula1>"R-22,R-32"</formula1>');
    expect(sheet).toContain('<formula>$B2&gt;30</formula>');
    expect(sheet).toMatch(/<pane [^>]*state="frozen"/);
    expect(part(file, 'xl/workbook.xml')).toContain('_xlnm.Print_Titles');
  });
});

test('spelling leaves other dotted names and quoted words alone', () => {
  expect(spellFormula('STDEV.S(A1:A3)+OUNCE.GLIDE("R-407C",60)', 'excel')).toBe(
    'STDEV.S(A1:A3)+_xldudf_OUNCE_GLIDE("R-407C",60)',
  );
  expect(fileName('visit-log', 'others')).toBe('visit-log.xlsx');
  expect(fileName('visit-log', 'excel')).toBe('visit-log-excel.xlsx');
});

test('addresses and dates', () => {
  expect([1, 26, 27, 702, 703].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'ZZ', 'AAA']);
  expect(columnNumber('AAA')).toBe(703);
  // 2026-01-01 is day 46023 of the 1900 date system; noon is half a day.
  expect(dateSerial('2026-01-01')).toBe(46_023);
  expect(dateSerial('2026-01-01 12:00')).toBe(46_023.5);
});
