import type { CellArea } from '../../workbook/model/address.ts';
import { parseArea } from '../../workbook/model/address.ts';
import type { Table } from '../../workbook/model/table.ts';
import type { CellValue } from '../../workbook/model/values.ts';
import type { LoadedWorkbook } from '../../workbook/file/load-workbook.ts';
import type { Filling, Fillings } from './fill-cells.ts';
import { cellKey } from './fill-cells.ts';

/** The estimate workbook seen by its names and tables, so that its sheets may be rearranged. */
export class Template {
  readonly #loaded: LoadedWorkbook;
  readonly #fillings = new Map<string, Map<string, Filling>>();

  constructor(loaded: LoadedWorkbook) {
    this.#loaded = loaded;
  }

  get fillings(): Fillings {
    return this.#fillings;
  }

  table(name: string): Table {
    const table = this.#loaded.workbook.findTable(name);
    if (table === undefined) throw new Error(`the template has no table ${name}`);
    return table;
  }

  columnOf(table: Table, heading: string): number {
    const position = table.columnPosition(heading);
    if (position === undefined) throw new Error(`the table ${table.name} has no column ${heading}`);
    return table.left + position;
  }

  /** Rows of a table in which a column shows this text, in any case. */
  rowOf(table: Table, heading: string, wanted: string): number | undefined {
    const column = this.columnOf(table, heading);
    for (let row = table.firstRow; row <= table.lastRow; row += 1) {
      const value = table.sheet.value(row, column);
      if (typeof value === 'string' && value.trim().toLowerCase() === wanted.trim().toLowerCase()) return row;
    }
    return undefined;
  }

  put(sheet: string, row: number, column: number, value: Filling): void {
    const cells = this.#fillings.get(sheet) ?? new Map<string, Filling>();
    cells.set(cellKey(row, column), value);
    this.#fillings.set(sheet, cells);
  }

  putInTable(table: Table, row: number, heading: string, value: Filling | undefined): void {
    this.put(table.sheet.name, row, this.columnOf(table, heading), value ?? null);
  }

  putByName(name: string, value: Filling): void {
    const { sheet, area } = this.#place(name);
    this.put(sheet, area.top, area.left, value);
  }

  /** Fills the rows under a name from the top; undefined leaves a cell as it is. */
  putRows(name: string, rows: readonly (readonly (Filling | undefined)[])[]): void {
    const { sheet, area } = this.#place(name);
    rows.forEach((row, down) => {
      row.forEach((value, across) => {
        if (value !== undefined) this.put(sheet, area.top + down, area.left + across, value);
      });
    });
  }

  /** Values under a name, row by row. */
  values(name: string): CellValue[][] {
    const { sheet: sheetName, area } = this.#place(name);
    const sheet = this.#loaded.workbook.findSheet(sheetName);
    const rows: CellValue[][] = [];
    for (let row = area.top; row <= area.bottom; row += 1) {
      const cells: CellValue[] = [];
      for (let column = area.left; column <= area.right; column += 1)
        cells.push(sheet?.value(row, column) ?? null);
      rows.push(cells);
    }
    return rows;
  }

  value(name: string): CellValue {
    return this.values(name)[0]?.[0] ?? null;
  }

  #place(name: string): { sheet: string; area: CellArea } {
    for (const entry of this.#loaded.workbook.names()) {
      if (entry.name.toLowerCase() !== name.toLowerCase()) continue;
      const [, quoted, plain, cells = ''] = /^(?:'(.*)'|([^'!]+))!(.*)$/.exec(entry.formula) ?? [];
      const area = parseArea(cells.replaceAll('$', ''));
      const sheet = quoted?.replaceAll("''", "'") ?? plain;
      if (sheet !== undefined && area !== undefined) return { sheet, area };
    }
    throw new Error(`the template has no name ${name}`);
  }
}
