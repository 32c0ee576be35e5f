import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../../functions/workbook/model/address.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { addresses, TestSheet } from './sheet-of.ts';

const size = 6;
const now = (): Date => new Date(2026, 10, 25, 6);

type Edit = readonly [place: string, content: CellValue, spills: boolean];

const place = fc.tuple(fc.nat(size - 1), fc.nat(size - 1)).map(([row, column]) => cellAddress(row, column));
const pair = fc.tuple(place, place);
const content: fc.Arbitrary<readonly [CellValue, boolean]> = fc.oneof(
  fc
    .constantFrom<CellValue>(0, -0, 1, 2, -7, '', 'x', '3', true, null, new CellError('#N/A'))
    .map((value) => [value, false] as const),
  fc
    .tuple(
      pair,
      fc.constantFrom(
        '=A+B*2',
        '=0*A',
        '=1/A',
        '=IFERROR(A,B)',
        '=IF(A>0,B,1)',
        '=A&"-"&B',
        '=SUM(A:B)',
        '=COUNTIFS(A:B,">0")',
        '=IFERROR(INDEX(A:F6,1,1),B)',
        '=SUM(OFFSET(A,1,0,2,1))',
        '=IFERROR(INDIRECT("A"),B)',
        '=SUM(A:INDEX(A:F6,2))',
        '=DAY(TODAY())+A',
        '=LET(k,A,k*k+B)',
      ),
    )
    .map(
      ([[one, other], formula]) =>
        [
          formula.replace(/(?<![A-Z])[AB](?![A-Z\d])/g, (letter) => (letter === 'A' ? one : other)),
          false,
        ] as const,
    ),
  // Two arrays never want the same cells: which of them comes first is decided by the order of typing.
  fc
    .tuple(place, fc.constantFrom('=SEQUENCE(MAX(1,MIN(3,N(A))))', '=IF({1;2;3}>N(A),A,5)'))
    .map(([one, formula]) => [formula.replace(/(?<![A-Z])A(?![A-Z])/g, one), true] as const),
);
const edits: fc.Arbitrary<Edit[]> = fc.array(
  fc.tuple(place, content).map(([at, [value, spills]]) => [spills ? 'I1' : at, value, spills] as const),
  { minLength: 1, maxLength: 24 },
);

function apply(test: TestSheet, [at, value, spills]: Edit): void {
  test.set(at, value, spills ? 'spill' : 'single');
}

function shown(test: TestSheet): Record<string, CellValue> {
  const cells: Record<string, CellValue> = {};
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size + 4; column++) {
      const value = test.sheet.value(row, column);
      cells[cellAddress(row, column)] =
        value instanceof CellError ? `${value.code} ${value.message ?? ''}` : value;
    }
  }
  return cells;
}

describe('a sheet after edits', () => {
  it('shows what the same cells show when typed afresh: errors, minus zero, blanks, arrays, found ranges, circles', () => {
    fc.assert(
      fc.property(edits, edits, fc.nat(3), (start, later, together) => {
        const stepwise = new TestSheet({}, { now });
        // What spills, and a reader of what it may fill.
        for (const edit of start) apply(stepwise, edit);
        stepwise.set('H1', '=SUM(I1:I3)');
        stepwise.workbook.recalculate();
        later.forEach((edit, index) => {
          apply(stepwise, edit);
          if (index % (together + 1) === 0) stepwise.workbook.recalculate();
        });
        stepwise.workbook.recalculate();
        const afresh = new TestSheet({}, { now });
        for (const edit of start) apply(afresh, edit);
        afresh.set('H1', '=SUM(I1:I3)');
        for (const edit of later) apply(afresh, edit);
        afresh.workbook.recalculate();
        expect(shown(stepwise)).toEqual(shown(afresh));
        expect(stepwise.workbook.recalculate({ everything: true }).workedOut.length).toBeGreaterThanOrEqual(
          0,
        );
        expect(shown(stepwise)).toEqual(shown(afresh));
      }),
      { numRuns: Number(process.env['EDIT_RUNS'] ?? 400) },
    );
  });
});

// What has to be worked out follows from the formulas by hand.
describe('a formula worked out to the value it had', () => {
  it('does not wake what hangs on it', () => {
    const test = new TestSheet({ A1: 5, B1: '=A1>3', C1: '=IF(B1,1,2)', D1: '=C1+A1' });
    test.workbook.recalculate();
    test.set('A1', 6);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['B1', 'D1']);
    expect(test.get('D1')).toBe(7);
    test.set('A1', 2);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['B1', 'C1', 'D1']);
    expect(test.get('D1')).toBe(4);
  });

  it('wakes nothing when a cell is given the value it has', () => {
    const test = new TestSheet({ A1: 5, B1: '=A1' });
    test.workbook.recalculate();
    test.set('A1', 5);
    expect(test.workbook.recalculate().workedOut).toHaveLength(0);
  });

  it('tells minus zero from zero, and an error by its code and message', () => {
    const test = new TestSheet({ A1: 0, B1: '=ABS(A1)', C1: '=1/A1', D1: '=ISERROR(C1)', E1: '=D1&""' });
    test.workbook.recalculate();
    test.set('A1', -0);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['B1', 'C1']);
    test.set('A1', 'x');
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['B1', 'C1', 'D1']);
  });

  it('wakes the readers of those cells of an array that changed, and no others', () => {
    const test = new TestSheet({ A1: 1, A2: 2 });
    test.set('B1', '=A1:A2*10', 'spill');
    test.set('C1', '=B1+1');
    test.set('C2', '=B2+1');
    test.workbook.recalculate();
    test.set('A2', 3);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['B1', 'C2']);
    expect([test.get('C1'), test.get('C2')]).toEqual([11, 31]);
  });

  it('calls a thousand sums over one column once each, however many of its cells change', () => {
    const test = new TestSheet();
    for (let row = 1; row <= 1_000; row++) {
      test.set(`A${row}`, row);
      test.set(`B${row}`, `=A${row}+$D$1`);
      test.set(`C${row}`, '=SUM($B$1:$B$1000)');
    }
    test.set('D1', 0);
    test.workbook.recalculate();
    test.set('D1', 1);
    expect(test.workbook.recalculate().workedOut).toHaveLength(2_000);
    expect(test.get('C1000')).toBe(501_500);
  });

  it('still finds a circle that a formula closes or opens', () => {
    const test = new TestSheet({ A1: '=B1', B1: '=C1+0', C1: 4, D1: '=A1' });
    test.workbook.recalculate();
    test.set('C1', '=A1');
    expect(test.workbook.recalculate().cycles.map(addresses)).toEqual([['A1', 'B1', 'C1']]);
    expect(test.get('D1')).toBe('#REF!');
    test.set('C1', 9);
    expect(test.workbook.recalculate().cycles).toEqual([]);
    expect(test.get('D1')).toBe(9);
    test.set('C1', 10);
    expect(addresses(test.workbook.recalculate().workedOut)).toEqual(['A1', 'B1', 'D1']);
  });
});
