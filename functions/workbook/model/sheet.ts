import type { FormulaCell } from './formula-cell.ts';
import type { CellValue } from './values.ts';

/** Values of one column by row; a hole or `undefined` is a blank cell. */
export type ValueColumn = (CellValue | undefined)[];
/** Formula cells of one column by row. */
export type FormulaColumn = (FormulaCell | undefined)[];

/** With so many rows for each filled one, going from one to the next is the quicker way. */
const sparse = 64;

/** One worksheet: values and formulas column by column, because criteria, lookups and sums walk down columns. */
export class Sheet {
  readonly name: string;
  /** Position among the sheets of the workbook. */
  readonly index: number;
  readonly columns: (ValueColumn | undefined)[] = [];
  readonly formulas: (FormulaColumn | undefined)[] = [];
  /** Places of each column that were ever filled, at most. */
  readonly #filled: number[] = [];
  /** Rows and columns hidden by the user or a filter; SUBTOTAL and AGGREGATE look here. */
  readonly hiddenRows = new Set<number>();
  readonly filteredRows = new Set<number>();
  hidden = false;
  /** One more than the last row and column in use. */
  rowCount = 0;
  columnCount = 0;

  constructor(name: string, index: number) {
    this.name = name;
    this.index = index;
  }

  value(row: number, column: number): CellValue {
    return this.columns[column]?.[row] ?? null;
  }

  /** Writes a value without telling anybody; the workbook does the telling. */
  store(row: number, column: number, value: CellValue): void {
    let values = this.columns[column];
    if (values === undefined) {
      if (value === null) return;
      values = [];
      this.columns[column] = values;
    }
    if (value === null && row >= values.length) return;
    if (values[row] === undefined) this.#filled[column] = (this.#filled[column] ?? 0) + 1;
    values[row] = value;
    this.#touch(row, column);
  }

  /**
   * Visits the rows of a column that hold something until the visitor answers true. A column in which only the last of a
   * million rows is filled costs one step.
   */
  visitColumn(
    column: number,
    rows: { readonly top: number; readonly bottom: number },
    visit: (value: Exclude<CellValue, null>, row: number) => boolean,
  ): boolean {
    const values = this.columns[column];
    if (values === undefined) return false;
    const { top } = rows;
    const bottom = Math.min(rows.bottom, values.length - 1);
    if (bottom - top > sparse * (this.#filled[column] ?? 0)) {
      for (const key of Object.keys(values)) {
        const row = Number(key);
        const value = values[row];
        if (row < top || row > bottom || value === undefined || value === null) continue;
        if (visit(value, row)) return true;
      }
      return false;
    }
    for (let row = top; row <= bottom; row++) {
      const value = values[row];
      if (value !== undefined && value !== null && visit(value, row)) return true;
    }
    return false;
  }

  formula(row: number, column: number): FormulaCell | undefined {
    return this.formulas[column]?.[row];
  }

  storeFormula(row: number, column: number, cell: FormulaCell | undefined): void {
    let cells = this.formulas[column];
    if (cells === undefined) {
      if (cell === undefined) return;
      cells = [];
      this.formulas[column] = cells;
    }
    cells[row] = cell;
    if (cell !== undefined) this.#touch(row, column);
  }

  /** All formula cells, column by column, down each column. */
  *formulaCells(): Generator<FormulaCell> {
    for (const column of this.formulas) {
      if (column === undefined) continue;
      // Object.values steps over the holes of a column in which only the last of a million rows is filled.
      for (const cell of Object.values(column)) if (cell !== undefined) yield cell;
    }
  }

  #touch(row: number, column: number): void {
    if (row >= this.rowCount) this.rowCount = row + 1;
    if (column >= this.columnCount) this.columnCount = column + 1;
  }
}
