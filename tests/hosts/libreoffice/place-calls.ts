import { spell } from '../../../functions/hosts/libreoffice/spell.ts';
import type { Argument, CellInput, Outcome } from '../../../functions/runtime/cells.ts';
import { isRange } from '../../../functions/runtime/broadcast.ts';
import { columnLetters } from '../../../functions/workbook/model/address.ts';

export interface PlacedCall {
  /** Top left cell of the result. */
  readonly row: number;
  readonly rows: number;
  readonly columns: number;
}

/** Where the results end and the ranges for arguments begin. */
const firstArgumentColumn = 60;

/** Lays calls out below each other on one sheet: results from column A, ranges they refer to far to the right. */
export class CallSheet {
  readonly cells: Record<string, number | string> = {};
  readonly arrays: Record<string, string> = {};
  private nextRow = 1;

  add(id: string, args: readonly Argument[], expected: Outcome): PlacedCall {
    const row = this.nextRow;
    let column = firstArgumentColumn;
    let height = 1;
    const written = args.map((arg) => {
      if (!isRange(arg)) return literal(arg);
      const width = Math.max(...arg.map((line) => line.length));
      const reference = `${columnLetters(column)}${row}:${columnLetters(column + width - 1)}${row + arg.length - 1}`;
      this.place(arg, row, column);
      column += width + 1;
      height = Math.max(height, arg.length);
      return reference;
    });
    while (written.length > 0 && written.at(-1) === '') written.pop();
    const formula = `=${spell(id)}(${written.join(';')})`;
    const rows = Array.isArray(expected) ? expected.length : 1;
    const columns = Array.isArray(expected) ? (expected[0]?.length ?? 1) : 1;
    if (Array.isArray(expected))
      this.arrays[`A${row}:${columnLetters(columns - 1)}${row + rows - 1}`] = formula;
    else this.cells[`A${row}`] = formula;
    this.nextRow += Math.max(height, rows) + 1;
    return { row, rows, columns };
  }

  private place(range: readonly (readonly CellInput[])[], row: number, column: number): void {
    range.forEach((line, down) =>
      line.forEach((cell, right) => {
        const content = cellContent(cell);
        if (content !== undefined) this.cells[`${columnLetters(column + right)}${row + down}`] = content;
      }),
    );
  }
}

function literal(cell: CellInput): string {
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE()' : 'FALSE()';
  if (typeof cell === 'string') return `"${cell.replaceAll('"', '""')}"`;
  return '';
}

function cellContent(cell: CellInput): number | string | undefined {
  if (typeof cell === 'number') return cell;
  if (typeof cell === 'boolean') return cell ? '=TRUE()' : '=FALSE()';
  // The apostrophe keeps "12" and "=x" texts.
  if (typeof cell === 'string' && cell !== '') return `'${cell}`;
  return undefined;
}
