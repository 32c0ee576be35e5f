import { strToU8, zipSync } from 'fflate';
import { buildXlsx, tableXml } from '../../functions/workbook/build-xlsx.ts';
import type { Chance } from './chance.ts';

/** A hostile file made from nothing. */
export interface Crafted {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly story: string;
}

const start = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>';
const end = '</sheetData></worksheet>';
const withRows = (rows: string): Uint8Array =>
  buildXlsx({ sheets: [{ name: 'S', xml: start + rows + end }] });

const remembered = new Map<string, Uint8Array>();
/** Packing hundreds of megabytes takes longer than reading them; it is done once. */
function once(name: string, make: () => Uint8Array): Uint8Array {
  const known = remembered.get(name) ?? make();
  remembered.set(name, known);
  return known;
}

function filled(piece: string, megabytes: number): Uint8Array {
  const bytes = new Uint8Array(megabytes * 2 ** 20);
  const unit = strToU8(piece.repeat(Math.ceil(65_536 / piece.length)));
  for (let at = 0; at < bytes.length; at += unit.length) bytes.set(unit.subarray(0, bytes.length - at), at);
  return bytes;
}

/** A package whose worksheet unpacks to a great deal of one thing. */
function bomb(piece: string, megabytes: number): Uint8Array {
  const frame = (text: string): Uint8Array => strToU8(text);
  const sheet = filled(piece, megabytes);
  const parts = {
    '[Content_Types].xml': frame(
      '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    ),
    'xl/workbook.xml': frame(
      '<workbook xmlns:r="r"><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>',
    ),
    'xl/_rels/workbook.xml.rels': frame(
      '<Relationships><Relationship Id="rId1" Type="x/worksheet" Target="s.xml"/></Relationships>',
    ),
    'xl/s.xml': sheet,
  };
  sheet.set(strToU8('<worksheet><sheetData>'), 0);
  return zipSync(parts, { level: 6 });
}

type Maker = (chance: Chance) => Crafted;
const xlsx =
  (story: string, bytes: () => Uint8Array): Maker =>
  () => ({ fileName: 'crafted.xlsx', bytes: bytes(), story });

const makers: readonly Maker[] = [
  xlsx('a bomb of blanks', () => once('blanks', () => bomb(' ', 100))),
  xlsx('a bomb of cells', () => once('cells', () => bomb('<c/>', 40))),
  xlsx('a bomb of rows', () => once('rows', () => bomb('<row/>', 15))),
  (chance) => {
    const piece = chance.pick([
      '<row><c><v>1</v></c></row>',
      '<row><c t="str"><v>abc</v></c><c><f>A1</f></c></row>',
    ]);
    const rows = chance.pick([2000, 20_000]);
    return { fileName: 'crafted.xlsx', bytes: withRows(piece.repeat(rows)), story: `${rows} plain rows` };
  },
  (chance) => {
    const count = chance.pick([2, 40, 400]);
    const rows = Array.from(
      { length: count },
      (_, index) =>
        `<row r="${index * 200 + 1}"><c r="A${index * 200 + 1}"><f t="array" ref="A${index * 200 + 1}:XFD${index * 200 + 122}">1</f></c></row>`,
    );
    return {
      fileName: 'crafted.xlsx',
      bytes: withRows(rows.join('')),
      story: `${count} array formulas over two million cells each`,
    };
  },
  (chance) => {
    const columns = chance.pick([10, 1000, 16_384]);
    const formula = chance.pick([
      'SUM(2:1048576)',
      'COUNTIF(A2:XFD1048576,1)',
      'MATCH(1,A:A,0)',
      'MAX(A2:XFD1048576)',
      'SUMPRODUCT(A2:XFD1048576)',
    ]);
    return {
      fileName: 'crafted.xlsx',
      bytes: withRows(
        `<row r="1"><c r="A1"><f>${formula}</f></c></row><row r="1048576">${'<c><v>1</v></c>'.repeat(columns)}</row>`,
      ),
      story: `${columns} cells in the last row, ${formula}`,
    };
  },
  (chance) => {
    const formula = chance.pick([
      'SUMPRODUCT(B:XFD*1)',
      'B1:XFD1048576',
      'SUM(IF(B:XFD>0,1,0))',
      'TRANSPOSE(B1:XFD1048576)',
      'SORT(B:XFD)',
      'INDEX(B:XFD,0,0)',
      'OUNCE.FLEETSUMMARY(B:XFD)',
      'TEXTJOIN(",",TRUE,B:XFD)',
      'CONCAT(B:XFD)',
      'OFFSET(B1,0,0,1048576,16000)',
      'LOOKUP(1,B:XFD)',
    ]);
    const isDynamic = chance.oneIn(2);
    const cell = isDynamic
      ? `<c r="A1" cm="1"><f t="array" ref="A1">${formula.replace('>', '&gt;')}</f></c>`
      : `<c r="A1"><f>${formula.replace('>', '&gt;')}</f></c>`;
    return {
      fileName: 'crafted.xlsx',
      bytes: withRows(`<row r="1">${cell}</row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>`),
      story: `the last cell in use, ${formula}`,
    };
  },
  (chance) => {
    const text = chance.pick([
      '(',
      '-',
      '1+',
      'IF(1,',
      'SUM(',
      '{',
      '"',
      'A1:',
      '@',
      '%',
      'NOT(',
      '1^',
      '1&amp;',
      '1=',
      'LET(x,1,',
      'A1,',
    ]);
    const count = chance.pick([100, 1000, 8000]);
    const close = text.endsWith('(') || text.includes('(') ? ')'.repeat(count) : '';
    return {
      fileName: 'crafted.xlsx',
      bytes: withRows(`<row><c><f>${text.repeat(count)}1${close}</f><v>1</v></c></row>`),
      story: `${text} ${count} times`,
    };
  },
  (chance) => {
    const parts = chance.pick([
      ['A1:C3', 'B2:D4'],
      ['A1:C3', 'A1:C3'],
      ['A1:XFD1048576', 'A1:A2'],
      ['C3:A1', 'A1:A1'],
    ]);
    const columns = ['a', 'a', 'b'];
    return {
      fileName: 'crafted.xlsx',
      bytes: buildXlsx({
        sheets: [
          {
            name: 'S',
            cells: { A1: 'a', A2: 1, E1: '=SUM(T[a])', E2: '=T[[#All],[b]]', E3: '=T[@a]' },
            tables: parts.map((ref, index) => tableXml(index + 1, 'T', ref, columns)),
          },
        ],
      }),
      story: `tables over ${parts.join(' and ')} with one name`,
    };
  },
  (chance) => {
    const sheets = chance.pick([
      ['S', 's'],
      ['', ' '],
      ['a'.repeat(300), "'"],
      ['S', 'S', 'S'],
      ['\u001b[2J', '\n'],
    ]);
    return {
      fileName: 'crafted.xlsx',
      bytes: buildXlsx({
        sheets: sheets.map((name) => ({ name, cells: { A1: 1, B1: '=S!A1', C1: "='S'!A1" } })),
      }),
      story: `sheets called ${JSON.stringify(sheets)}`,
    };
  },
  (chance) => {
    const repeat = chance.pick(['1048576', '16384', '999999999', '-1', '1e9']);
    const where = chance.pick(['number-rows-repeated', 'number-columns-repeated']);
    const cell = '<table:table-cell office:value-type="float" office:value="1"/>';
    const content = `<office:document-content xmlns:office="o" xmlns:table="t"><office:body><office:spreadsheet><table:table table:name="S"><table:table-row${where.includes('rows') ? ` table:${where}="${repeat}"` : ''}>${cell}${cell.replace('cell ', `cell table:number-columns-repeated="${where.includes('columns') ? repeat : '16383'}" `)}</table:table-row></table:table></office:spreadsheet></office:body></office:document-content>`;
    return {
      fileName: 'crafted.ods',
      bytes: zipSync({
        mimetype: strToU8('application/vnd.oasis.opendocument.spreadsheet'),
        'content.xml': strToU8(content),
      }),
      story: `cells repeated: ${where}=${repeat}`,
    };
  },
  (chance) => {
    const rows = chance.pick([1000, 30_000]);
    const text = `Unit,Visit,Set,Date and time,Added\n${Array.from({ length: rows }, (_, index) => `U${index % 50},V${index},1,2026-01-01,1`).join('\n')}`;
    return { fileName: 'crafted.csv', bytes: strToU8(text), story: `a log of ${rows} rows` };
  },
  (chance) => ({
    fileName: chance.pick(['noise.xlsx', 'noise.ods', 'noise.csv']),
    bytes: Uint8Array.from({ length: chance.below(5000) }, () => chance.below(256)),
    story: 'noise',
  }),
  () => ({ fileName: 'noise.xlsx', bytes: new Uint8Array(), story: 'nothing' }),
];

export function crafted(chance: Chance): Crafted {
  return chance.pick(makers)(chance);
}
