import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { rowsOf } from '../../../functions/office-work/gather/read-log.ts';
import { noCustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { FileError } from '../../../functions/workbook/file/file-error.ts';
import { writeCells } from '../../../functions/workbook/file/write-cells.ts';
import { recalculate } from '../../../functions/workbook/recalculate.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';
import { aboutFile } from '../../../functions/workbook/file/about-file.ts';

// Expected values here are "common practice, no source" or follow from the limits of the .xlsx format
// (ECMA-376 Part 1: 1,048,576 rows, 16,384 columns; a cell's text at most 32,767 characters).

const start = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>';
const withRows = (rows: string): Uint8Array =>
  buildXlsx({ sheets: [{ name: 'S', xml: `${start}${rows}</sheetData></worksheet>` }] });

function refusal(work: () => unknown): FileError {
  try {
    work();
  } catch (problem) {
    if (problem instanceof FileError) return problem;
    throw problem;
  }
  throw new Error('it was accepted');
}

describe('what fuzzing found: time and memory', () => {
  it('a log of 200,000 rows is read, not more rows than a call may have arguments', () => {
    const rows = Array.from({ length: 200_000 }, (_, index) => `U${index % 50},V${index},1,2026-01-01,1`);
    const bytes = strToU8(`Unit,Visit,Set,Date and time,Added\n${rows.join('\n')}`);
    expect(rowsOf('log.csv', bytes, unitSystem('US')).rows).toHaveLength(200_000);
  });

  it('a sheet that unpacks to hundreds of times its size is refused before it is unpacked', () => {
    const sheet = strToU8(`<worksheet><sheetData>${' '.repeat(20_000_000)}`);
    const parts = { '[Content_Types].xml': strToU8('<Types/>'), 'xl/workbook.xml': sheet };
    const error = refusal(() => recalculate(zipSync(parts, { level: 6 }), noCustomFunctions));
    expect(error.code).toBe('too-large');
    expect(error.message).toContain('times its size');
  });

  it('names that each stand for the next one twice are left alone', () => {
    const names = Array.from({ length: 30 }, (_, index) => {
      const next = index === 29 ? '1' : `nm.${index + 1}+nm.${index + 1}`;
      return `<definedName name="nm.${index}">${next}</definedName>`;
    });
    const bytes = buildXlsx({
      sheets: [{ name: 'S', cells: { A1: '=nm.0', A2: '=nm.27' } }],
      names: names.join(''),
    });
    const { kept, loaded } = recalculate(bytes, noCustomFunctions);
    expect(kept.map(({ address }) => address)).toEqual(['A1']);
    expect(kept[0]?.reason).toContain('names');
    // 2 to the power of 29 - 27.
    expect(loaded.workbook.sheets[0]?.value(1, 0)).toBe(4);
  });

  const texts = Object.fromEntries(Array.from({ length: 20_000 }, (_, row) => [`A${row + 1}`, `t${row}`]));
  const hours: readonly (readonly [string, Readonly<Record<string, number | string>>])[] = [
    [
      'one search for each of 20,000 texts among all of them',
      { ...texts, C1: '=SUMPRODUCT(COUNTIF(A1:A20000,"*"&A1:A20000&"*"))' },
    ],
    ['a matrix of 9 million cells', { C3001: '=MDETERM(1/(ROW(A1:A3000)+COLUMN(A1:DKJ1)))' }],
    [
      'many cells that each add up a million',
      {
        A1000000: 1,
        ...Object.fromEntries(
          Array.from({ length: 3000 }, (_, row) => [
            `C${row + 1}`,
            `=SUMPRODUCT(ROW(A$1:A$1000000)*${row + 1})`,
          ]),
        ),
      },
    ],
  ];
  it.each(hours)('%s: given up after the time allowed', (_what, cells) => {
    const bytes = buildXlsx({ sheets: [{ name: 'S', cells }] });
    const error = refusal(() => recalculate(bytes, noCustomFunctions, { minutes: 0.005 }));
    expect(error.code).toBe('too-long');
    expect(error.message).toBe('its formulas were not worked out within 0.005 minutes; nothing was written');
  });

  it('a formula over the whole sheet is left alone when the last cell of it is in use, and others go on', () => {
    const far = '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>';
    const bytes = withRows(
      `<row r="1"><c r="A1"><f>SUMPRODUCT(B:XFD*1)</f><v>7</v></c><c r="B1"><f>TEXTJOIN(",",TRUE,C:XFD)</f><v>8</v></c></row><row r="2"><c r="A2"><f>SUM(C:XFD)</f></c></row>${far}`,
    );
    const { kept, loaded } = recalculate(bytes, noCustomFunctions);
    expect(kept.map(({ address }) => address)).toEqual(['A1', 'B1']);
    expect(kept[0]?.reason).toMatch(/cells at once/);
    const [sheet] = loaded.workbook.sheets;
    expect([sheet?.value(0, 0), sheet?.value(0, 1), sheet?.value(1, 0)]).toEqual([7, 8, 1]);
  });

  it('a full last row is summed without going through a million blank cells for each column', () => {
    const bytes = withRows(
      `<row r="1"><c r="A1"><f>SUM(2:1048576)</f></c></row><row r="1048576">${'<c><v>1</v></c>'.repeat(16_384)}</row>`,
    );
    const { loaded } = recalculate(bytes, noCustomFunctions);
    expect(loaded.workbook.sheets[0]?.value(0, 0)).toBe(16_384);
  }, 20_000);

  it('a text that would be longer than a cell holds is #VALUE!, so that doubling ends', () => {
    const rows = Array.from(
      { length: 40 },
      (_, index) =>
        `<row r="${index + 2}"><c r="A${index + 2}"><f>A${index + 1}&amp;A${index + 1}</f></c></row>`,
    );
    const bytes = withRows(
      `<row r="1"><c r="A1" t="str"><v>${'x'.repeat(10_000)}</v></c><c r="B1"><f>SUBSTITUTE(A1,"x",A1)</f></c></row>${rows.join('')}`,
    );
    const { errors, loaded } = recalculate(bytes, noCustomFunctions);
    expect(loaded.workbook.sheets[0]?.value(1, 0)).toBe('x'.repeat(20_000));
    expect(errors).toHaveLength(40);
    expect(errors[0]?.code).toBe('#VALUE!');
  });

  it('array formulas that claim millions of cells together are kept as they were saved', () => {
    const rows = Array.from(
      { length: 60 },
      (_, index) =>
        `<row r="${index * 20 + 1}"><c r="A${index * 20 + 1}"><f t="array" ref="A${index * 20 + 1}:BXX${index * 20 + 12}">1</f><v>5</v></c></row>`,
    );
    const { kept, loaded } = recalculate(withRows(rows.join('')), noCustomFunctions);
    expect(kept.length).toBeGreaterThan(0);
    expect(kept.length).toBeLessThan(60);
    expect(loaded.workbook.sheets[0]?.value(59 * 20, 0)).toBe(5);
  }, 40_000);
});

describe('what fuzzing found: files that contradict themselves', () => {
  it('two sheets in one part are refused: only one of them could be saved', () => {
    const sheets = '<sheet name="S" sheetId="1" r:id="rId1"/><sheet name="T" sheetId="2" r:id="rId1"/>';
    const sound = buildXlsx({ sheets: [{ name: 'S', cells: { A1: '=1+1' } }] });
    const parts = unzipSync(sound);
    const main = 'xl/workbook.xml';
    parts[main] = strToU8(strFromU8(parts[main] as Uint8Array).replace(/<sheet .*\/>/, sheets));
    const error = refusal(() => recalculate(zipSync(parts), noCustomFunctions));
    expect(error.code).toBe('corrupt');
    expect(error.message).toContain('T is in the file twice');
  });
});

describe('what fuzzing found: messages', () => {
  it('name the file, once', () => {
    const error = refusal(() => aboutFile('a/log.xlsx', () => recalculate(strToU8('x'), noCustomFunctions)));
    expect(error.message).toMatch(/^a\/log\.xlsx: the file is no workbook/);
    expect(
      refusal(() =>
        aboutFile('a/log.xlsx', () => {
          throw error;
        }),
      ).message,
    ).toBe(error.message);
    expect(error.code).toBe('not-a-workbook');
  });

  it('repeat of a file neither control characters nor a name without end', () => {
    const { message } = new FileError(
      'corrupt',
      `the part \u001b[2J\u202e${'x'.repeat(60_000)}\n is damaged`,
    );
    expect(message).toMatch(/^the part \?\[2J\?x/);
    expect(message).toMatch(/x\? is damaged$/);
    expect(message.length).toBeLessThan(700);
  });
});

describe('what fuzzing found: a sheet without a place for cells', () => {
  it('refuses a change instead of losing it', () => {
    const text = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"/>';
    const cells = [{ row: 0, column: 0, value: 1 }];
    expect(refusal(() => writeCells(text, 'xl/worksheets/sheet1.xml', cells, () => undefined)).code).toBe(
      'corrupt',
    );
  });
});
