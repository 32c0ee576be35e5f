import { foldHeading } from '../../../src/records/index.ts';
import { readRow } from '../../catalogue/records/read-table.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { GatheredRow } from './gathered-row.ts';
import type { RecordSheet } from './record-sheet.ts';
import type { SheetValues } from './sheet-values.ts';

/** The filled rows of a table, each with its place. Rows in which only formulas show something are not filled. */
export function* readRows(
  file: string,
  sheet: SheetValues,
  from: RecordSheet,
  isOnlySheet: boolean,
): Generator<GatheredRow> {
  const typed = from.reader.columns.filter(({ field }) => field.origin === 'input');
  for (let row = from.firstRow; row < sheet.rows.length; row += 1) {
    const cells = sheet.rows[row] ?? [];
    if (typed.every(({ index }) => isBlank(cells[index])) || repeatsHeadings(cells, from)) continue;
    const { row: values, unreadable } = readRow(from.reader, shifted(cells, from, sheet.dayShift ?? 0));
    // Formulas of a ready-made row may show a zero or a word; without a word of its key and without a date it is empty.
    if (from.table.key.every((name) => values[name] === undefined) && !hasDate(values)) {
      if (unreadable.length === 0) continue;
    }
    yield {
      place: { file, sheet: isOnlySheet ? undefined : sheet.name, row: row + 1 },
      values,
      unreadable,
      from,
    };
  }
}

function hasDate(values: GatheredRow['values']): boolean {
  return values['date_time'] !== undefined || values['date'] !== undefined;
}

/** Logs that were put together by hand repeat their headings. */
function repeatsHeadings(cells: readonly CellInput[], { reader }: RecordSheet): boolean {
  let repeated = 0;
  for (const { index, field } of reader.columns) {
    const cell = cells[index];
    if (typeof cell !== 'string') continue;
    const text = foldHeading(cell);
    if (text === foldHeading(field.heading) || text === foldHeading(field.name)) repeated += 1;
    if (repeated >= 3) return true;
  }
  return false;
}

function shifted(cells: readonly CellInput[], { reader }: RecordSheet, days: number): readonly CellInput[] {
  if (days === 0) return cells;
  const moved = [...cells];
  for (const { index, field } of reader.columns) {
    const cell = moved[index];
    if ((field.kind === 'date' || field.kind === 'dateTime') && typeof cell === 'number')
      moved[index] = cell + days;
  }
  return moved;
}
