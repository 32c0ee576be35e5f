import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { catalogueFunctions } from '../../functions/workbook/catalogue-functions.ts';
import { cellAddress } from '../../functions/workbook/model/address.ts';
import { CellError } from '../../functions/workbook/model/values.ts';
import type { CellValue } from '../../functions/workbook/model/values.ts';
import { loadWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { recalculate } from '../../functions/workbook/recalculate.ts';
import { resultsCopy } from '../../functions/workbook/results-copy.ts';
import { recalculateInCalc } from './workbook/libreoffice-recalculation.ts';

function isSame(ours: CellValue, theirs: CellValue): boolean {
  if (typeof ours === 'number' && typeof theirs === 'number') {
    return Math.abs(ours - theirs) <= 1e-9 * Math.max(1, Math.abs(ours));
  }
  if (ours instanceof CellError || theirs instanceof CellError) {
    return ours instanceof CellError && theirs instanceof CellError && ours.code === theirs.code;
  }
  // Calc saves the empty text of a cell as a blank one.
  return (ours ?? '') === (theirs ?? '');
}

test.each(['visit-log', 'fleet-summary', 'repair-or-replace'])(
  '%s as a results copy says the same in Calc without the extension, recalculated there',
  { timeout: 240_000 },
  async (name) => {
    const original = readFileSync(join(import.meta.dirname, `../../sample-workbooks/${name}.xlsx`));
    const { loaded } = recalculate(original, catalogueFunctions);
    const inCalc = loadWorkbook(await recalculateInCalc(resultsCopy(loaded).bytes));
    let compared = 0;
    const differences: string[] = [];
    for (const { sheet } of loaded.sheets) {
      const other = inCalc.sheets.find((candidate) => candidate.sheet.name === sheet.name)?.sheet;
      for (let row = 0; row < sheet.rowCount; row++) {
        for (let column = 0; column < sheet.columnCount; column++) {
          const ours = sheet.value(row, column);
          if (ours === null || ours === '') continue;
          compared++;
          const theirs = other?.value(row, column) ?? null;
          if (isSame(ours, theirs)) continue;
          differences.push(
            `${sheet.name}!${cellAddress(row, column)}: ${String(ours)} became ${String(theirs)}`,
          );
        }
      }
    }
    console.log(`${name}: ${compared} cells compared`);
    expect(differences.slice(0, 20)).toEqual([]);
    expect(compared).toBeGreaterThan(1000);
  },
);
