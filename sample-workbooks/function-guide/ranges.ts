import type { CellInput } from '../../functions/runtime/cells.ts';
import { dayOfDate, serialOfDay } from '../../functions/runtime/dates.ts';
import { address } from '../writing/address.ts';
import { looks } from '../writing/palette.ts';
import type { CellRecipe, SheetRecipe } from '../writing/recipe.ts';
import { titled, titleHeights } from '../writing/title-block.ts';

type Range = readonly (readonly CellInput[])[];

const sheetName = 'Values';
const firstRow = 5;

/** The sheet on which the ranges of the examples stand one below the other. */
export class RangeSheet {
  private readonly cells: CellRecipe[] = [];
  private row = firstRow;

  /** Puts a range down and says where it stands. */
  place(title: string, range: Range): string {
    this.cells.push({ at: address(1, this.row), content: title, look: { bold: true } });
    const top = this.row + 1;
    range.forEach((cells, down) => {
      cells.forEach((cell, across) => {
        const content = contentOf(cell);
        this.cells.push({
          at: address(across + 2, top + down),
          content,
          look: { ...looks.input, ...(cell instanceof Date ? { format: 'yyyy-mm-dd' } : {}) },
        });
      });
    });
    const width = Math.max(...range.map((cells) => cells.length));
    const bottom = top + range.length - 1;
    this.row = bottom + 2;
    const absolute = (column: number, row: number): string =>
      address(column, row).replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2');
    return `${sheetName}!${absolute(2, top)}:${absolute(width + 1, bottom)}`;
  }

  sheet(): SheetRecipe {
    return {
      name: sheetName,
      gridLines: false,
      widths: { A: 30, 'B:Z': 16 },
      heights: titleHeights,
      cells: [...titled('Values', 'Ranges that the examples on the other sheets refer to.'), ...this.cells],
      print: { landscape: true, pagesWide: 1, pagesTall: 0 },
    };
  }
}

function contentOf(cell: CellInput): number | string | boolean | undefined {
  if (cell instanceof Date) return serialOfDay(dayOfDate(cell) ?? 0);
  return typeof cell === 'object' || cell === '' ? undefined : cell;
}
