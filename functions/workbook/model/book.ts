import type { DateSystem } from './serial-date.ts';
import { Sheet } from './sheet.ts';
import type { FormulaCell } from './sheet.ts';
import type { Table } from './table.ts';

/** What a workbook holds beside its cells: the order of its sheets, its tables and its names. */
export class Book<Cell extends FormulaCell = FormulaCell> {
  readonly sheets: Sheet<Cell>[] = [];
  readonly dateSystem: DateSystem;
  readonly #sheetsByName = new Map<string, Sheet<Cell>>();
  readonly #tables = new Map<string, Table>();
  readonly #names = new Map<string, string>();

  constructor(dateSystem: DateSystem) {
    this.dateSystem = dateSystem;
  }

  addSheet(name: string): Sheet<Cell> {
    const sheet = new Sheet<Cell>(name, this.sheets.length);
    this.sheets.push(sheet);
    this.#sheetsByName.set(name.toLowerCase(), sheet);
    return sheet;
  }

  findSheet(name: string): Sheet<Cell> | undefined {
    return this.#sheetsByName.get(name.toLowerCase());
  }

  /** Adds a table. Tables and names come before the formulas that use them. */
  addTable(table: Table): void {
    this.#tables.set(table.name.toLowerCase(), table);
  }

  get tables(): Iterable<Table> {
    return this.#tables.values();
  }

  findTable(name: string): Table | undefined {
    return this.#tables.get(name.toLowerCase());
  }

  tableAt(sheet: Sheet, row: number, column: number): Table | undefined {
    for (const table of this.#tables.values()) if (table.contains(sheet, row, column)) return table;
    return undefined;
  }

  /** Gives a formula a name, for the whole workbook or for one sheet. */
  defineName(name: string, formula: string, scope?: Sheet): void {
    this.#names.set(nameKey(name, scope), formula);
  }

  /** Names with their formulas; the sheet is that of a name valid on one sheet only. */
  *names(): Generator<{ name: string; formula: string; sheet: Sheet | undefined }> {
    for (const [key, formula] of this.#names) {
      const [scope = '', name = ''] = key.split('\u0000');
      yield { name, formula, sheet: scope === '' ? undefined : this.sheets[Number(scope)] };
    }
  }

  /** The formula that a name stands for as seen from a sheet; `key` tells one name from others spelled alike. */
  formulaOfName(name: string, sheet: Sheet): { readonly key: string; readonly formula: string } | undefined {
    const local = nameKey(name, sheet);
    const key = this.#names.has(local) ? local : nameKey(name, undefined);
    const formula = this.#names.get(key);
    return formula === undefined ? undefined : { key, formula };
  }

  /** One more than the last row and column in use on any sheet. */
  get rowCount(): number {
    let count = 1;
    for (const sheet of this.sheets) count = Math.max(count, sheet.rowCount);
    return count;
  }

  get columnCount(): number {
    let count = 1;
    for (const sheet of this.sheets) count = Math.max(count, sheet.columnCount);
    return count;
  }
}

function nameKey(name: string, scope: Sheet | undefined): string {
  return `${scope === undefined ? '' : String(scope.index)}\u0000${name.toLowerCase()}`;
}
