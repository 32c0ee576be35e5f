import { describe, expect, it } from 'vitest';
import { rethrowFaults } from '../../../functions/runtime/program-fault.ts';
import type { CustomArgument, CustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { TestSheet } from './sheet-of.ts';

const calls: CustomArgument[][] = [];
const provider: CustomFunctions = {
  resolve: (name) => /^(?:DEMO\.|_xldudf_DEMO_)(\w+)$/i.exec(name)?.[1]?.toUpperCase(),
  takesErrors: (id) => id === 'SEESERRORS',
  call(id, args): CellValue | CellValue[][] {
    calls.push([...args]);
    const [first] = args;
    switch (id) {
      case 'DOUBLE':
        if (Array.isArray(first)) return first.map((row) => row.map((value) => Number(value) * 2));
        return typeof first === 'number'
          ? first * 2
          : new CellError('#VALUE!', `pressure: ${String(first)} is no number`);
      case 'KINDS':
        return args
          .map((arg) =>
            arg === undefined
              ? 'omitted'
              : arg === null
                ? 'blank'
                : Array.isArray(arg)
                  ? `${arg.length}x${arg[0]?.length}`
                  : typeof arg,
          )
          .join(' ');
      case 'SEESERRORS':
        return first instanceof CellError ? `saw ${first.code}` : 'saw none';
      case 'BLANK':
        return null;
      case 'NONE':
        return NaN;
      case 'RAGGED':
        return [[1, 2], [3]];
      default:
        throw new Error(`${id} broke`);
    }
  },
};

// The values are what the little functions above answer.
describe('custom functions', () => {
  const make = (): TestSheet =>
    new TestSheet({ A1: 1, A2: 2, B1: 'x', C1: '=1/0' }, { customFunctions: provider });

  it.each([
    ['DEMO.DOUBLE(A2)', 4],
    ['_xldudf_DEMO_DOUBLE(A2)', 4],
    ['demo.double(A2)+1', 5],
    ['DEMO.DOUBLE(A1:A2)', 2],
    ['SUM(DEMO.DOUBLE(A1:A2))', 6],
    ['SUM(DEMO.DOUBLE(A1:A2*10))', 60],
    ['DEMO.KINDS(A1,,Z9,A1:B2,"t",TRUE)', 'number omitted blank 2x2 string boolean'],
    ['DEMO.KINDS()', ''],
    ['DEMO.DOUBLE(1/0)', '#DIV/0!'],
    ['DEMO.DOUBLE(C1)', '#DIV/0!'],
    ['DEMO.SEESERRORS(C1)', 'saw #DIV/0!'],
    ['DEMO.BLANK()', ''],
    ['DEMO.NONE()', '#NUM!'],
    ['DEMO.RAGGED()', '#VALUE!'],
    ['IFERROR(DEMO.DOUBLE(B1),"caught")', 'caught'],
  ])('%s', (formula, expected) => {
    expect(make().work(`=${formula}`)).toBe(expected);
  });

  it('that break show an error that says whose fault it is', () => {
    rethrowFaults(false);
    try {
      const test = make();
      test.set('D3', '=DEMO.BROKEN()');
      test.workbook.recalculate();
      expect(test.error('D3').code).toBe('#VALUE!');
      expect(test.error('D3').message).toBe('a fault of the program, please report it: Error: BROKEN broke');
    } finally {
      rethrowFaults(true);
    }
  });

  it('hands errors inside ranges over as they are', () => {
    calls.length = 0;
    make().work('=DEMO.KINDS(C1:C2)');
    const seen = calls.at(-1)?.[0] as CellValue[][];
    expect(seen[0]?.[0]).toBeInstanceOf(CellError);
    expect(seen[1]?.[0]).toBeNull();
  });

  it('hands the same range over as the same object within a run, and afresh in the next', () => {
    calls.length = 0;
    const test = make();
    test.set('E1', '=DEMO.KINDS($A$1:$B$2)');
    test.set('E2', '=DEMO.KINDS($A$1:$B$2)');
    test.workbook.recalculate();
    const [first, second] = calls.map(([range]) => range);
    expect(second).toBe(first);
    test.set('A1', 50);
    test.workbook.recalculate();
    expect(calls.at(-1)?.[0]).toEqual([
      [50, 'x'],
      [2, null],
    ]);
  });

  it('keeps the message of an error while it is passed on', () => {
    const test = make();
    test.set('D1', '=DEMO.DOUBLE(B1)');
    test.set('D2', '=D1+1');
    test.workbook.recalculate();
    expect(test.error('D1').message).toBe('pressure: x is no number');
    expect(test.error('D2').message).toBe('pressure: x is no number');
  });

  it('fills an array formula', () => {
    const test = make();
    test.workbook.setFormula(test.sheet, 4, 4, 'DEMO.DOUBLE(A1:A2)', { shape: 'fixed', height: 3, width: 1 });
    test.workbook.recalculate();
    expect([test.get('E5'), test.get('E6'), test.get('E7')]).toEqual([2, 4, '#N/A']);
  });

  it('calls only for the branch of an IF that is taken', () => {
    calls.length = 0;
    make().work('=IF(A1=1,"no call",DEMO.DOUBLE(A1))');
    expect(calls).toHaveLength(0);
  });
});
