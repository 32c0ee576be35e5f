import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellAddress, parseAddress } from '../../../functions/workbook/model/address.ts';
import { compileFormula } from '../../../functions/workbook/compile/compile.ts';
import type { Operand } from '../../../functions/workbook/model/operand.ts';
import { Reference } from '../../../functions/workbook/model/reference.ts';
import { Table } from '../../../functions/workbook/model/table.ts';
import { TestSheet } from './sheet-of.ts';

/** A result for comparing, references by their address. */
function spelled(result: Operand): string {
  return result instanceof Reference ? result.toString() : JSON.stringify(result);
}

// Expected values are worked by hand; the meaning of references is that of ECMA-376 Part 1, 18.17.2.
describe('references', () => {
  it('reads other sheets, also by quoted names, and says #REF! for a sheet that is not there', () => {
    const test = new TestSheet({ A1: 3 });
    const other = test.workbook.addSheet("Bob's log");
    test.set('B2', 7, 'single', other);
    test.set('C1', '=SUM(Main!A1:A3)', 'single', other);
    expect(test.work("='Bob''s log'!B2*2")).toBe(14);
    expect(test.get('C1', other)).toBe(3);
    expect(test.work("='BOB''S LOG'!b2")).toBe(7);
    expect(test.work('=Nowhere!A1')).toBe('#REF!');
    expect(test.work('=Main!#REF!+1')).toBe('#REF!');
  });

  it('knows names of the workbook and of a sheet; the sheet comes first', () => {
    const test = new TestSheet({ A1: 3, A2: 4 });
    const { workbook, sheet } = test;
    const other = workbook.addSheet('Other');
    workbook.defineName('Factor', '100');
    workbook.defineName('Factor', '2', sheet);
    workbook.defineName('Both', 'Main!$A$1:$A$2');
    workbook.defineName('Loop', 'Loop+1');
    workbook.defineName('Doubled', 'LAMBDA(x,x*2)');
    test.set('A1', '=Factor', 'single', other);
    expect(test.work('=Factor*A1')).toBe(6);
    expect(test.get('A1', other)).toBe(100);
    expect(test.work('=SUM(Both)')).toBe(7);
    expect(test.work('=SUM(both)')).toBe(7);
    expect(test.work('=Main!Factor')).toBe(2);
    expect(test.work('=Doubled(A2)')).toBe(8);
    expect(test.work('=Nobody')).toBe('#NAME?');
    expect(test.work('=Loop')).toBe('#NAME?');
  });

  it('follows cells behind a name', () => {
    const test = new TestSheet({ A1: 3 });
    test.workbook.defineName('Start', 'Main!$A$1');
    test.set('B1', '=Start+1');
    test.workbook.recalculate();
    test.set('A1', 10);
    test.workbook.recalculate();
    expect(test.get('B1')).toBe(11);
  });

  describe('to tables', () => {
    const make = (): TestSheet => {
      const test = new TestSheet({
        B2: 'Unit',
        C2: 'Oz',
        D2: 'Oz added',
        B3: 'a',
        C3: 1,
        D3: 10,
        B4: 'b',
        C4: 2,
        D4: 20,
        C5: 99,
      });
      test.workbook.addTable(
        new Table({
          name: 'Log',
          sheet: test.sheet,
          area: { top: 1, left: 1, bottom: 4, right: 3 },
          columns: ['Unit', 'Oz', 'Oz added'],
          hasHeader: true,
          hasTotals: true,
        }),
      );
      return test;
    };

    it.each([
      ['SUM(Log[Oz])', 3],
      ['SUM(Log[[Oz]:[Oz added]])', 33],
      ['SUM(Log)', 33],
      ['SUM(log[oz])', 3],
      ['Log[[#Headers],[Oz added]]', 'Oz added'],
      ['Log[[#Totals],[Oz]]', 99],
      ['SUM(Log[#All])', 132],
      ['SUM(Log[[#Data],[#Totals],[Oz]])', 102],
      ['COUNTA(Log[#Headers])', 3],
      ['SUM(Log[Nothing])', '#REF!'],
      ['SUM(Nowhere[Oz])', '#NAME?'],
      ['ROWS(Log)', 2],
    ])('%s', (formula, expected) => {
      expect(make().work(`=${formula}`)).toBe(expected);
    });

    it('of the own row', () => {
      const test = make();
      for (const row of [3, 4]) {
        test.set(`F${row}`, '=Log[[#This Row],[Oz]]*2');
        test.set(`G${row}`, '=Log[@[Oz added]]+1');
        test.set(`D${row}`, '=[@Oz]*10');
      }
      test.set('F9', '=Log[[#This Row],[Oz]]');
      test.workbook.recalculate();
      expect(['F3', 'F4', 'G3', 'G4', 'D4', 'F9'].map((address) => test.get(address))).toEqual([
        2,
        4,
        11,
        21,
        20,
        '#VALUE!',
      ]);
    });
  });

  it('means the same whether the work of compiling is shared or not', () => {
    const reference = fc
      .record({
        row: fc.integer({ min: 4, max: 12 }),
        column: fc.integer({ min: 4, max: 12 }),
        fixed: fc.nat(3),
      })
      .map(({ row, column, fixed }) => {
        const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(cellAddress(row, column)) ?? [];
        return `${(fixed & 1) === 1 ? '$' : ''}${letters}${(fixed & 2) === 2 ? '$' : ''}${digits}`;
      });
    const formula = fc.oneof(
      reference,
      fc.tuple(reference, reference).map(([one, other]) => `SUM(${one}:${other})`),
      fc.tuple(reference, reference).map(([one, other]) => `${one}&"A1 "&Main!${other}`),
      fc.constantFrom('SUM(E:F)', 'SUM($E:F)', 'SUM(5:6)', 'SUM(5:$6)', 'LOG10(E5)', "'Main'!E5+1E2", 'E5%'),
    );
    const test = new TestSheet();
    for (let row = 0; row < 30; row++) {
      for (let column = 0; column < 30; column++) test.sheet.store(row, column, row * 100 + column);
    }
    const { workbook, sheet } = test;
    fc.assert(
      fc.property(formula, fc.nat(9), fc.nat(9), (text, row, column) => {
        const shared = workbook.compile(text, sheet, row + 4, column + 4, false);
        const own = compileFormula(text, { workbook, sheet, row: row + 4, column: column + 4, whole: false });
        const place = { workbook, sheet, row: row + 4, column: column + 4, variables: [] };
        expect(spelled(shared.evaluate(place))).toBe(spelled(own.evaluate(place)));
      }),
      { numRuns: 1000 },
    );
  });

  it('reads addresses and writes them back', () => {
    expect(parseAddress('XFD1048576')).toEqual({ row: 1_048_575, column: 16_383 });
    expect(parseAddress('$B$7')).toEqual({ row: 6, column: 1 });
    for (const wrong of ['XFE1', 'A0', 'A1048577', 'A', '1', 'A1B', '', 'AAAA1']) {
      expect(parseAddress(wrong)).toBeUndefined();
    }
    fc.assert(
      fc.property(fc.nat(1_048_575), fc.nat(16_383), (row, column) => {
        expect(parseAddress(cellAddress(row, column))).toEqual({ row, column });
      }),
    );
  });
});

// What INDEX gives is a reference, also to a blank cell: how spreadsheet programs do it, from memory.
it('a range may end at a blank cell that INDEX found below everything in use', () => {
  const sheet = new TestSheet({ A1: '=SUM(F1:INDEX(F1:F6,2))', B1: '=ROW(INDEX(F1:F6,5))' });
  sheet.workbook.recalculate();
  expect([sheet.get('A1'), sheet.get('B1')]).toEqual([0, 5]);
});
