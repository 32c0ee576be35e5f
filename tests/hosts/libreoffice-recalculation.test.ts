import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import { catalogueFunctions } from '../../functions/workbook/catalogue-functions.ts';
import { recalculate } from '../../functions/workbook/recalculate.ts';
import { buildXlsx } from '../functions/workbook/build-xlsx.ts';
import { Calc } from './libreoffice.ts';
import { compareWorkbook } from './libreoffice/compare-workbook.ts';
import { poison, poisonNumber } from './libreoffice/poison.ts';

let calc: Calc;
beforeAll(async () => {
  calc = await Calc.open();
});
afterAll(() => calc.close());

/** A small log: readings, one blank row, one nonsense row, one below absolute zero. */
function smallLog(): Uint8Array {
  const rows = [
    ['R-410A', 62],
    ['R-22', 68.5],
    ['', ''],
    ['R-9999', 62],
    ['R-410A', -20],
    ['R-410A', '118 psig'],
  ] as const;
  const cells: Record<string, string | number> = {};
  rows.forEach(([refrigerant, pressure], index) => {
    const row = index + 1;
    cells[`A${row}`] = refrigerant;
    cells[`B${row}`] = pressure;
    cells[`C${row}`] = `=IF(B${row}="","",OUNCE.SATTEMP(A${row},B${row}))`;
    cells[`D${row}`] = `=IFERROR(ROUND(C${row},1)*2,"none")`;
  });
  cells.E1 = '=SUM(D1:D6)&" ½"';
  return buildXlsx({ sheets: [{ name: 'Readings', cells }] });
}

describe('the formulas of a file', () => {
  test('are computed when it is opened, whatever was saved beside them', async () => {
    const { bytes, poisoned } = poison(smallLog());
    expect(poisoned).toBe(13);
    const opened = await calc.recalc(bytes, { hard: false });
    const result = compareWorkbook(bytes, opened);
    expect(result.differences).toEqual([]);
    expect(result.formulas).toBe(13);
    expect(opened.Readings?.C1?.value).toBeCloseTo(call('SATTEMP', ['R-410A', 62]) as number, 9);
    expect(opened.Readings?.C4?.error).toBe(519);
    expect(opened.Readings?.C5?.error).toBe(503);
  });

  test('keep their spelling and their values through .ods and .xlsx', async () => {
    const ods = readFileSync(await calc.convertFile(poison(smallLog()).bytes, 'xlsx', 'ods'));
    const back = readFileSync(await calc.convertFile(ods, 'ods', 'xlsx'));
    const { loaded, kept, changes } = recalculate(back, catalogueFunctions);
    expect(kept).toEqual([]);
    // Calc's saved values are ours already, to the digits a file holds.
    const moved = changes.filter(
      ({ before, after }) =>
        !(typeof before === 'number' && typeof after === 'number' && Math.abs(before - after) < 1e-9),
    );
    expect(moved).toEqual([]);
    const formulas = [...(loaded.sheets[0]?.sheet.formulaCells() ?? [])].map((cell) => cell.text());
    expect(formulas.filter((text) => text.includes('OUNCE.SATTEMP('))).toHaveLength(6);
  });
});

describe.each(['visit-log.xlsx', 'fleet-summary.xlsx', 'function-guide.xlsx'])('sample %s', (name) => {
  const path = join(import.meta.dirname, '../../sample-workbooks', name);

  test.runIf(existsSync(path))('has in Calc the values of our workbook host, cell by cell', async () => {
    const { bytes, poisoned } = poison(readFileSync(path));
    expect(poisoned).toBeGreaterThan(0);
    const started = performance.now();
    const fromCalc = await calc.recalc(bytes);
    const seconds = (performance.now() - started) / 1000;
    const result = compareWorkbook(bytes, fromCalc);
    console.log(
      `${name}: ${poisoned} poisoned, ${result.compared} cells compared, ${result.formulas} formulas, ${seconds.toFixed(1)} s`,
    );
    expect(result.differences.slice(0, 20).join('\n')).toBe('');
    expect(result.formulas).toBeGreaterThanOrEqual(poisoned);
  });
});

test('the poison is seen when nothing is recalculated', async () => {
  const never = await Calc.open({ recalculateOnLoad: false });
  try {
    const opened = await never.recalc(poison(smallLog()).bytes, { hard: false });
    expect(opened.Readings?.C1?.value).toBe(poisonNumber);
  } finally {
    await never.close();
  }
});
