import { foldHeading, recordTables, visitLog } from '../../../src/records/index.ts';
import type { Field, FieldValue, RecordRow, RecordTable } from '../../../src/records/index.ts';
import type { GatheredRow } from './gathered-row.ts';

/** Two rows with one key that do not say the same. */
export interface Conflict {
  readonly table: RecordTable;
  /** The row that counts: the one read first. */
  readonly kept: GatheredRow;
  /** The row that is listed and not counted. */
  readonly other: GatheredRow;
  readonly fields: readonly Field[];
}

/** The same reading in other units differs in the last digits; a moment within a second. */
const sameWithin = 1e-6;
const sameMomentDays = 2e-5;

/**
 * Rows of many files brought together by key. A row that says the same as one already there is left out; one with the
 * same key that says something else becomes a conflict. Nothing counts twice and nothing is dropped unseen.
 */
export class Gathering {
  readonly #tables = new Map<RecordTable, { rows: GatheredRow[]; byKey: Map<string, GatheredRow[]> }>(
    recordTables.map((table) => [table, { rows: [], byKey: new Map() }]),
  );
  readonly conflicts: Conflict[] = [];
  repeated = 0;

  rows(table: RecordTable): readonly GatheredRow[] {
    return this.#tables.get(table)?.rows ?? [];
  }

  add(row: GatheredRow): void {
    const { table } = row.from;
    const kept = this.#tables.get(table);
    if (kept === undefined) throw new Error(`no place for ${table.name}`);
    const key = keyOf(table, row);
    // The first one counts; those behind it are conflicts that were listed already.
    const earlier = kept.byKey.get(key);
    if (earlier === undefined) {
      kept.byKey.set(key, [row]);
      kept.rows.push(row);
      return;
    }
    if (earlier.some((known) => differing(known, row).length === 0)) {
      this.repeated += 1;
      return;
    }
    const [first] = earlier;
    if (first === undefined) throw new Error('a key without a row');
    if (table !== visitLog && completes(first, row)) {
      this.repeated += 1;
      return;
    }
    this.conflicts.push({ table, kept: first, other: row, fields: differing(first, row) });
    earlier.push(row);
  }
}

/** Key fields as people vary them: "W-12" and " w-12 " are one unit. A row whose key has a gap is known by all it says. */
export function keyOf(
  table: RecordTable,
  { values, unreadable }: Pick<GatheredRow, 'values' | 'unreadable'>,
  fold = foldHeading,
): string {
  const parts = table.key.map((name) => values[name]);
  const keyPart = (value: FieldValue): string => (typeof value === 'string' ? fold(value) : String(value));
  if (parts.every((part) => part !== undefined)) return parts.map(keyPart).join('\u0001');
  const everything = table.fields.filter(isTyped).map(({ name }) => keyPart(values[name] ?? ''));
  return ['\u0002', ...everything, ...unreadable.map(({ field }) => field)].join('\u0001');
}

function isTyped({ origin }: Field): boolean {
  return origin === 'input';
}

/** Registers are copied and filled in here and there: where one copy has a gap, the other's word stands. */
export function completes(kept: GatheredRow, other: GatheredRow): boolean {
  const fields = differing(kept, other);
  const clash = fields.some(
    ({ name }) => kept.values[name] !== undefined && other.values[name] !== undefined,
  );
  if (clash || other.unreadable.length > 0) return false;
  kept.values = { ...other.values, ...definedOf(kept.values) };
  return true;
}

function definedOf(values: RecordRow): RecordRow {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}

/** Typed fields in which two rows differ. */
export function differing(one: GatheredRow, other: GatheredRow): Field[] {
  const unread = new Set([...one.unreadable, ...other.unreadable].map(({ field }) => field));
  return one.from.table.fields.filter(
    (field) =>
      isTyped(field) &&
      (!same(field, one.values[field.name], other.values[field.name]) ||
        (unread.has(field.name) && unreadableText(one, field) !== unreadableText(other, field))),
  );
}

function unreadableText({ unreadable }: GatheredRow, field: Field): string {
  const finding = unreadable.find(({ field: name }) => name === field.name);
  return finding === undefined ? '' : finding.message.map(String).join('');
}

export function same(field: Field, one: FieldValue | undefined, other: FieldValue | undefined): boolean {
  if (typeof one === 'number' && typeof other === 'number') {
    if (field.kind !== 'number') return Math.abs(one - other) <= sameMomentDays;
    return Math.abs(one - other) <= sameWithin * Math.max(1e-3, Math.abs(one), Math.abs(other));
  }
  if (typeof one === 'string' && typeof other === 'string') return one.trim() === other.trim();
  return one === other;
}
