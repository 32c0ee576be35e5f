import { describe, expect, it } from 'vitest';
import { readValues } from '../../../functions/office-work/gather/read-values.ts';
import type { SheetValues } from '../../../functions/office-work/gather/sheet-values.ts';
import { HostError } from '../../../functions/runtime/cells.ts';
import { comparisonWorkbook } from './comparison.ts';
import { recalculateInCalc } from './libreoffice-recalculation.ts';

function cellsOf(sheets: readonly SheetValues[], name: string): string[][] {
  const sheet = sheets.find((candidate) => candidate.name === name);
  // Array.from turns the holes of skipped rows and cells into blank ones; .ods has blank cells behind the last value.
  return Array.from(sheet?.rows ?? [], (row) =>
    Array.from(row ?? [], (cell) => {
      if (cell instanceof HostError) return String(cell.original);
      return typeof cell === 'number' ? String(Number(cell.toPrecision(12))) : String(cell ?? '');
    }),
  );
}

describe('the reader of .ods', () => {
  it('reads the same from .ods and .xlsx as LibreOffice writes them', async () => {
    const { bytes } = comparisonWorkbook();
    const ods = readValues('calc.ods', await recalculateInCalc(bytes, 'ods'));
    const xlsx = readValues('calc.xlsx', await recalculateInCalc(bytes, 'xlsx'));
    expect(cellsOf(ods, 'Data').length).toBeGreaterThan(9);
    expect(cellsOf(ods, 'Data')).toEqual(cellsOf(xlsx, 'Data'));
  });
});
