import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { noCustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import { loadWorkbook } from '../../../functions/workbook/file/load-workbook.ts';
import { recalculate } from '../../../functions/workbook/recalculate.ts';
import type { Recalculation } from '../../../functions/workbook/recalculate.ts';
import { buildXlsx } from './build-xlsx.ts';
import type { TestCell, TestWorkbook } from './build-xlsx.ts';

// What a file means is ECMA-376 Part 1, 18.3 and 18.4; the values are worked by hand.
function values(workbook: TestWorkbook, sheet = 0): (address: string) => unknown {
  const loaded = loadWorkbook(buildXlsx(workbook));
  loaded.workbook.recalculate({ everything: true });
  const target = loaded.workbook.sheets[sheet];
  return (address) => {
    const [, letters = 'A', digits = '1'] = /^([A-Z])(\d+)$/.exec(address) ?? [];
    const value = target?.value(Number(digits) - 1, letters.charCodeAt(0) - 65);
    return value instanceof CellError ? value.code : value;
  };
}

function recalculated(cells: Readonly<Record<string, TestCell>>): Recalculation & { xml: string } {
  const result = recalculate(buildXlsx({ sheets: [{ name: 'S', cells }] }), noCustomFunctions);
  return { ...result, xml: strFromU8(unzipSync(result.bytes)['xl/worksheets/sheet1.xml'] as Uint8Array) };
}

describe('reading a workbook file', () => {
  it('reads every kind of cell', () => {
    const at = values({
      sheets: [
        {
          name: 'S',
          cells: {
            A1: { xml: '<c r="A1" t="s"><v>0</v></c>' },
            A2: { xml: '<c r="A2" t="s"><v>1</v></c>' },
            A3: {
              xml: '<c r="A3" t="inlineStr"><is><r><t>in</t></r><r><t xml:space="preserve"> line</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is></c>',
            },
            A4: { xml: '<c r="A4" t="b"><v>1</v></c>' },
            A5: { xml: '<c r="A5" t="e"><v>#N/A</v></c>' },
            A6: { xml: '<c r="A6"><v>-1.5E3</v></c>' },
            A7: { xml: '<c r="A7" t="d"><v>2026-11-25</v></c>' },
            A8: { xml: '<c r="A8" t="str"><v>a_x000A_b &amp; c</v></c>' },
            A9: { xml: '<c r="A9" s="3"/>' },
            B1: '=A1&A2',
          },
        },
      ],
      sharedStrings:
        '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>plain</t></si><si><r><t>rich </t></r><r><rPr><b/></rPr><t>text</t></r><rPh sb="0" eb="2"><t>reading aid</t></rPh></si></sst>',
    });
    expect(['A1', 'A2', 'A3', 'A4', 'A5', 'A6', 'A7', 'A8', 'A9', 'B1'].map(at)).toEqual([
      'plain',
      'rich text',
      'in line',
      true,
      '#N/A',
      -1500,
      46_351,
      'a\nb & c',
      null,
      'plainrich text',
    ]);
  });

  it('reads prefixed XML, rows and cells without addresses, comments and CDATA', () => {
    const at = values({
      sheets: [
        {
          name: 'S',
          xml: '<?xml version="1.0"?><x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row><x:c><x:v>1</x:v></x:c><x:c><x:v>2</x:v></x:c></x:row><!-- <c> --><x:row><x:c r="B2"><x:f><![CDATA[A1+B1]]></x:f></x:c><x:c t="str"><x:f>"x"&amp;B2</x:f><x:v/></x:c></x:row></x:sheetData></x:worksheet>',
        },
      ],
    });
    expect(['A1', 'B1', 'B2', 'C2'].map(at)).toEqual([1, 2, 3, 'x3']);
  });

  it('translates shared formulas, quoted sheet names and text included', () => {
    const result = recalculated({
      A1: 1,
      A2: 2,
      B1: { xml: '<c r="B1"><f t="shared" ref="B1:B2" si="0">A1*$A$1+LEN("A1")</f></c>' },
      B2: { xml: '<c r="B2"><f t="shared" si="0"/></c>' },
      B3: { xml: '<c r="B3"><f t="shared" si="9"/><v>4</v></c>' },
    });
    const sheet = result.loaded.workbook.sheets[0];
    expect([sheet?.value(0, 1), sheet?.value(1, 1)]).toEqual([3, 4]);
    expect(sheet?.formula(1, 1)?.text()).toBe('A2*$A$1+LEN("A1")');
    expect(result.kept.map(({ address }) => address)).toEqual(['B3']);
  });

  it('counts dates from 1904 when the file says so', () => {
    const at = values({
      sheets: [{ name: 'S', cells: { A1: '=DATE(1904,1,1)', A2: '=YEAR(0)', A3: '=TEXT(1,"yyyy-mm-dd")' } }],
      uses1904: true,
    });
    expect(['A1', 'A2', 'A3'].map(at)).toEqual([0, 1904, '1904-01-02']);
  });

  it('knows hidden sheets, names of one sheet, and names to leave out', () => {
    const { workbook } = loadWorkbook(
      buildXlsx({
        sheets: [
          { name: 'One', cells: { A1: '=Here' } },
          { name: 'Two', state: 'veryHidden', cells: { A1: '=Here' } },
        ],
        names:
          '<definedName name="Here">1</definedName><definedName name="Here" localSheetId="1">2</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">One!$A$1</definedName>',
      }),
    );
    workbook.recalculate();
    expect(workbook.sheets.map((sheet) => [sheet.hidden, sheet.value(0, 0)])).toEqual([
      [false, 1],
      [true, 2],
    ]);
    expect([...workbook.names()]).toHaveLength(2);
  });

  it('leaves rows out of subtotals that a filter or a hand has hidden', () => {
    const rows = (hidden: string): string =>
      `<row r="1"><c><v>1</v></c></row><row r="2"${hidden}><c><v>10</v></c></row><row r="3"><c><v>100</v></c></row>`;
    const sheet = (hidden: string, filter: string): string =>
      `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows(hidden)}<row r="9"><c><f>SUBTOTAL(9,A1:A3)</f></c><c><f>SUBTOTAL(109,A1:A3)</f></c></row></sheetData>${filter}</worksheet>`;
    const filter =
      '<autoFilter ref="A1:A3"><filterColumn colId="0"><filters><filter val="1"/></filters></filterColumn></autoFilter>';
    const byHand = values({ sheets: [{ name: 'S', xml: sheet(' hidden="1"', '') }] });
    const byFilter = values({ sheets: [{ name: 'S', xml: sheet(' hidden="1"', filter) }] });
    expect([byHand('A9'), byHand('B9'), byFilter('A9'), byFilter('B9')]).toEqual([111, 101, 101, 101]);
  });
});

describe('recalculating a file', () => {
  it('changes cached values and not another byte', () => {
    const before =
      '<row r="1"  spans="1:2"><c r="A1"><v>2</v></c><c r="B1" s="7" t="s" ><f>A1*2</f><v>0</v><extLst><ext uri="x"/></extLst></c><c r=\'C1\' t=\'b\'><f ca="1">A1=2</f><v>0</v></c><c r="D1"><f>"a&lt;"&amp;A1</f></c><c r="E1" t="str"><f>1/0</f><v>old</v></c><c r="F1"><f>A1+1</f><v>3</v></c><c r="G1" t="inlineStr"><f>A1&amp;"x"</f><is><t>old</t></is></c></row>';
    const sheet = (rows: string): string =>
      `<?xml version="1.0" encoding="UTF-8"?>\r\n<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><!-- é --><sheetData>${rows}</sheetData><pageMargins left="0.7"/></worksheet>`;
    const bytes = buildXlsx({
      sheets: [{ name: 'S', xml: sheet(before) }],
      extraParts: { 'xl/charts/chart1.xml': '<chart/>' },
    });
    const original = bytes.slice();
    const result = recalculate(bytes, noCustomFunctions);
    const after = before
      .replace('<c r="B1" s="7" t="s" ><f>A1*2</f><v>0</v>', '<c r="B1" s="7"><f>A1*2</f><v>4</v>')
      .replace("<c r='C1' t='b'><f ca=\"1\">A1=2</f><v>0</v>", '<c r=\'C1\' t="b"><f ca="1">A1=2</f><v>1</v>')
      .replace('<c r="D1"><f>"a&lt;"&amp;A1</f>', '<c r="D1" t="str"><f>"a&lt;"&amp;A1</f><v>a&lt;2</v>')
      .replace('<c r="E1" t="str"><f>1/0</f><v>old</v>', '<c r="E1" t="e"><f>1/0</f><v>#DIV/0!</v>')
      .replace(
        '<c r="G1" t="inlineStr"><f>A1&amp;"x"</f><is><t>old</t></is>',
        '<c r="G1" t="str"><f>A1&amp;"x"</f><v>2x</v>',
      );
    const parts = unzipSync(result.bytes);
    expect(strFromU8(parts['xl/worksheets/sheet1.xml'] as Uint8Array)).toBe(sheet(after));
    const old = unzipSync(original);
    expect(Object.keys(parts)).toEqual(Object.keys(old));
    for (const name of Object.keys(old).filter((part) => part !== 'xl/worksheets/sheet1.xml')) {
      expect(parts[name]).toEqual(old[name]);
    }
    expect(bytes).toEqual(original);
    expect(result.changes.map(({ address }) => address).sort()).toEqual(['B1', 'C1', 'D1', 'E1', 'G1']);
    expect(result.errors).toEqual([
      { sheet: 'S', address: 'E1', code: '#DIV/0!', message: 'division by zero, or an average of nothing' },
    ]);
  });

  it('has nothing left to change the second time', () => {
    const { bytes } = recalculated({
      A1: 0.1,
      B1: '=A1*3',
      B2: '=B1&" oz"',
      B3: '=1/3',
      B4: '=A1>0',
      B5: '=Z9&""',
    });
    const again = recalculate(bytes, noCustomFunctions);
    expect(again.changes).toEqual([]);
    expect(again.bytes).toBe(bytes);
  });

  it('keeps what it cannot work out, and calculates on with the saved value', () => {
    const result = recalculated({
      A1: { xml: '<c r="A1"><f>WEBSERVICE("x")+1</f><v>41</v></c>' },
      A2: { xml: '<c r="A2"><f>[1]Sheet1!A1</f><v>7</v></c>' },
      A3: { xml: '<c r="A3"><f>SUM(A1</f><v>8</v></c>' },
      A4: { xml: '<c r="A4"><f t="dataTable" ref="A4:A5" dt2D="0" r1="B1"/><v>9</v></c>' },
      A5: { xml: '<c r="A5" t="str"><f>IF(TRUE,1,UNHEARDOF(2))</f><v>saved</v></c>' },
      A6: { xml: '<c r="A6"><f>SUM(Jan:Dec!A1)</f><v>10</v></c>' },
      B1: '=A1+1',
      B2: '=A2+A3+A4+A6',
    });
    expect(result.kept.map(({ address, reason }) => [address, reason.split(':')[0]])).toEqual([
      ['A1', 'this host does not know the function WEBSERVICE'],
      ['A2', 'the formula reads another workbook, which is not opened'],
      ['A3', 'the formula cannot be read'],
      ['A4', 'what-if tables are not worked out by this host'],
      ['A5', 'this host does not know the function UNHEARDOF'],
      ['A6', 'Jan'],
    ]);
    expect(result.changes).toEqual([
      { sheet: 'S', address: 'B1', before: null, after: 42 },
      { sheet: 'S', address: 'B2', before: null, after: 34 },
    ]);
    expect(result.xml).toContain('<c r="A1"><f>WEBSERVICE("x")+1</f><v>41</v></c>');
  });

  it('updates every cell of an array formula', () => {
    const { xml } = recalculated({
      A1: 1,
      A2: 2,
      B1: { xml: '<c r="B1"><f t="array" ref="B1:B3">A1:A2*10</f><v>0</v></c>' },
      B2: { xml: '<c r="B2" s="1"/>' },
      B3: { xml: '<c r="B3"><v>5</v></c>' },
    });
    expect(xml).toContain('<f t="array" ref="B1:B3">A1:A2*10</f><v>10</v></c>');
    expect(xml).toContain('<c r="B2" s="1"><v>20</v></c>');
    expect(xml).toContain('<c r="B3" t="e"><v>#N/A</v></c>');
  });

  it('lets a formula marked as dynamic spill', () => {
    const result = recalculated({
      A1: 2,
      B1: { xml: '<c r="B1" cm="1"><f t="array" ref="B1:B3">_xlfn.SEQUENCE(A1)</f><v>1</v></c>' },
      B2: { xml: '<c r="B2"><v>2</v></c>' },
      B3: { xml: '<c r="B3"><v>3</v></c>' },
      C1: '=SUM(B1:B9)',
    });
    const sheet = result.loaded.workbook.sheets[0];
    expect([1, 2, 3].map((row) => sheet?.value(row - 1, 1))).toEqual([1, 2, null]);
    expect(sheet?.value(0, 2)).toBe(3);
    expect(result.xml).toContain('<c r="B3" t="str"><v></v></c>');
  });

  it('reports cycles by address', () => {
    const { cycles } = recalculated({ A1: '=B1', B1: '=A1' });
    expect(cycles.map((cells) => cells.map(({ address }) => address).sort())).toEqual([['A1', 'B1']]);
  });

  it('spells characters that XML cannot hold', () => {
    const { xml, bytes } = recalculated({ A1: '=CHAR(7)&"_x005F_x0041_"&UNICHAR(128512)', A2: '=LEN(A1)' });
    expect(xml).toContain('_x0007__x005F_x0041_\u{1F600}');
    expect(recalculate(bytes, noCustomFunctions).changes).toEqual([]);
  });
});
