import { calcErrorNumber } from '../../../functions/hosts/libreoffice/error-codes.ts';
import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { columnLetters } from '../../../functions/workbook/model/address.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { recalculate } from '../../../functions/workbook/recalculate.ts';
import type { CalcCell, CalcSheet } from '../libreoffice.ts';
import { poisonNumber } from './poison.ts';

const relative = 1e-9;

export interface WorkbookComparison {
  readonly compared: number;
  readonly formulas: number;
  readonly differences: readonly string[];
}

/** Every filled cell of a workbook: as Calc computed it, and as our workbook host does. */
export function compareWorkbook(
  xlsx: Uint8Array,
  fromCalc: Readonly<Record<string, CalcSheet>>,
): WorkbookComparison {
  const { loaded } = recalculate(xlsx, catalogueFunctions);
  const differences: string[] = [];
  let compared = 0;
  let formulas = 0;
  for (const { sheet } of loaded.sheets) {
    const calcSheet = fromCalc[sheet.name];
    if (calcSheet === undefined) {
      differences.push(`${sheet.name} is not in Calc's answer`);
      continue;
    }
    for (let row = 0; row < sheet.rowCount; row += 1) {
      for (let column = 0; column < sheet.columnCount; column += 1) {
        const address = `${columnLetters(column)}${row + 1}`;
        const cell = calcSheet[address];
        const ours = sheet.value(row, column);
        if (cell === undefined && (ours === null || ours === '')) continue;
        compared += 1;
        if (cell?.formula != null) formulas += 1;
        if (!same(cell, ours)) {
          const formula = (cell?.formula ?? '').slice(0, 150);
          differences.push(`${sheet.name}!${address}: Calc ${sayCalc(cell)}, ours ${say(ours)} ${formula}`);
        }
      }
    }
  }
  return { compared, formulas, differences };
}

function same(cell: CalcCell | undefined, ours: CellValue): boolean {
  if (cell?.value === poisonNumber || ours === poisonNumber) return false;
  if (ours instanceof CellError) return cell?.error === calcErrorNumber[ours.code as never];
  if (cell?.error !== undefined) return false;
  // Calc keeps TRUE as a number that is shown as a word.
  const value = typeof ours === 'boolean' ? Number(ours) : (ours ?? '');
  if (typeof value === 'number' && typeof cell?.value === 'number') {
    return Math.abs(cell.value - value) <= relative * Math.max(Math.abs(value), 1e-6);
  }
  return (cell?.value ?? '') === value;
}

function sayCalc(cell: CalcCell | undefined): string {
  return cell?.error !== undefined ? `error ${cell.error}` : JSON.stringify(cell?.value ?? null);
}

function say(ours: CellValue): string {
  return ours instanceof CellError ? ours.code : JSON.stringify(ours);
}
