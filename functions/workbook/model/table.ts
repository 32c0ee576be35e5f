import type { CellArea } from './address.ts';
import type { Sheet } from './sheet.ts';

/** A named table of a sheet. */
export class Table {
  readonly name: string;
  readonly sheet: Sheet;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly columns: readonly string[];
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
  readonly #positions: ReadonlyMap<string, number>;

  constructor(detail: {
    name: string;
    sheet: Sheet;
    area: CellArea;
    columns: readonly string[];
    hasHeader: boolean;
    hasTotals: boolean;
  }) {
    this.name = detail.name;
    this.sheet = detail.sheet;
    this.top = detail.area.top;
    this.left = detail.area.left;
    this.bottom = detail.area.bottom;
    this.columns = detail.columns;
    this.hasHeader = detail.hasHeader;
    this.hasTotals = detail.hasTotals;
    this.#positions = new Map(detail.columns.map((column, position) => [column.toLowerCase(), position]));
  }

  /** First and last row of the data, without header and totals. */
  get firstRow(): number {
    return this.hasHeader ? this.top + 1 : this.top;
  }

  get lastRow(): number {
    return this.hasTotals ? this.bottom - 1 : this.bottom;
  }

  columnPosition(name: string): number | undefined {
    return this.#positions.get(name.toLowerCase());
  }

  contains(sheet: Sheet, row: number, column: number): boolean {
    return (
      sheet === this.sheet &&
      row >= this.top &&
      row <= this.bottom &&
      column >= this.left &&
      column <= lastColumnOf(this)
    );
  }
}

export function lastColumnOf(table: Table): number {
  return table.left + table.columns.length - 1;
}
