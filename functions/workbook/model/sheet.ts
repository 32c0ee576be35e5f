import type { KeptReason } from './kept-reason.ts';
import type { ResultShape } from './result-area.ts';
import type { CellValue } from './values.ts';

/** Values of one column by row; a hole or `undefined` is a blank cell. */
type ValueColumn = (CellValue | undefined)[];

/** With so many rows for each filled one, going from one to the next is the quicker way. */
const sparse = 64;

/** A cell that holds a formula, or a cell that shows a part of another cell's array result. */
export class FormulaCell {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly shape: ResultShape;
  /** Cells whose formulas say the same in their places have the same; none where only a part of `anchor` shows. */
  readonly compiled: unknown;
  readonly anchor: FormulaCell | undefined;
  /** The formula as text without the equals sign, made when asked for. */
  readonly text: () => string;
  /** Size of the area that shows the result. */
  height = 1;
  width = 1;
  kept: KeptReason | undefined;

  constructor(place: {
    readonly sheet: Sheet;
    readonly row: number;
    readonly column: number;
    readonly shape: ResultShape;
    readonly compiled: unknown;
    readonly anchor?: FormulaCell | undefined;
    readonly text: () => string;
    readonly kept: KeptReason | undefined;
  }) {
    this.sheet = place.sheet;
    this.row = place.row;
    this.column = place.column;
    this.shape = place.shape;
    this.compiled = place.compiled;
    this.anchor = place.anchor;
    this.text = place.text;
    this.kept = place.kept;
  }

  get value(): CellValue {
    return this.sheet.value(this.row, this.column);
  }
}

/**
 * One worksheet: values and formulas column by column, because criteria, lookups and sums walk down columns. Whoever works
 * formulas out puts cells of its own kind here.
 */
export class Sheet<Cell extends FormulaCell = FormulaCell> {
  readonly name: string;
  /** Position among the sheets of the workbook. */
  readonly index: number;
  readonly columns: (ValueColumn | undefined)[] = [];
  /** Formula cells by column, then by row. */
  readonly formulas: ((Cell | undefined)[] | undefined)[] = [];
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

  formula(row: number, column: number): Cell | undefined {
    return this.formulas[column]?.[row];
  }

  storeFormula(row: number, column: number, cell: Cell | undefined): void {
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
  *formulaCells(): Generator<Cell> {
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
