import { describe, expect, it } from 'vitest';
import { TestSheet } from './sheet-of.ts';

// Expected values are worked by hand. LibreOffice 7.4 does not know these functions and does not spill, so that there is
// no independent run behind them; ordinary array formulas are compared with it in tests/hosts/workbook.
describe('spilling results', () => {
  const column = (test: TestSheet, letters: string, count: number): unknown[] =>
    Array.from({ length: count }, (_, row) => test.get(`${letters}${row + 1}`));

  it('take the cells they need and follow their size', () => {
    const test = new TestSheet({ A1: 3 });
    test.set('C1', '=SEQUENCE(A1)', 'spill');
    test.set('D1', '=SUM(C1#)');
    test.set('E1', '=SUM(C1:C9)');
    test.workbook.recalculate();
    expect(column(test, 'C', 4)).toEqual([1, 2, 3, null]);
    expect([test.get('D1'), test.get('E1')]).toEqual([6, 6]);
    test.set('A1', 5);
    test.workbook.recalculate();
    expect(column(test, 'C', 6)).toEqual([1, 2, 3, 4, 5, null]);
    expect([test.get('D1'), test.get('E1')]).toEqual([15, 15]);
    test.set('A1', 1);
    test.workbook.recalculate();
    expect(column(test, 'C', 3)).toEqual([1, null, null]);
    expect(test.get('E1')).toBe(1);
  });

  it('are held up by a filled cell and come back when it is emptied', () => {
    const test = new TestSheet({ C2: 'in the way' });
    test.set('C1', '=SEQUENCE(3)', 'spill');
    test.workbook.recalculate();
    expect(column(test, 'C', 3)).toEqual(['#SPILL!', 'in the way', null]);
    test.set('C2', null);
    test.workbook.recalculate();
    expect(column(test, 'C', 3)).toEqual([1, 2, 3]);
    test.set('C3', 9);
    test.workbook.recalculate();
    expect(column(test, 'C', 3)).toEqual(['#SPILL!', null, 9]);
  });

  it('show in ordinary cells as their first value', () => {
    const test = new TestSheet({ A1: 'x', A2: 'y' });
    expect(test.work('=SEQUENCE(3)')).toBe(1);
    expect(test.work('={5,6}')).toBe(5);
  });
});

describe('newer functions', () => {
  const test = new TestSheet({
    A1: 'AC-01',
    B1: 5,
    A2: 'AC-02',
    B2: 3,
    A3: 'AC-01',
    B3: 9,
    A4: 'AC-03',
    B4: null,
  });
  it.each([
    ['_xlfn.XLOOKUP("AC-02",A1:A4,B1:B4)', 3],
    ['_xlfn.XLOOKUP("ac-01",A1:A4,B1:B4)', 5],
    ['_xlfn.XLOOKUP("AC-01",A1:A4,B1:B4,,0,-1)', 9],
    ['_xlfn.XLOOKUP("none",A1:A4,B1:B4)', '#N/A'],
    ['_xlfn.XLOOKUP("none",A1:A4,B1:B4,"absent")', 'absent'],
    ['_xlfn.XLOOKUP("*03",A1:A4,A1:A4,,2)', 'AC-03'],
    ['_xlfn.XLOOKUP(4,B1:B3,A1:A3,,-1)', 'AC-02'],
    ['_xlfn.XLOOKUP(4,B1:B3,A1:A3,,1)', 'AC-01'],
    ['_xlfn.XLOOKUP("AC-02",A1:A4,B1:B3)', '#VALUE!'],
    ['_xlfn.XMATCH(9,B1:B4)', 3],
    ['SUM(_xlfn._xlws.FILTER(B1:B4,A1:A4="AC-01"))', 14],
    ['_xlfn._xlws.FILTER(B1:B4,A1:A4="none","empty")', 'empty'],
    ['_xlfn._xlws.FILTER(B1:B4,A1:A4="none")', '#CALC!'],
    ['_xlfn.TEXTJOIN(",",TRUE,_xlfn.UNIQUE(A1:A4))', 'AC-01,AC-02,AC-03'],
    ['_xlfn.TEXTJOIN(",",TRUE,_xlfn.UNIQUE(A1:A4,FALSE,TRUE))', 'AC-02,AC-03'],
    ['_xlfn.TEXTJOIN(",",TRUE,_xlfn._xlws.SORT(B1:B3,1,-1))', '9,5,3'],
    ['_xlfn.TEXTJOIN(",",TRUE,_xlfn.SORTBY(A1:A3,B1:B3))', 'AC-02,AC-01,AC-01'],
    ['SUM(_xlfn.SEQUENCE(2,3,10,5))', 135],
    ['_xlfn.LET(_xlpm.x,B1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)', 15],
    ['_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)(4)', 8],
    ['SUM(_xlfn.MAP(B1:B3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*_xlpm.v)))', 115],
    ['_xlfn.REDUCE(1,B1:B3,_xlfn.LAMBDA(_xlpm.a,_xlpm.v,_xlpm.a*_xlpm.v))', 135],
    ['SUM(_xlfn.BYROW(A1:B3,_xlfn.LAMBDA(_xlpm.r,SUM(_xlpm.r))))', 17],
    ['SUM(_xlfn.TAKE(B1:B3,2))', 8],
    ['SUM(_xlfn.DROP(B1:B3,-1))', 8],
    ['SUM(_xlfn.CHOOSEROWS(B1:B3,1,-1))', 14],
    ['COLUMNS(_xlfn.HSTACK(A1:A2,B1:B2))', 2],
    ['ROWS(_xlfn.VSTACK(A1:A2,B1:B3))', 5],
    ['_xlfn.TEXTBEFORE("a-b-c","-",2)', 'a-b'],
    ['_xlfn.TEXTAFTER("a-b-c","-",-1)', 'c'],
    ['_xlfn.SINGLE({7,8})', 7],
    ['_xlfn.IFS(B1>9,"big",TRUE,"small")', 'small'],
  ])('%s', (formula, expected) => {
    expect(test.work(`=${formula}`)).toBe(expected);
  });
});
