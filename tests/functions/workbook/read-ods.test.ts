import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { CellError } from '../../../functions/workbook/model/values.ts';
import { FileError } from '../../../functions/workbook/file/file-error.ts';
import { usualLimits } from '../../../functions/workbook/file/limits.ts';
import { readWorkbook } from '../../../functions/workbook/file/read-values.ts';
import type { CellRows } from '../../../functions/workbook/file/read-values.ts';
import { buildXlsx, tableXml } from './build-xlsx.ts';

function plain(rows: CellRows | undefined): unknown[][] {
  return (rows ?? []).map((row) =>
    Array.from(row, (cell) => {
      if (cell === undefined) return null;
      if (cell.value instanceof CellError) return cell.value.code;
      return cell.isDate ? { date: cell.value } : cell.value;
    }),
  );
}

const csv = (text: string | Uint8Array): unknown[][] =>
  plain(readWorkbook(typeof text === 'string' ? strToU8(text) : text, { fileName: 'a.csv' }).sheets[0]?.rows);

describe('reading .xlsx as values', () => {
  it('gives saved values, dates by their format, tables and names', () => {
    const styles =
      '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="2"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/><numFmt numFmtId="165" formatCode="0.0&quot; days&quot;"/></numFmts><cellStyleXfs count="1"><xf numFmtId="14"/></cellStyleXfs><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/><xf numFmtId="165"/></cellXfs></styleSheet>';
    const read = readWorkbook(
      buildXlsx({
        sheets: [
          {
            name: 'Log',
            cells: {
              A1: 'Date',
              B1: 'Oz',
              A2: { xml: '<c r="A2" s="1"><v>46351</v></c>' },
              B2: { xml: '<c r="B2" s="3"><f>1+1</f><v>9</v></c>' },
              A4: { xml: '<c r="A4" s="2"><v>46352</v></c>' },
              C4: { xml: '<c r="C4" t="e"><v>#N/A</v></c>' },
            },
            tables: [tableXml(1, 'Visits', 'A1:B2', ['Date', 'Oz'])],
          },
          { name: 'Lists', state: 'hidden', cells: {} },
        ],
        styles,
        names: '<definedName name="Where">Log!$A$1</definedName>',
      }),
    );
    expect(plain(read.sheets[0]?.rows)).toEqual([
      ['Date', 'Oz'],
      [{ date: 46_351 }, 9],
      [],
      [{ date: 46_352 }, null, '#N/A'],
    ]);
    expect(read.sheets[1]).toEqual({ name: 'Lists', isHidden: true, rows: [] });
    expect(read.tables).toEqual([
      {
        name: 'Visits',
        sheet: 'Log',
        area: { top: 0, left: 0, bottom: 1, right: 1 },
        columns: ['Date', 'Oz'],
      },
    ]);
    expect(read.names).toEqual([{ name: 'where', formula: 'Log!$A$1', sheet: undefined }]);
  });
});

describe('reading .csv', () => {
  // RFC 4180 for quotes and line ends; what counts as a number is this project's choice.
  it.each([
    [
      'a,b\r\n1,2.5\r\n',
      [
        ['a', 'b'],
        [1, 2.5],
      ],
    ],
    [
      'a;b;c\n1;-2;"x;y"',
      [
        ['a', 'b', 'c'],
        [1, -2, 'x;y'],
      ],
    ],
    [
      'a\tb\n1\t2',
      [
        ['a', 'b'],
        [1, 2],
      ],
    ],
    ['"say ""hi""","two\nlines"\n', [['say "hi"', 'two\nlines']]],
    ['007,"12",1e3,.5,+4', [['007', '12', 1000, 0.5, 4]]],
    ['2026-11-25,2026-11-25 12:00,25/11/2026', [[{ date: 46_351 }, { date: 46_351.5 }, '25/11/2026']]],
    ['TRUE,false,true story', [[true, false, 'true story']]],
    ['a,,b\n\nc', [['a', null, 'b'], [null], ['c']]],
    ['=1+1,@x,-', [['=1+1', '@x', '-']]],
    ['5" pipe,x', [['5" pipe', 'x']]],
    ['"open,x', [['"open', 'x']]],
    ['1,234', [[1, 234]]],
  ])('%j', (text, expected) => {
    expect(csv(text)).toEqual(expected);
  });

  it('reads byte order marks, UTF-16 and Windows-1252', () => {
    expect(csv('\ufeffé,1')).toEqual([['é', 1]]);
    expect(csv(Uint8Array.of(0xff, 0xfe, 0xe9, 0, 0x2c, 0, 0x31, 0))).toEqual([['é', 1]]);
    expect(csv(Uint8Array.of(0xe9, 0x2c, 0x31))).toEqual([['é', 1]]);
  });

  it('refuses bytes that are no text and too many cells', () => {
    expect(() => csv(Uint8Array.of(1, 0, 2))).toThrow(FileError);
    expect(() =>
      readWorkbook(strToU8('1,2,3'), { fileName: 'a.csv', limits: { ...usualLimits, cells: 2 } }),
    ).toThrow(FileError);
  });
});

describe('reading .ods', () => {
  const ods = (body: string, extra: Record<string, Uint8Array> = {}): Uint8Array =>
    zipSync({
      mimetype: strToU8('application/vnd.oasis.opendocument.spreadsheet'),
      'content.xml': strToU8(
        `<office:document-content xmlns:office="o" xmlns:table="t" xmlns:text="x" xmlns:style="s" xmlns:calcext="c"><office:automatic-styles><style:style style:name="ta2" style:family="table"><style:table-properties table:display="false"/></style:style></office:automatic-styles><office:body><office:spreadsheet>${body}</office:spreadsheet></office:body></office:document-content>`,
      ),
      ...extra,
    });
  const rows = (body: string): unknown[][] =>
    plain(readWorkbook(ods(`<table:table table:name="S">${body}</table:table>`)).sheets[0]?.rows);

  // OpenDocument 1.3 Part 3, 19.385 (value types) and 9.1 (repeated rows and cells).
  it('reads every kind of cell, repeats, comments and white space', () => {
    expect(
      rows(
        '<table:table-row table:number-rows-repeated="2"/><table:table-row><table:table-cell office:value-type="float" office:value="2.5"><text:p>2,5</text:p></table:table-cell><table:table-cell table:number-columns-repeated="2"/><table:table-cell office:value-type="string"><office:annotation><text:p>note</text:p></office:annotation><text:p>a<text:s text:c="2"/>b</text:p><text:p>c</text:p></table:table-cell><table:table-cell office:value-type="boolean" office:boolean-value="true"/><table:table-cell office:value-type="date" office:date-value="2026-11-25T12:00:00"/><table:table-cell office:value-type="time" office:time-value="PT06H00M00S"/><table:table-cell office:value-type="string" calcext:value-type="error"><text:p>#N/A</text:p></table:table-cell><table:table-cell office:value-type="percentage" office:value="0.5" table:number-columns-repeated="2"/><table:table-cell table:number-columns-repeated="16000"/></table:table-row><table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>',
      ),
    ).toEqual([
      [],
      [],
      [2.5, null, null, 'a  b\nc', true, { date: 46_351.5 }, { date: 0.25 }, '#N/A', 0.5, 0.5],
    ]);
  });

  it('knows hidden sheets and refuses protected and overfull ones', () => {
    const read = readWorkbook(
      ods('<table:table table:name="A"/><table:table table:name="B" table:style-name="ta2"/>'),
    );
    expect(read.sheets.map(({ name, isHidden }) => [name, isHidden])).toEqual([
      ['A', false],
      ['B', true],
    ]);
    const manifest = strToU8('<manifest><file-entry><encryption-data/></file-entry></manifest>');
    expect(() => readWorkbook(ods('', { 'META-INF/manifest.xml': manifest }))).toThrow(/password/);
    const full =
      '<table:table-row table:number-rows-repeated="1000000"><table:table-cell office:value-type="float" office:value="1" table:number-columns-repeated="1000"/></table:table-row>';
    expect(() => rows(full)).toThrow(FileError);
  });
});
