import type { FieldValue, RecordRow, RecordTable } from '../../../src/records/index.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { Cells, SheetReader } from './read-table.ts';
import { readRow } from './read-table.ts';

const usedByConditions = new WeakMap<RecordTable, ReadonlySet<string>>();

function conditionInputs(table: RecordTable): ReadonlySet<string> {
  const known = usedByConditions.get(table);
  if (known) return known;
  const uses = new Set(
    table.fields.flatMap(({ required }) => (typeof required === 'boolean' ? [] : required.uses)),
  );
  usedByConditions.set(table, uses);
  return uses;
}

/**
 * A row that tells what is filled in, enough for its completeness: only the fields that decide what is required are
 * read, for the others any typed cell counts. A ledger of ten thousand rows stays quick.
 */
export function presenceRow(sheet: SheetReader, cells: Cells): RecordRow {
  const { row } = readRow(sheet, cells, conditionInputs(sheet.table));
  const filled: Record<string, FieldValue | undefined> = { ...row };
  for (const { index, field } of sheet.columns) {
    // Most cells of a long ledger are blank: looking there first is what keeps it quick.
    if (!isBlank(cells[index]) && filled[field.name] === undefined) filled[field.name] = true;
  }
  return filled;
}
