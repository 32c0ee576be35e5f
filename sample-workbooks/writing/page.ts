import { looks } from './palette.ts';
import type { CellRecipe, Content, Look } from './recipe.ts';

/** A sheet that is written from top to bottom: a cursor, the cells put so far and the heights of their rows. */
export class Page {
  readonly cells: CellRecipe[] = [];
  readonly heights: Record<number, number> = {};
  row: number;

  constructor(firstRow: number) {
    this.row = firstRow;
  }

  /** Address in the row of the cursor. */
  at(letters: string): string {
    return `${letters}${String(this.row)}`;
  }

  /** Puts a cell into the row of the cursor; "B:D" spans columns. */
  put(columns: string, content: Content | undefined, look: Look, jump?: string): void {
    const [from = columns, to] = columns.split(':');
    this.cells.push({
      at: this.at(from),
      content,
      look,
      jump,
      ...(to === undefined ? {} : { through: this.at(to) }),
    });
  }

  /** Ends the row of the cursor. */
  next(heightPoints: number): void {
    this.heights[this.row] = heightPoints;
    this.row += 1;
  }

  gap(heightPoints = 9): void {
    this.next(heightPoints);
  }

  section(title: string, columns: string): void {
    this.put(columns, title, looks.section);
  }
}

/** Lines that a text takes in a width given in characters; merged cells do not grow by themselves. */
export function linesFor(text: string, width: number): number {
  return Math.max(1, Math.ceil(text.length / (width * 1.12)));
}
