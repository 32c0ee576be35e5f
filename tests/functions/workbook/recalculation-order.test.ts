import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Workbook } from '../../../functions/workbook/run/workbook.ts';
import { addresses, TestSheet } from './sheet-of.ts';

// Expected values are worked by hand from the formulas unless a test says otherwise.
describe('order of calculation', () => {
  it('works out a chain of 100,000 cells that is written backwards', () => {
    const workbook = new Workbook();
    const sheet = workbook.addSheet('S');
    workbook.setValue(sheet, 0, 0, 1);
    for (let row = 100_000; row > 0; row--) workbook.setFormula(sheet, row, 0, `A${row}+1`);
    workbook.recalculate();
    expect(sheet.value(100_000, 0)).toBe(100_001);
    workbook.setValue(sheet, 0, 0, 5);
    expect(workbook.recalculate().workedOut).toHaveLength(100_000);
    expect(sheet.value(100_000, 0)).toBe(100_005);
  });

  it('works out a running sum over growing ranges', () => {
    const workbook = new Workbook();
    const sheet = workbook.addSheet('S');
    const count = 3_000;
    for (let row = 0; row < count; row++) {
      workbook.setFormula(sheet, row, 0, row === 0 ? '1' : `A${row}+1`);
      workbook.setFormula(sheet, row, 1, `SUM(A$1:A${row + 1})`);
    }
    workbook.recalculate();
    expect(sheet.value(count - 1, 1)).toBe((count * (count + 1)) / 2);
  });

  it('works out only what depends on a changed cell', () => {
    const test = new TestSheet({ A1: 1, A2: 2, B1: '=A1*2', B2: '=A2*2', C1: '=SUM(B1:B2)', D1: '=1+1' });
    test.workbook.recalculate();
    test.set('A2', 10);
    const report = test.workbook.recalculate();
    expect(addresses(report.workedOut)).toEqual(['B2', 'C1']);
    expect(test.get('C1')).toBe(22);
    expect(test.workbook.recalculate().workedOut).toHaveLength(0);
  });

  it('follows whole columns, whole rows and wide ranges', () => {
    const test = new TestSheet({ A1: 1, E1: '=SUM(A:A)', E2: '=SUM(9:9)', E3: '=SUM(A1:CZ1)-E1' });
    test.set('E3', '=SUM(F5:CZ9)');
    test.workbook.recalculate();
    test.set('A5', 4);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['E1']);
    expect(test.get('E1')).toBe(5);
    test.set('Q9', 3);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['E2', 'E3']);
  });

  it('replaces a formula by a value and back', () => {
    const test = new TestSheet({ A1: '=1+1', B1: '=A1+1' });
    test.workbook.recalculate();
    test.set('A1', 10);
    test.workbook.recalculate();
    expect(test.get('B1')).toBe(11);
    test.set('A1', '=B9');
    test.workbook.recalculate();
    expect([test.get('A1'), test.get('B1')]).toEqual([0, 1]);
    test.set('B9', 7);
    test.workbook.recalculate();
    expect(test.get('B1')).toBe(8);
  });

  it('asks the clock in every run, and everything that depends on it', () => {
    let now = new Date(2026, 10, 25, 6);
    const test = new TestSheet({ A1: '=TODAY()', A2: '=A1+1', A3: '=NOW()', A4: '=1' }, { now: () => now });
    test.workbook.recalculate();
    // Serial of 2026-11-25: LibreOffice 7.4, DATE(2026,11,25) in tests/hosts/workbook.
    expect([test.get('A1'), test.get('A2'), test.get('A3')]).toEqual([46_351, 46_352, 46_351.25]);
    now = new Date(2026, 10, 26);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['A1', 'A2', 'A3']);
    expect(test.get('A2')).toBe(46_353);
  });

  it('finds out what OFFSET, INDIRECT and a range between found ends read', () => {
    const test = new TestSheet({
      A1: '=SUM(OFFSET(B1,0,0,3,1))',
      A2: '=INDIRECT("B"&1)',
      A3: '=SUM(INDEX(B1:B9,2):B3)',
      B1: '=C1*2',
      B2: '=B1+1',
      B3: '=B2+1',
      C1: 5,
    });
    test.workbook.recalculate();
    expect([test.get('A1'), test.get('A2'), test.get('A3')]).toEqual([33, 10, 23]);
    test.set('C1', 1);
    test.workbook.recalculate();
    expect([test.get('A1'), test.get('A2'), test.get('A3')]).toEqual([9, 2, 7]);
  });

  it('gives the same after edits as from scratch, whatever depends on what', () => {
    const size = 6;
    const address = fc.tuple(fc.nat(size - 1), fc.nat(size - 1));
    const name = ([row, column]: [number, number]): string => `${String.fromCharCode(65 + column)}${row + 1}`;
    const content = fc.oneof(
      fc.integer({ min: -9, max: 9 }),
      fc.tuple(address, address).map(([one, other]) => `=${name(one)}+${name(other)}*2`),
      fc.tuple(address, address).map(([one, other]) => `=SUM(${name(one)}:${name(other)})`),
      fc.tuple(address, address).map(([one, other]) => `=IF(${name(one)}>0,${name(other)},1)`),
    );
    const edit = fc.tuple(address, content);
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 40 }), fc.array(edit, { maxLength: 8 }), (start, edits) => {
        const stepwise = new TestSheet();
        for (const [place, value] of start) stepwise.set(name(place), value);
        stepwise.workbook.recalculate();
        for (const [place, value] of edits) {
          stepwise.set(name(place), value);
          stepwise.workbook.recalculate();
        }
        const afresh = new TestSheet();
        for (const [place, value] of [...start, ...edits]) afresh.set(name(place), value);
        afresh.workbook.recalculate();
        for (let row = 0; row < size; row++) {
          for (let column = 0; column < size; column++) {
            expect(stepwise.get(name([row, column]))).toEqual(afresh.get(name([row, column])));
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('cycles', () => {
  it('names the cells that wait for each other and no others', () => {
    const test = new TestSheet({
      A1: '=B1',
      B1: '=C1',
      C1: '=A1+D1',
      D1: 1,
      E1: '=A1+1',
      F1: '=F1',
      G1: '=D1',
    });
    const { cycles } = test.workbook.recalculate();
    expect(cycles.map(addresses).sort()).toEqual([['A1', 'B1', 'C1'], ['F1']]);
    expect([test.get('A1'), test.get('E1'), test.get('F1'), test.get('G1')]).toEqual([
      '#REF!',
      '#REF!',
      '#REF!',
      1,
    ]);
    expect(test.error('A1').message).toContain('circular reference among');
  });

  it('finds every cell of a tangle, also one met after its neighbours are known', () => {
    const test = new TestSheet({ A1: '=B1+C1', B1: '=A1', C1: '=B1' });
    expect(test.workbook.recalculate().cycles.map(addresses)).toEqual([['A1', 'B1', 'C1']]);
  });

  it('finds a sum that includes its own cell', () => {
    const test = new TestSheet({ A1: 1, A2: 2, A3: '=SUM(A1:A5)' });
    expect(test.workbook.recalculate().cycles.map(addresses)).toEqual([['A3']]);
  });

  it('recovers when the cycle is broken', () => {
    const test = new TestSheet({ A1: '=B1', B1: '=A1' });
    expect(test.workbook.recalculate().cycles).toHaveLength(1);
    test.set('B1', 4);
    expect(test.workbook.recalculate().cycles).toHaveLength(0);
    expect(test.get('A1')).toBe(4);
  });

  it('is not upset by a cycle of 50,000 cells', () => {
    const workbook = new Workbook();
    const sheet = workbook.addSheet('S');
    for (let row = 0; row < 50_000; row++) workbook.setFormula(sheet, row, 0, `A${((row + 1) % 50_000) + 1}`);
    expect(workbook.recalculate().cycles.map((cells) => cells.length)).toEqual([50_000]);
  });
});
