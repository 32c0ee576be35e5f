import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { Area, Spot } from '../protocol.ts';

/** Cells of an area that hold something, column by column. A sheet of which only the corners are filled is quickly done. */
export function* filledCells(sheet: Sheet, { top, left, bottom, right }: Area): Generator<Spot> {
  for (let column = left; column <= Math.min(right, sheet.columnCount - 1); column++) {
    const rows = new Set([
      ...Object.keys(sheet.columns[column] ?? []),
      ...Object.keys(sheet.formulas[column] ?? []),
    ]);
    for (const key of rows) {
      const row = Number(key);
      if (row < top || row > bottom) continue;
      if (sheet.value(row, column) === null && sheet.formula(row, column) === undefined) continue;
      yield { row, column };
    }
  }
}
