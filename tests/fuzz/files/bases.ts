import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { generateLogs } from '../../functions/office-work/gather/generated-logs.ts';
import { buildXlsx, tableXml } from '../../functions/workbook/build-xlsx.ts';

/** A sound file that cases are made from. */
export interface Base {
  readonly name: string;
  readonly kind: 'xlsx' | 'ods' | 'csv';
  readonly bytes: () => Uint8Array;
}

const samples = join(import.meta.dirname, '../../../sample-workbooks');
/** One log of six rows as LibreOffice 7.4 saved it, in its three formats; the .csv is Windows-1252 as it comes. */
const saved = join(import.meta.dirname, 'bases');

const once = new Map<string, Uint8Array>();
function remembered(name: string, make: () => Uint8Array): () => Uint8Array {
  return () => {
    let bytes = once.get(name);
    if (bytes === undefined) once.set(name, (bytes = make()));
    return bytes;
  };
}

function base(name: string, make: () => Uint8Array): Base {
  const kind = name.endsWith('.ods') ? 'ods' : name.endsWith('.csv') ? 'csv' : 'xlsx';
  return { name, kind, bytes: remembered(name, make) };
}

const read = (folder: string, name: string): Uint8Array => new Uint8Array(readFileSync(join(folder, name)));

/** A sample workbook with only the first rows of each sheet: the same parts and looks, worked out in a tenth of the time. */
function thinned(name: string, rowsKept: number): Uint8Array {
  const parts = unzipSync(read(samples, name));
  for (const [part, bytes] of Object.entries(parts)) {
    if (!/^xl\/worksheets\/[^/]+\.xml$/.test(part)) continue;
    let row = 0;
    const text = strFromU8(bytes).replace(/<row\b[^>]*?(?:\/>|>.*?<\/row>)/gs, (all) =>
      row++ < rowsKept ? all : '',
    );
    parts[part] = strToU8(text);
  }
  return zipSync(parts, { level: 1 });
}

/** Everything the reader knows of a worksheet, in few cells. */
function featured(): Uint8Array {
  const rows = [
    '<row r="1" spans="1:8" ht="15"><c r="A1" t="s" s="1"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c></row>',
    '<row r="2"><c r="A2" t="inlineStr"><is><t xml:space="preserve"> AC-1 </t></is></c><c r="B2" s="2"><v>46000.5</v></c><c r="C2"><v>2.5</v></c><c r="D2" t="str"><f>A2&amp;"x_x0041_"</f><v>old</v></c><c r="E2"><f t="shared" ref="E2:E4" si="0">C2*2</f><v>5</v></c></row>',
    '<row r="3" hidden="1"><c r="A3" t="str"><v>AC-2</v></c><c r="B3" t="d"><v>2026-02-03T10:00:00Z</v></c><c r="C3" t="b"><v>1</v></c><c r="D3" t="e"><v>#N/A</v></c><c r="E3"><f t="shared" si="0"/><v>0</v></c></row>',
    '<row r="4"><c r="A4"/><c r="C4"><v>1E3</v></c><c r="E4"><f t="shared" si="0"/></c><c r="F4"><f t="array" ref="F4:F6">C2:C4*2</f><v>0</v></c></row>',
    '<row r="5"><c r="A5" cm="1"><f t="array" ref="A5:B6">TRANSPOSE(C2:C4)</f></c><c r="B5"><v>9</v></c><c r="F5"><v>0</v></c><c r="G5"><f>SUBTOTAL(109,C2:C4)</f></c></row>',
    '<row r="6"><c r="A6"><f>Twice(1)</f><v>7</v></c><c r="B6"><f>Own</f></c><c r="F6"><v>0</v></c><c r="G6"><f t="dataTable" ref="G6" dt2D="0" r1="C2"/><v>1</v></c><c r="H6"><f>OUNCE.SATTEMP("R-410A",118)</f></c></row>',
  ];
  const xml = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><dimension ref="A1:H6"/><sheetData>${rows.join('')}</sheetData><autoFilter ref="A1:C4"><filterColumn colId="0"/></autoFilter><mergeCells count="1"><mergeCell ref="J1:K2"/></mergeCells><conditionalFormatting sqref="A1:C4"><cfRule type="expression" priority="1"><formula>A1&gt;1</formula></cfRule></conditionalFormatting><tableParts count="1"><tablePart r:id="rId1"/></tableParts></worksheet>`;
  return buildXlsx({
    sheets: [
      { name: 'Log', xml, tables: [tableXml(1, 'Log', 'A1:C4', ['Unit', 'When', 'Oz'])] },
      {
        name: "It's ümläut",
        state: 'hidden',
        cells: { A1: '=SUM(Log[Oz])', A2: '=Log!E2+1', A3: '=A4', A4: '=A3', A5: '=NOW()' },
      },
    ],
    names:
      '<definedName name="Rate">Log!$C$2</definedName><definedName name="Own" localSheetId="0">Rate*2</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">Log!$A$1:$C$4</definedName>',
    styles:
      '<styleSheet><numFmts><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/></numFmts><cellXfs count="3"><xf numFmtId="0"/><xf numFmtId="164"/><xf numFmtId="22"/></cellXfs></styleSheet>',
    sharedStrings:
      '<sst count="3" uniqueCount="3"><si><t>Unit</t></si><si><r><t>Wh</t></r><r><rPr><b/></rPr><t>en</t></r><rPh sb="0" eb="1"><t>x</t></rPh></si><si><t xml:space="preserve">Oz</t></si></sst>',
  });
}

const generated = generateLogs(9, 8, 11);
function generatedLog(ending: string): Uint8Array {
  const sound = generated.logs.find(({ name }) => name.endsWith(ending) && !generated.corrupt.includes(name));
  const bytes = sound?.bytes;
  if (bytes === undefined) throw new Error(`no generated log ends in ${ending}`);
  return bytes;
}

/** Small files, most cases. */
export const smallBases: readonly Base[] = [
  base('featured.xlsx', featured),
  base('log-by-libreoffice.xlsx', () => read(saved, 'log.xlsx')),
  base('generated.xlsx', () => generatedLog('.xlsx')),
  base('log-by-libreoffice.ods', () => read(saved, 'log.ods')),
  base('generated.ods', () => generatedLog('.ods')),
  base('log-by-libreoffice.csv', () => read(saved, 'log.csv')),
  base('generated.csv', () => generatedLog('.csv')),
];

/** The sample workbooks with few rows. */
export const thinnedBases: readonly Base[] = [
  base('thinned-visit-log.xlsx', () => thinned('visit-log.xlsx', 5)),
  base('thinned-fleet-summary.xlsx', () => thinned('fleet-summary.xlsx', 8)),
  base('thinned-repair-or-replace.xlsx', () => thinned('repair-or-replace.xlsx', 9)),
];

/** The sample workbooks as they are shipped. */
export const sampleBases: readonly Base[] = [
  'visit-log.xlsx',
  'visit-log-excel.xlsx',
  'fleet-summary.xlsx',
  'repair-or-replace.xlsx',
  'function-guide.xlsx',
].map((name) => base(name, () => read(samples, name)));
