import { cellAddress, columnLimit, quoteSheetName, rowLimit } from './address.ts';
import type { Sheet } from './sheet.ts';
import { requireArea } from './too-large.ts';
import type { CellValue, Matrix } from './values.ts';

/** One more than the last row and column in use on any sheet. */
export interface SizeInUse {
  readonly rowCount: number;
  readonly columnCount: number;
}

/** A rectangle of cells on one sheet, corners included. */
export class Reference {
  readonly sheet: Sheet;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;

  constructor(sheet: Sheet, top: number, left: number, bottom: number, right: number) {
    this.sheet = sheet;
    this.top = top;
    this.left = left;
    this.bottom = bottom;
    this.right = right;
  }

  get height(): number {
    return this.bottom - this.top + 1;
  }

  get width(): number {
    return this.right - this.left + 1;
  }

  get isSingle(): boolean {
    return this.top === this.bottom && this.left === this.right;
  }

  first(): CellValue {
    return this.sheet.value(this.top, this.left);
  }

  /**
   * The reference itself, or what is in use of it when it runs to the sheet's last row or column: "A:A" means the cells
   * that are there. A range with an end of its own keeps it, since its blank cells count.
   */
  inUse({ rowCount, columnCount }: SizeInUse): Reference {
    const { sheet, top, left } = this;
    const isEndless = { down: this.bottom === rowLimit - 1, across: this.right === columnLimit - 1 };
    const bottom = isEndless.down ? Math.max(top, rowCount - 1) : this.bottom;
    const right = isEndless.across ? Math.max(left, columnCount - 1) : this.right;
    if (bottom === this.bottom && right === this.right) return this;
    return new Reference(sheet, top, left, bottom, right);
  }

  /** Values as rows; of an endless reference those in use. */
  toMatrix(size: SizeInUse): Matrix {
    const { top, left, bottom, right } = this.inUse(size);
    requireArea(bottom - top + 1, right - left + 1);
    const matrix: Matrix = [];
    for (let row = top; row <= bottom; row++) {
      const line: CellValue[] = [];
      for (let column = left; column <= right; column++) line.push(this.sheet.value(row, column));
      matrix.push(line);
    }
    return matrix;
  }

  /** Visits the filled cells column by column until the visitor answers true. Blank cells are left out. */
  visitFilled(visit: (value: Exclude<CellValue, null>, row: number, column: number) => unknown): boolean {
    const { columns } = this.sheet;
    const right = Math.min(this.right, columns.length - 1);
    for (let column = this.left; column <= right; column++) {
      if (this.sheet.visitColumn(column, this, (value, row) => visit(value, row, column) === true))
        return true;
    }
    return false;
  }

  toString(): string {
    const corner = cellAddress(this.top, this.left);
    const area = this.isSingle ? corner : `${corner}:${cellAddress(this.bottom, this.right)}`;
    return `${quoteSheetName(this.sheet.name)}!${area}`;
  }
}

/** Several rectangles joined by the union operator, as in (A1:A3,C1:C3). */
export class ReferenceList {
  readonly areas: readonly Reference[];

  constructor(areas: readonly Reference[]) {
    this.areas = areas;
  }
}
