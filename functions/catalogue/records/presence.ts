import type { Condition, FieldValue, RecordRow, RecordTable } from '../../../src/records/index.ts';
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

/** Where the required fields of a sheet stand; -1 for one that has no column. */
interface Requirements {
  readonly always: readonly number[];
  readonly sometimes: readonly { readonly condition: Condition; readonly columns: readonly number[] }[];
  /** Columns that the conditions look at. */
  readonly inputs: SheetReader['columns'];
}

const requirements = new WeakMap<SheetReader, Requirements>();

function requirementsOf(sheet: SheetReader): Requirements {
  const known = requirements.get(sheet);
  if (known) return known;
  const columnOf = new Map(sheet.columns.map(({ field, index }) => [field, index]));
  const always: number[] = [];
  const sometimes = new Map<Condition, number[]>();
  for (const field of sheet.table.fields) {
    if (field.origin === 'computed' || field.required === false) continue;
    const column = columnOf.get(field) ?? -1;
    if (field.required === true) always.push(column);
    else sometimes.set(field.required, [...(sometimes.get(field.required) ?? []), column]);
  }
  const uses = conditionInputs(sheet.table);
  const made = {
    always,
    sometimes: [...sometimes].map(([condition, columns]) => ({ condition, columns })),
    inputs: sheet.columns.filter(({ field }) => uses.has(field.name)),
  };
  requirements.set(sheet, made);
  return made;
}

/**
 * The share of `completenessOf` for a row, without making the row: of a hundred columns only those that are required or
 * decide on it are looked at, and a condition that ten fields share is asked once.
 */
export function presenceShare(sheet: SheetReader, cells: Cells): number {
  const { always, sometimes, inputs } = requirementsOf(sheet);
  const { row } = readRow(sheet, cells, conditionInputs(sheet.table));
  const known: Record<string, FieldValue | undefined> = { ...row };
  for (const { index, field } of inputs) {
    if (known[field.name] === undefined && !isBlank(cells[index])) known[field.name] = true;
  }
  let needed = always.length;
  let filled = filledAmong(always, cells);
  for (const { condition, columns } of sometimes) {
    if (!condition.when(known)) continue;
    needed += columns.length;
    filled += filledAmong(columns, cells);
  }
  return needed === 0 ? 1 : filled / needed;
}

function filledAmong(columns: readonly number[], cells: Cells): number {
  let filled = 0;
  for (const column of columns) if (!isBlank(cells[column])) filled += 1;
  return filled;
}
