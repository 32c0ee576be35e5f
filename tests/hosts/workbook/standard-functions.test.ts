import { beforeAll, describe, expect, it } from 'vitest';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { comparisonWorkbook, shown, valuesOf } from './comparison.ts';
import { knownDifferences, leftAlone } from './known-differences.ts';
import { recalculateInCalc } from './libreoffice-recalculation.ts';

const { bytes, cases } = comparisonWorkbook();
const ours = valuesOf(bytes, cases, true);
let calc: (CellValue[] | undefined)[] = [];

beforeAll(async () => {
  calc = valuesOf(await recalculateInCalc(bytes), cases, false);
});

/** Calc has errors of its own that files can only spell #VALUE!; any error of ours agrees with them. */
function agree(theirs: CellValue | undefined, mine: CellValue | undefined): boolean {
  if (theirs instanceof CellError && theirs.code === '#VALUE!') return mine instanceof CellError;
  return shown(theirs) === shown(mine);
}

describe('standard functions against LibreOffice', () => {
  it('compares a good number of formulas, and LibreOffice really worked them out', () => {
    expect(cases.length).toBeGreaterThan(650);
    const filled = calc.filter((values) => values?.some((value) => value !== null));
    expect(filled.length).toBeGreaterThan(cases.length * 0.9);
  });

  it.each(cases.map((item, index) => ({ ...item, index })))('$family: $formula', ({ formula, index }) => {
    const theirs = calc[index] ?? [];
    const mine = ours[index];
    if (leftAlone.includes(formula)) {
      expect(mine).toBeUndefined();
      return;
    }
    const same = mine !== undefined && theirs.every((value, step) => agree(value, mine[step]));
    const report = `LibreOffice ${theirs.map(shown).join(' ')}, ours ${mine?.map(shown).join(' ') ?? 'left alone'}`;
    if (formula in knownDifferences) expect(same, `no difference any more: ${report}`).toBe(false);
    else expect(same, report).toBe(true);
  });
});
