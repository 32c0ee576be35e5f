import { beforeAll, describe, expect, it } from 'vitest';
import { columnLetters } from '../../../functions/workbook/model/address.ts';
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';
import type { TestCell } from '../../functions/workbook/build-xlsx.ts';
import type { Case } from './comparison.ts';
import { shown, spelled, valuesOf } from './comparison.ts';
import { recalculateInCalc } from './libreoffice-recalculation.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';

/**
 * Ranges that reach beyond everything in use: their blank cells count, whatever is saved by not looking at them.
 * Three rows (or columns) hold something, the ranges reach to the twentieth.
 */
const formulas = [
  'SUMPRODUCT(--(A1:A20=""))',
  'SUMPRODUCT(A1:A20+1)',
  'SUMPRODUCT((A1:A20<5)*1)',
  'SUMPRODUCT(ROW(A1:A20))',
  'SUMPRODUCT(COLUMN(A1:T1))',
  'ROWS(ROW(A1:A20))',
  'SUMPRODUCT(ISBLANK(A1:C20)*1)',
  'SUMPRODUCT(LEN(A1:A20))',
  'SUMPRODUCT(N(+A1:A20)+2)',
  'MATCH(19,ROW(A1:A20),0)',
  'COUNTBLANK(A1:A20)',
  'COUNTIF(A1:A20,"")',
  'COUNTIF(A1:C20,"<>x")',
  'COUNTIFS(A1:A20,"",B1:B20,"")',
  'COUNTIFS(A1:B20,">0",C1:D20,"")',
  'SUMIF(A1:B20,">0",C1)',
  'SUMIF(A1:Z20,">0",B1:AA20)',
  'SUMIFS(B1:AA20,A1:Z20,">0")',
  'MAXIFS(B1:AA20,A1:Z20,"<3")',
  'AVERAGEIF(A1:C20,"<>")',
  'TEXTJOIN("-",FALSE,A1:A6)',
  'TEXTJOIN("-",TRUE,A1:A20)',
  'CONCAT(A1:C20)',
  'SUMPRODUCT(MMULT(TRANSPOSE(A1:A20+1),A1:A20+1))',
  'SUM(INDEX(A1:C20,15,0))',
  'COUNTA(INDEX(A1:C20,0,2))',
  'SUMPRODUCT(FREQUENCY(A1:A20,B1:B20))',
  'MEDIAN(IF(1,A1:A20))',
  'COUNT(A1:T20)',
  'AVERAGE(A1:A20)',
  'MIN(A1:A20)',
  'LOOKUP(9,A1:A20)',
  'SUM(OFFSET(A1,0,0,20,2))',
  'SUMPRODUCT((INDIRECT("A1:A20")="")*1)',
  'SUBTOTAL(3,A1:C20)',
  'AND(A1:A20)',
  'IF(COUNT(A1:A20)<ROWS(A1:A20),"more","full")',
];

/** Mirrors a formula: rows become columns. Only ranges like A1:C20 occur. */
function turned(formula: string): string {
  return formula.replace(/\b([A-Z]{1,2})(\d{1,2})\b/g, (_all, letters: string, row: string) => {
    let column = 0;
    for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
    return `${columnLetters(Number(row) - 1)}${column}`;
  });
}

/** Left out when turned: what is about rows. */
const aboutRows = new Set([
  'SUM(INDEX(A1:C20,15,0))',
  'SUMPRODUCT(ROW(A1:A20))',
  'ROWS(ROW(A1:A20))',
  'MATCH(19,ROW(A1:A20),0)',
  'SUMPRODUCT(COLUMN(A1:T1))',
]);

/** LibreOffice 7.4 counts blank rows beyond those in use, blank columns not; the criterion is the same (ECMA-376 18.17.7.58). */
const knownDifferences: Readonly<Record<string, number>> = {
  'COUNTIF(A1:T1,"")': 17,
  'COUNTIF(A1:T3,"<>x")': 60,
  'COUNTIFS(A1:T1,"",A2:T2,"")': 17,
};

const values: readonly (readonly number[])[] = [
  [1, 4, 2],
  [2, 5, 0],
  [3, 6, 7],
];

/** Formulas stand beside the values in the rows in use (or below them in the columns in use). */
function workbook(isTurned: boolean): { bytes: Uint8Array; cases: Case[] } {
  const cells: Record<string, TestCell> = {};
  for (const [one, line] of values.entries()) {
    for (const [other, value] of line.entries()) {
      const address = isTurned ? `${columnLetters(one)}${other + 1}` : `${columnLetters(other)}${one + 1}`;
      cells[address] = value;
    }
  }
  const listed = isTurned ? formulas.filter((formula) => !aboutRows.has(formula)).map(turned) : formulas;
  const cases = listed.map((formula, index): Case => {
    const along = 60 + Math.floor(index / 3);
    const across = index % 3;
    const [row, column] = isTurned ? [along, across] : [across, along];
    cells[`${columnLetters(column)}${row + 1}`] = `=${spelled(formula)}`;
    return { family: isTurned ? 'across' : 'down', formula, sheet: 'S', row, column, height: 1 };
  });
  return { bytes: buildXlsx({ sheets: [{ name: 'S', cells }] }), cases };
}

describe.each([
  ['down', workbook(false)],
  ['across', workbook(true)],
] as const)('blank cells beyond those in use, %s, as in LibreOffice', (_direction, { bytes, cases }) => {
  let calc: (CellValue[] | undefined)[] = [];
  const ours = valuesOf(bytes, cases, true);
  beforeAll(async () => {
    calc = valuesOf(await recalculateInCalc(bytes), cases, false);
  });

  it.each(cases.map((item, index) => ({ ...item, index })))('$formula', ({ formula, index }) => {
    expect(calc[index]).not.toEqual([null]);
    const known = knownDifferences[formula];
    if (known !== undefined) {
      expect(ours[index]).toEqual([known]);
      expect(calc[index]).not.toEqual([known]);
    } else expect(ours[index]?.map(shown)).toEqual(calc[index]?.map(shown));
  });
});
