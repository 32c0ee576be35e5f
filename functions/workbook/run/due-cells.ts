import type { RunCell } from './run-cell.ts';
import type { Reference } from '../model/reference.ts';
import type { Sheet } from '../model/sheet.ts';

/** The cells of one column still to be worked out, in row order, with a way to skip the settled ones quickly. */
interface DueColumn {
  readonly cells: RunCell[];
  /** Position of the next cell that may still be due; one more than the cells, the last is the end. */
  readonly next: Int32Array;
}

/**
 * The cells a run has still to work out. Asking for the first one in a range costs next to nothing however long the
 * range is, so that ten thousand sums over a whole column do not mean a hundred million steps.
 */
export class DueCells {
  readonly #columns: (DueColumn | undefined)[][] = [];

  constructor(cells: Iterable<RunCell>) {
    const gathered: (RunCell[] | undefined)[][] = [];
    for (const cell of cells) {
      const sheet = (gathered[cell.sheet.index] ??= []);
      (sheet[cell.column] ??= []).push(cell);
    }
    gathered.forEach((columns, sheetIndex) => {
      const due: (DueColumn | undefined)[] = [];
      columns.forEach((column, index) => {
        if (column !== undefined) due[index] = dueColumn(column);
      });
      this.#columns[sheetIndex] = due;
    });
  }

  /** First cell of a column between two rows that is not settled. */
  firstInColumn(sheet: Sheet, column: number, top: number, bottom: number): RunCell | undefined {
    const due = this.#columns[sheet.index]?.[column];
    if (due === undefined) return undefined;
    const position = findNext(due.next, firstAtOrBelow(due.cells, top));
    const cell = due.cells[position];
    return cell !== undefined && cell.row <= bottom ? cell : undefined;
  }

  /** Whether any cell of a rectangle is not settled. */
  hasAny(reference: Reference): boolean {
    const right = Math.min(reference.right, (this.#columns[reference.sheet.index]?.length ?? 0) - 1);
    for (let column = reference.left; column <= right; column++) {
      if (this.firstInColumn(reference.sheet, column, reference.top, reference.bottom) !== undefined)
        return true;
    }
    return false;
  }

  settle(cell: RunCell): void {
    cell.state = 'settled';
    const due = this.#columns[cell.sheet.index]?.[cell.column];
    if (due === undefined) return;
    const position = firstAtOrBelow(due.cells, cell.row);
    if (due.cells[position] === cell) due.next[position] = position + 1;
  }
}

function dueColumn(cells: RunCell[]): DueColumn {
  const inOrder = cells.every((cell, index) => index === 0 || (cells[index - 1]?.row ?? -1) < cell.row);
  if (!inOrder) cells.sort((one, other) => one.row - other.row);
  return { cells, next: Int32Array.from({ length: cells.length + 1 }, (_, index) => index) };
}

function firstAtOrBelow(cells: readonly RunCell[], row: number): number {
  let low = 0;
  let high = cells.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((cells[middle] as RunCell).row < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** End of a chain of skips, shortening the chain on the way. */
function findNext(next: Int32Array, start: number): number {
  let position = start;
  for (;;) {
    const following = next[position] as number;
    if (following === position) return position;
    const beyond = next[following] as number;
    next[position] = beyond;
    position = beyond;
  }
}
