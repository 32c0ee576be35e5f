import { isRequiredHere } from './check-row.ts';
import type { RecordRow, RecordTable } from './field.ts';

export interface Completeness {
  readonly required: number;
  readonly filled: number;
  /** filled / required, 1 when nothing is required. */
  readonly share: number;
  /** Headings of what is blank. */
  readonly missing: readonly string[];
}

/**
 * How much of what a row must have is filled in. Zero counts as filled, blank does not; fields required only in some
 * rows count only there.
 *
 * share = filled required fields / required fields
 */
export function completenessOf(table: RecordTable, row: RecordRow): Completeness {
  const needed = table.fields.filter((field) => isRequiredHere(field, row));
  const missing = needed.filter((field) => row[field.name] === undefined).map((field) => field.heading);
  const filled = needed.length - missing.length;
  return {
    required: needed.length,
    filled,
    share: needed.length === 0 ? 1 : filled / needed.length,
    missing,
  };
}
