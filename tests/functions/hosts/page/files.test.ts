import { columnNumber } from '../../../../sample-workbooks/writing/address.ts';
import { readings } from '../../../../sample-workbooks/visit-log/sheets/readings.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import { shownText } from '../../../../functions/hosts/page/worker/cell-text.ts';
import { addNumberFormat, setCellStyles } from '../../../../functions/workbook/file/add-number-format.ts';
import { loadWorkbook } from '../../../../functions/workbook/file/load-workbook.ts';
import { writeCells } from '../../../../functions/workbook/file/write-cells.ts';
import { buildXlsx } from '../../workbook/build-xlsx.ts';

const sample = new Uint8Array(
  readFileSync(join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx')),
);
const nothing = (): undefined => undefined;

function session(bytes: Uint8Array): LogSession {
  const opened = new LogSession(bytes, nothing, nothing);
  opened.workbook.recalculate({ everything: true });
  return opened;
}

function text(bytes: Uint8Array, part: string): string {
  return new TextDecoder().decode(unzipSync(bytes)[part]);
}

const start = '<worksheet><sheetData>';
const end = '</sheetData><extLst><x:odd>kept</x:odd></extLst></worksheet>';

/** Expected texts follow ECMA-376 Part 1, 18.3.1.4 (c), 18.3.1.73 (row). */
describe('cells written into a worksheet part', () => {
  const write = (rows: string, ...contents: Parameters<typeof writeCells>[2]): string =>
    writeCells(start + rows + end, 'sheet', contents, nothing).text;

  test('a cell is replaced and keeps its look; everything around it stays', () => {
    expect(
      write('<row r="2"><c r="B2" s="7" t="s"><v>3</v></c></row>', { row: 1, column: 1, value: 5 }),
    ).toBe(`${start}<row r="2"><c r="B2" s="7"><v>5</v></c></row>${end}`);
  });

  test('cells and rows that are missing go where they belong', () => {
    const rows = '<row r="2"><c r="B2"><v>1</v></c><c r="D2"><v>2</v></c></row><row r="9"/>';
    expect(
      write(
        rows,
        { row: 1, column: 2, value: 'a<b' },
        { row: 4, column: 0, value: true },
        { row: 8, column: 0, value: 1 },
      ),
    ).toBe(
      `${start}<row r="2"><c r="B2"><v>1</v></c><c r="C2" t="inlineStr"><is><t xml:space="preserve">a&lt;b</t></is></c><c r="D2"><v>2</v></c></row><row r="5"><c r="A5" t="b"><v>1</v></c></row><row r="9"><c r="A9"><v>1</v></c></row>${end}`,
    );
  });

  test('cells that shared the formula of a replaced cell get their own', () => {
    const rows =
      '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">B1*2</f><v>2</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/><v>4</v></c></row>';
    const { text: written, withoutFormula } = writeCells(
      start + rows + end,
      'sheet',
      [{ row: 0, column: 0, value: 9 }],
      () => 'B2*2',
    );
    expect(written).toContain('<c r="A2"><f>B2*2</f><v>4</v></c>');
    expect(withoutFormula).toEqual(['A1']);
  });
});

/** Where the sample log takes the look at the filter. */
const filterColumn = columnNumber(readings.letters('Filter')) - 1;

describe('a log edited and saved', () => {
  test('untouched parts are byte for byte the same, and what was typed is read back', () => {
    const log = session(sample);
    expect(log.type(3, [{ row: 5, column: filterColumn, typed: 'clean' }], false).wasRefused).toBe(false);
    expect(log.type(0, [{ row: 4, column: 3, typed: '=1+2' }], false).wasRefused).toBe(false);
    const saved = log.save();
    const before = unzipSync(sample);
    const after = unzipSync(saved);
    const changed = Object.keys(before).filter(
      (name) => Buffer.compare(before[name] as Uint8Array, after[name] as Uint8Array) !== 0,
    );
    expect(Object.keys(after)).toEqual(Object.keys(before));
    expect(changed.every((name) => name.startsWith('xl/worksheets/sheet'))).toBe(true);
    const { workbook } = loadWorkbook(saved);
    expect(workbook.findSheet('Readings')?.value(5, filterColumn)).toBe('clean');
    expect(workbook.findSheet('Start here')?.value(4, 3)).toBe(3);
    expect(workbook.findSheet('Start here')?.formula(4, 3)?.text()).toBe('1+2');
  });

  test('rows added behind the last one carry formulas, looks and checks, and undo takes them away', () => {
    const log = session(sample);
    const readings = log.workbook.findSheet('Readings');
    const table = log.workbook.findTable('Readings');
    if (readings === undefined || table === undefined) throw new Error('the sample has no readings');
    const last = table.lastRow;
    log.type(readings.index, [{ row: last, column: 0, typed: 'U-01' }], true);
    expect(log.addRows(readings.index, last, 0, 1)).toMatchObject({ wasRefused: false, isRebuilt: true });
    const grown = log.workbook.findTable('Readings');
    expect(grown?.lastRow).toBe(last + 10);
    const sheet = log.workbook.findSheet('Readings');
    expect(sheet?.value(last + 1, 0)).toBe('U-01');
    expect(sheet?.value(last, 0)).toBeNull();
    const typical = sheet?.formula(last, 4)?.text();
    expect(sheet?.formula(last + 10, 4)?.text()).toBe(typical);
    const saved = log.save();
    expect(text(saved, 'xl/worksheets/sheet4.xml')).toContain(`A6:A${last + 11}"`);
    expect(session(saved).workbook.findTable('Readings')?.lastRow).toBe(last + 10);
    // What grew for the row goes with it.
    log.undo();
    expect(log.workbook.findTable('Readings')?.lastRow).toBe(last);
    expect(log.workbook.findSheet('Readings')?.value(last, 0)).toBe('U-01');
  });

  test('a chain of calculation loses the cells that hold no formula any more', () => {
    const parts = unzipSync(buildXlsx({ sheets: [{ name: 'S', cells: { A1: '=1+1', A2: '=2+2' } }] }));
    const links = 'xl/_rels/workbook.xml.rels';
    const type = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain';
    const withLink = new TextDecoder()
      .decode(parts[links])
      .replace(
        '</Relationships>',
        `<Relationship Id="rIdC" Type="${type}" Target="calcChain.xml"/></Relationships>`,
      );
    const bytes = zipSync({
      ...parts,
      [links]: strToU8(withLink),
      'xl/calcChain.xml': strToU8(
        '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="A1" i="1"/><c r="A2"/></calcChain>',
      ),
    });
    const log = session(bytes);
    log.type(0, [{ row: 0, column: 0, typed: '7' }], false);
    const saved = log.save();
    expect(text(saved, 'xl/worksheets/sheet1.xml')).toContain('<c r="A1"><v>7</v></c>');
    expect(text(saved, 'xl/worksheets/sheet1.xml')).toContain('<f>2+2</f>');
    expect(text(saved, 'xl/calcChain.xml').match(/<c [^>]*>/g)).toEqual(['<c r="A2" i="1"/>']);
  });
});

describe('what a log refuses', () => {
  test('headings of a table, parts of array formulas, unreadable formulas', () => {
    const log = session(
      new Uint8Array(readFileSync(join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx'))),
    );
    expect(log.type(3, [{ row: 4, column: 0, typed: 'Machine' }], false).notice).toContain('heading');
    expect(log.type(3, [{ row: 5, column: filterColumn, typed: '=1+*' }], false).notice).toContain(
      'not understood',
    );
    expect(log.type(3, [{ row: 5, column: filterColumn, typed: 'shiny' }], false).notice).toContain(
      'clean, dirty',
    );
    expect(log.type(3, [{ row: 5, column: filterColumn, typed: 'shiny' }], true)).toMatchObject({
      wasRefused: false,
    });
  });

  test('deep nesting ends in words', () => {
    const log = session(buildXlsx({ sheets: [{ name: 'S', cells: { A1: 1 } }] }));
    const deep = `=${'('.repeat(4000)}1${')'.repeat(4000)}`;
    const outcome = log.type(0, [{ row: 0, column: 1, typed: deep }], false);
    expect(typeof outcome.notice).toBe('string');
    expect(log.workbook.sheets[0]?.value(0, 0)).toBe(1);
  });
});

/** Expected texts follow ECMA-376 Part 1, 18.8.10 (cellXfs), 18.8.31 (numFmts) and 18.3.1.4 (c). */
describe('a number format that comes with what was typed', () => {
  const looks = (extra = '', formats = ''): string =>
    `<styleSheet>${formats}<fonts/><cellXfs count="${extra === '' ? 2 : 3}"><xf numFmtId="0" fontId="0"/><xf numFmtId="2" fontId="1"><alignment wrapText="1"/></xf>${extra}</cellXfs></styleSheet>`;

  test('is one look more, like that of the cell', () => {
    expect(addNumberFormat(looks(), 1, '0%')).toEqual({
      style: 2,
      text: looks('<xf numFmtId="9" fontId="1" applyNumberFormat="1"><alignment wrapText="1"/></xf>'),
    });
    expect(addNumberFormat(looks(), 0, 'yyyy-mm-dd')?.text).toBe(
      looks(
        '<xf numFmtId="164" fontId="0" applyNumberFormat="1"/>',
        '<numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy-mm-dd"/></numFmts>',
      ),
    );
    const own = '<numFmts count="1"><numFmt numFmtId="170" formatCode="yyyy-mm-dd"/></numFmts>';
    expect(addNumberFormat(looks('', own), 0, 'yyyy-mm-dd')?.text).toContain('<xf numFmtId="170" fontId="0"');
    expect(addNumberFormat(looks('', own), 0, 'hh:mm')?.text).toContain(
      '<numFmts count="2"><numFmt numFmtId="170" formatCode="yyyy-mm-dd"/><numFmt numFmtId="171" formatCode="hh:mm"/></numFmts>',
    );
    expect(addNumberFormat(looks(), 7, '0%')).toBeUndefined();
  });

  test('goes on its cells and no others', () => {
    const cells = '<c r="A1"/><c r="A2" s="4" t="b"><v>1</v></c><c r="A22"><v>1</v></c>';
    expect(setCellStyles(cells, new Map([['A2', 9]]))).toBe(cells.replace('s="4" t="b"', 't="b" s="9"'));
  });

  test('is shown, undone with its value, and there again after saving', () => {
    const log = session(sample);
    const start = log.workbook.findSheet('Start here');
    if (start === undefined) throw new Error('the sample has no first sheet');
    const shown = (from: LogSession): string => {
      const sheet = from.workbook.findSheet('Start here');
      if (sheet === undefined) return '';
      return shownText(sheet.value(39, 7), from.format(sheet, 39, 7), 1900);
    };
    log.type(start.index, [{ row: 39, column: 7, typed: '11/25/2026 9:05' }], false);
    expect(shown(log)).toBe('2026-11-25 09:05');
    expect(shown(session(log.save()))).toBe('2026-11-25 09:05');
    log.undo();
    expect(shown(log)).toBe('');
    log.redo();
    expect(shown(log)).toBe('2026-11-25 09:05');
    const doubtful = log.type(start.index, [{ row: 39, column: 7, typed: '25/11/2026' }], false);
    expect(doubtful.notice).toContain('Dates here are 2026-11-25 or 11/25/2026');
    expect(shown(log)).toBe('25/11/2026');
  });
});
