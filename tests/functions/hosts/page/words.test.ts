import { describe, expect, test } from 'vitest';
import { Table } from '../../../../functions/workbook/model/table.ts';
import { Workbook } from '../../../../functions/workbook/run/workbook.ts';
import { enteredFormula, shownFormula, storedFormula } from '../../../../functions/hosts/page/spell.ts';
import { Axis } from '../../../../functions/hosts/page/ui/axis.ts';
import { formulaContext } from '../../../../functions/hosts/page/ui/formula-context.ts';
import { readTabSeparated } from '../../../../functions/hosts/page/ui/tab-separated.ts';
import { typedText } from '../../../../functions/hosts/page/worker/cell-text.ts';
import { readTyped } from '../../../../functions/hosts/page/worker/typed-input.ts';

const sheet = new Workbook().addSheet('S');
const table = new Table({
  name: 'Readings',
  sheet,
  area: { top: 0, left: 0, bottom: 3, right: 1 },
  columns: ['Unit', 'Return dry bulb'],
  hasHeader: true,
  hasTotals: false,
});

/** Spellings are those of the .xlsx format: [MS-XLSX] 2.2.2 (prefixes), ECMA-376 18.17.6.4 (tables); marks of user functions as Excel stores them. */
describe('formulas as typed and as stored', () => {
  test('this row of the own table is short on the page and long in the file', () => {
    const stored =
      'IF(Readings[[#This Row],[Unit]]="","Readings[[#This Row],[Unit]]",Readings[[#This Row],[Return dry bulb]])';
    const shown = 'IF([@Unit]="","Readings[[#This Row],[Unit]]",[@[Return dry bulb]])';
    expect(shownFormula(stored, table)).toBe(shown);
    expect(enteredFormula(shown, table)).toBe(stored);
  });

  test('our functions and newer ones are spelled for the file they go into', () => {
    expect(storedFormula('OUNCE.SATTEMP("OUNCE.X(",XLOOKUP(1,A:A,B:B))', true)).toBe(
      '_xldudf_OUNCE_SATTEMP("OUNCE.X(",_xlfn.XLOOKUP(1,A:A,B:B))',
    );
    expect(storedFormula('OUNCE.SATTEMP(A1)+FILTER(A1,B1)', false)).toBe(
      'OUNCE.SATTEMP(A1)+_xlfn._xlws.FILTER(A1,B1)',
    );
    expect(shownFormula('_xldudf_OUNCE_SATTEMP(_xlfn.IFS(A1,1))', undefined)).toBe(
      'OUNCE.SATTEMP(IFS(A1,1))',
    );
  });
});

describe('what is typed and shown for editing', () => {
  test.each([
    ['62', 62],
    ['1,250.5', 1250.5],
    ['62 psig', '62 psig'],
    ["'62", '62'],
    ['3/8"', '3/8"'],
    ['true', true],
    ['', null],
    ['   ', null],
  ])('%s', (typed, value) => {
    expect(readTyped(typed, 'General', 1900)).toEqual({ value });
  });

  // Serial 46351 is 2026-11-25 and 46115 is 2026-04-03: days from 1899-12-30, definition of the 1900 date system.
  test.each([
    ['2026-11-25', 'month first', 46_351, 'yyyy-mm-dd'],
    ['11/25/2026', 'month first', 46_351, 'yyyy-mm-dd'],
    ['03/04/2026', 'month first', 46_085, 'yyyy-mm-dd'],
    ['03/04/2026', 'day first', 46_115, 'yyyy-mm-dd'],
    ['3.4.2026', 'day first', 46_115, 'yyyy-mm-dd'],
    ['2026-11-25 13:30', 'day first', 46_351.5625, 'yyyy-mm-dd hh:mm'],
    ['11/25/2026 1:30 pm', 'month first', 46_351.5625, 'yyyy-mm-dd hh:mm'],
    ['13:30', 'day first', 0.5625, 'hh:mm'],
    ['36:00', 'day first', 1.5, '[h]:mm'],
    ['15%', 'month first', 0.15, '0%'],
    ['2.5%', 'month first', 0.025, '0.00%'],
  ] as const)('%s with %s brings its format', (typed, order, value, format) => {
    expect(readTyped(typed, 'General', 1900, order)).toEqual({ value, format });
    // A cell that has a format keeps it.
    expect(readTyped(typed, '0.00', 1900, order)).toEqual({ value });
  });

  test.each([
    ['25/11/2026', 'month first'],
    ['11/25/2026', 'day first'],
    ['3.4.2026', 'month first'],
    ['3/4/26', 'month first'],
    ['2026-02-30', 'month first'],
    ['5/16', 'month first'],
  ] as const)('%s with %s is no date', (typed, order) => {
    expect(readTyped(typed, 'General', 1900, order)).toEqual({ value: typed });
    expect(readTyped(typed, 'yyyy-mm-dd', 1900, order)).toEqual({ value: typed });
  });

  test('a date, and every kind of value typed back, stays what it is', () => {
    // 2026-11-25 is serial 46351: days from 1899-12-30, definition of the 1900 date system.
    expect(readTyped('2026-11-25', 'yyyy-mm-dd', 1900)).toEqual({ value: 46_351 });
    expect(typedText(46_351.5, 'yyyy-mm-dd hh:mm', 1900)).toBe('2026-11-25 12:00');
    expect(typedText(0.5625, 'hh:mm', 1900)).toBe('13:30');
    expect(typedText(1.5, '[h]:mm', 1900)).toBe('36:00');
    expect(typedText('3.4.2026', 'General', 1900)).toBe("'3.4.2026");
    for (const value of [0.1, -3, 1e21, '62', "'x", '=A1', 'true', true, 'plain']) {
      expect(readTyped(typedText(value, 'General', 1900), 'General', 1900)).toEqual({ value });
    }
  });
});

describe('tab-separated text', () => {
  test('quotes around breaks, quotes inside, inches left alone', () => {
    expect(readTabSeparated('a\t"b\tc"\r\n"d ""e"""\t3/8"\n')).toEqual([
      ['a', 'b\tc'],
      ['d "e"', '3/8"'],
    ]);
    expect(readTabSeparated('"open')).toEqual([['"open']]);
    expect(readTabSeparated('1\t\n\t2')).toEqual([
      ['1', ''],
      ['', '2'],
    ]);
  });
});

describe('the caret in a formula', () => {
  test.each([
    ['=OUNCE.SA', { word: 'OUNCE.SA', call: undefined, takesReference: false }],
    ['=SATTEMP("a,b",', { word: '', call: { name: 'SATTEMP', argument: 1 }, takesReference: true }],
    ['=A(B(1,2),C(', { word: '', call: { name: 'C', argument: 0 }, takesReference: true }],
    ['="text SA', { word: '', call: undefined, takesReference: false }],
    ['=$A1', { word: '', call: undefined, takesReference: false }],
  ])('%s', (text, expected) => {
    expect(formulaContext(text, text.length)).toMatchObject(expected);
  });

  test('plain text has none', () => {
    expect(formulaContext('SATTEMP(', 8)).toBeUndefined();
  });
});

describe('places of rows and columns', () => {
  test('offsets and sizes agree with adding up one by one', () => {
    const own: [number, number][] = [
      [2, 50],
      [3, 0],
      [7, 10],
    ];
    const axis = new Axis(12, 20, own);
    let sum = 0;
    for (let index = 0; index < 12; index++) {
      expect(axis.offset(index)).toBe(sum);
      const size = own.find(([at]) => at === index)?.[1] ?? 20;
      expect(axis.size(index)).toBe(size);
      if (size > 0) expect(axis.at(sum + size / 2)).toBe(index);
      sum += size;
    }
    expect(axis.length).toBe(sum);
  });
});
