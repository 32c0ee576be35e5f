import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { cellKey, fillCells } from '../../../../functions/office-work/quote/fill-cells.ts';
import type { Filling } from '../../../../functions/office-work/quote/fill-cells.ts';
import { loadWorkbook } from '../../../../functions/workbook/file/load-workbook.ts';
import { buildXlsx } from '../../workbook/build-xlsx.ts';

const book = buildXlsx({
  sheets: [
    {
      name: 'One',
      cells: {
        A1: 'old',
        B1: 7,
        C1: { xml: '<c r="C1" s="0"/>' },
        D1: '=B1*2',
        A2: { xml: '<c r="A2" t="s" s="0"><v>0</v></c>' },
      },
    },
    { name: 'Two', cells: { A1: 1 } },
  ],
  sharedStrings:
    '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>shared</t></si></sst>',
});

const fill = (cells: Record<string, Filling>, sheet = 'One'): Uint8Array =>
  fillCells(book, new Map([[sheet, new Map(Object.entries(cells))]]));
const at = cellKey;

/** Behaviour by definition; cells as ECMA-376 Part 1, 18.3.1.4 spells them. */
describe('filling cells', () => {
  test('puts numbers, texts and nothing, and leaves the rest as it was', () => {
    const filled = fill({
      [at(0, 0)]: 'a < "b" & é',
      [at(0, 1)]: null,
      [at(0, 2)]: -0.25,
      [at(1, 0)]: 'two',
    });
    const sheet = loadWorkbook(filled).workbook.findSheet('One');
    expect([0, 1, 2].map((column) => sheet?.value(0, column))).toEqual(['a < "b" & é', null, -0.25]);
    expect(sheet?.value(1, 0)).toBe('two');
    expect(sheet?.formula(0, 3)?.text()).toBe('B1*2');
    const [before, after] = [unzipSync(book), unzipSync(filled)];
    const changed = Object.keys(before).filter(
      (name) => strFromU8(before[name] ?? new Uint8Array()) !== strFromU8(after[name] ?? new Uint8Array()),
    );
    expect(changed).toEqual(['xl/worksheets/sheet1.xml']);
  });

  test('refuses a cell that is not there, a formula, and a sheet that is not there', () => {
    expect(() => fill({ [at(9, 9)]: 1 })).toThrow('no cell 9,9');
    expect(() => fill({ [at(0, 3)]: 1 })).toThrow('holds a formula');
    expect(() => fill({ [at(0, 0)]: 1 }, 'Three')).toThrow('lacks 1');
  });
});
