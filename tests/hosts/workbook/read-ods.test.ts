import { describe, expect, it } from 'vitest';
import { CellError } from '../../../functions/workbook/model/values.ts';
import { readWorkbook } from '../../../functions/workbook/file/read-values.ts';
import type { ReadWorkbook } from '../../../functions/workbook/file/read-values.ts';
import { comparisonWorkbook } from './comparison.ts';
import { recalculateInCalc } from './libreoffice-recalculation.ts';

function cellsOf(read: ReadWorkbook, name: string): string[][] {
  const sheet = read.sheets.find((candidate) => candidate.name === name);
  return (sheet?.rows ?? []).map((row) =>
    Array.from(row, (cell) => {
      if (cell === undefined || cell.value === '') return '';
      if (cell.value instanceof CellError) return cell.value.code;
      return typeof cell.value === 'number' ? String(Number(cell.value.toPrecision(12))) : String(cell.value);
    }),
  );
}

describe('the reader of .ods', () => {
  it('reads the same from .ods and .xlsx as LibreOffice writes them', async () => {
    const { bytes } = comparisonWorkbook();
    const ods = readWorkbook(await recalculateInCalc(bytes, 'ods'));
    const xlsx = readWorkbook(await recalculateInCalc(bytes, 'xlsx'));
    expect(ods.kind).toBe('ods');
    expect(cellsOf(ods, 'Data').length).toBeGreaterThan(9);
    expect(cellsOf(ods, 'Data')).toEqual(cellsOf(xlsx, 'Data'));
  });
});
