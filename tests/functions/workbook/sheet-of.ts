import { parseAddress } from '../../../functions/workbook/model/address.ts';
import type { ResultShape } from '../../../functions/workbook/model/result-area.ts';
import type { FormulaCell, Sheet } from '../../../functions/workbook/model/sheet.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { Workbook } from '../../../functions/workbook/run/workbook.ts';
import type { WorkbookOptions } from '../../../functions/workbook/run/workbook.ts';

/** A workbook of one sheet for tests, addressed like a person would. */
export class TestSheet {
  readonly workbook: Workbook;
  readonly sheet: Sheet;

  constructor(cells: Readonly<Record<string, CellValue>> = {}, options: WorkbookOptions = {}) {
    this.workbook = new Workbook(options);
    this.sheet = this.workbook.addSheet('Main');
    for (const [address, cell] of Object.entries(cells)) this.set(address, cell);
  }

  /** Sets a value, or a formula when the text starts with "=". */
  set(address: string, cell: CellValue, shape: ResultShape = 'single', sheet: Sheet = this.sheet): void {
    const { row, column } = at(address);
    if (typeof cell === 'string' && cell.startsWith('=')) {
      this.workbook.setFormula(sheet, row, column, cell, { shape });
    } else {
      this.workbook.setValue(sheet, row, column, cell);
    }
  }

  /** Value of a cell; errors as their code. */
  get(address: string, sheet: Sheet = this.sheet): CellValue {
    const { row, column } = at(address);
    const value = sheet.value(row, column);
    return value instanceof CellError ? value.code : value;
  }

  error(address: string): CellError {
    const { row, column } = at(address);
    const value = this.sheet.value(row, column);
    if (!(value instanceof CellError)) throw new Error(`${address} shows no error`);
    return value;
  }

  cell(address: string): FormulaCell | undefined {
    const { row, column } = at(address);
    return this.sheet.formula(row, column);
  }

  /** Works out one formula in a far-off cell. */
  work(formula: string, shape: ResultShape = 'single'): CellValue {
    this.set('ZZ100', formula, shape);
    this.workbook.recalculate();
    return this.get('ZZ100');
  }
}

function at(address: string): { row: number; column: number } {
  const position = parseAddress(address);
  if (position === undefined) throw new Error(`no address: ${address}`);
  return position;
}

/** Addresses of formula cells, in order. */
export function addresses(cells: Iterable<FormulaCell>): string[] {
  return [...cells]
    .map((cell) => `${String.fromCharCode(65 + cell.column)}${cell.row + 1}`)
    .sort((one, other) => one.localeCompare(other, 'en', { numeric: true }));
}
