import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { noCustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { FileError } from '../../../functions/workbook/file/file-error.ts';
import type { FileErrorCode } from '../../../functions/workbook/file/file-error.ts';
import { usualLimits } from '../../../functions/workbook/file/limits.ts';
import { recalculate } from '../../../functions/workbook/recalculate.ts';
import { buildXlsx, tableXml } from './build-xlsx.ts';
import { TestSheet } from './sheet-of.ts';

function refusal(bytes: Uint8Array, limits = usualLimits): FileError {
  try {
    recalculate(bytes, noCustomFunctions, { limits });
  } catch (problem) {
    if (problem instanceof FileError) return problem;
    throw problem;
  }
  throw new Error('the file was accepted');
}

const sheetStart = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>';
const sheetEnd = '</sheetData></worksheet>';
const withSheet = (rows: string): Uint8Array =>
  buildXlsx({ sheets: [{ name: 'S', xml: `${sheetStart}${rows}${sheetEnd}` }] });

const sound = buildXlsx({
  sheets: [
    { name: 'A', cells: { A1: 1, A2: 'two', A3: true, B1: '=SUM(A1:A3)', B2: '=Log[Oz]', B3: '=Rate*2' } },
    { name: 'B', cells: { A1: 'Oz', A2: 4 }, tables: [tableXml(1, 'Log', 'A1:A2', ['Oz'])] },
  ],
  names: '<definedName name="Rate">A!$A$1</definedName>',
  sharedStrings: '<sst><si><t>x</t></si></sst>',
  styles: '<styleSheet><cellXfs count="1"><xf numFmtId="14"/></cellXfs></styleSheet>',
});

function utf16(text: string): Uint8Array {
  return Uint8Array.from([...text].flatMap((letter) => [letter.charCodeAt(0), 0]));
}

function joined(...parts: readonly (Uint8Array | readonly number[])[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => [...part]));
}

const compound = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

describe('files that are no workbook', () => {
  const cases: readonly [string, Uint8Array, FileErrorCode, RegExp][] = [
    ['an empty file', new Uint8Array(), 'corrupt', /empty/],
    ['text', strToU8('Unit,Ounces\nAC-01,2'), 'not-a-workbook', /zip/],
    ['half a file', sound.slice(0, sound.length / 2), 'corrupt', /no complete zip/],
    ['an old .xls', joined(compound, new Uint8Array(600), utf16('Workbook')), 'other-format', /\.xls/],
    [
      'an encrypted workbook',
      joined(compound, new Uint8Array(600), utf16('EncryptedPackage')),
      'password-protected',
      /password/,
    ],
    ['another zip', zipSync({ 'a.txt': strToU8('a') }), 'not-a-workbook', /holds no workbook/],
    [
      'a .docx',
      zipSync({ '[Content_Types].xml': strToU8('<Types/>'), 'word/document.xml': strToU8('<d/>') }),
      'not-a-workbook',
      /no workbook/,
    ],
    [
      'an .xlsb',
      zipSync({ '[Content_Types].xml': strToU8('<Types/>'), 'xl/workbook.bin': strToU8('x') }),
      'other-format',
      /xlsb/,
    ],
    [
      'an .ods',
      zipSync({
        mimetype: strToU8('application/vnd.oasis.opendocument.spreadsheet'),
        'content.xml': strToU8('<x/>'),
      }),
      'other-format',
      /ods/,
    ],
    ['broken XML', withSheet('<row><c></row>'), 'corrupt', /sound XML/],
    [
      'an entity bomb',
      buildXlsx({
        sheets: [
          {
            name: 'S',
            xml: `<!DOCTYPE w [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${sheetStart}<row><c t="str"><v>&b;</v></c></row>${sheetEnd}`,
          },
        ],
      }),
      'corrupt',
      /document type/,
    ],
    ['an unknown entity', withSheet('<row><c t="str"><v>&b;</v></c></row>'), 'corrupt', /sound XML/],
    ['an absurd row', withSheet('<row r="99999999"><c><v>1</v></c></row>'), 'corrupt', /row 99999999/],
    ['an absurd cell', withSheet('<row r="1"><c r="ZZZ1"><v>1</v></c></row>'), 'corrupt', /ZZZ1/],
  ];
  it.each(cases)('%s', (_name, bytes, code, message) => {
    const error = refusal(bytes);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(message);
  });

  it('a part whose contents were changed', () => {
    const bytes = sound.slice();
    // Somewhere inside the first part's packed data.
    bytes[80] = (bytes[80] ?? 0) ^ 0xff;
    expect(refusal(bytes).code).toBe('corrupt');
  });

  it('text that is no UTF-8', () => {
    const parts = unzipSync(sound);
    parts['xl/workbook.xml'] = Uint8Array.of(0x3c, 0xff, 0xfe, 0x3e);
    expect(refusal(zipSync(parts)).message).toContain('no utf-8 text');
  });

  it('a zip bomb', () => {
    const bomb = zipSync({
      '[Content_Types].xml': strToU8('<Types/>'),
      'xl/workbook.xml': new Uint8Array(2 ** 22),
    });
    expect(refusal(bomb, { ...usualLimits, partBytes: 2 ** 20 }).code).toBe('too-large');
  });

  it('a part that claims to be small and is not', () => {
    const bytes = sound.slice();
    const view = new DataView(bytes.buffer);
    // The first record of the central directory: its size field is at 24.
    let at = bytes.length - 22;
    at = view.getUint32(at + 16, true);
    view.setUint32(at + 24, 10, true);
    expect(refusal(bytes).code).toBe('corrupt');
  });

  it('more cells than allowed', () => {
    expect(refusal(sound, { ...usualLimits, cells: 3 }).code).toBe('too-large');
  });
});

describe('files damaged at random', () => {
  const soft = (bytes: Uint8Array): void => {
    const given = bytes.slice();
    try {
      recalculate(bytes, noCustomFunctions);
    } catch (problem) {
      if (!(problem instanceof FileError)) throw problem;
    }
    expect(Buffer.compare(bytes, given)).toBe(0);
  };

  it('are read or refused, never anything else: bytes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(sound.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }),
        (changes) => {
          const bytes = sound.slice();
          for (const [at, byte] of changes) bytes[at] = byte;
          soft(bytes);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('are read or refused, never anything else: the XML of a sheet', () => {
    const rows =
      '<row r="1"><c r="A1"><v>1</v></c><c r="B1" t="str" cm="1"><f t="array" ref="B1:B2">A1:A2&amp;"x"</f><v>1x</v></c></row><row r="2"><c r="A2" t="b"><v>1</v></c><c r="B2"><v>4</v></c><c r="C2"><f t="shared" ref="C2:C3" si="0">SUM($A$1:A2)</f></c></row><row r="3"><c r="C3"><f t="shared" si="0"/></c></row>';
    const odd = fc.constantFrom(
      '<',
      '>',
      '"',
      '/',
      '&',
      '=',
      ' ',
      '0',
      '-1',
      '9999999',
      'A',
      'r="',
      '<c>',
      '</f>',
      '\u0000',
      'é',
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(rows.length), fc.nat(8), odd), { minLength: 1, maxLength: 4 }),
        (edits) => {
          let xml = rows;
          for (const [at, cut, piece] of edits) xml = xml.slice(0, at) + piece + xml.slice(at + cut);
          soft(withSheet(xml));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('hold formulas of any spelling', () => {
    const piece = fc.constantFrom(
      'A1',
      'B2:C3',
      '(',
      ')',
      ',',
      '+',
      '-',
      '*',
      '^',
      '"',
      'x',
      'SUM(',
      'IF(',
      '{',
      '}',
      ';',
      '1',
      '#REF!',
      '@',
      '#',
      '!',
      "'",
      '[',
      ']',
      'LET(',
      'x,',
      ' ',
      ':',
      '%',
      '&',
      'T[',
      '1E309',
      '.',
    );
    const test = new TestSheet({ A2: 1, B2: 'x', C3: 2 });
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), fc.boolean(), (pieces, spills) => {
        test.set('A1', `=${pieces.join('')}`, spills ? 'spill' : 'single');
        test.workbook.recalculate();
        expect(test.get('A1')).not.toBeUndefined();
        expect(test.get('A1')).not.toBeNaN();
        test.set('A1', null);
      }),
      { numRuns: 3000 },
    );
  });

  it('may nest a formula too deep to be read', () => {
    const deep = `${'('.repeat(20_000)}1${')'.repeat(20_000)}`;
    const { kept } = recalculate(
      withSheet(`<row r="1"><c r="A1"><f>${deep}</f><v>1</v></c></row>`),
      noCustomFunctions,
    );
    expect(kept).toHaveLength(1);
    expect(kept[0]?.reason).toBe('the formula is nested too deeply to be read');
  });
});
