import type { Table } from './assumption-table.ts';
import type { Context } from '../../runtime/define.ts';
import { HostError } from '../../runtime/cells.ts';

/** How many answers are kept; a workbook has one assumption table, or a few. */
const kept = 8;

/**
 * An answer worked out once for one content of the assumption table. A sheet shows such a table cell by cell, with the same
 * call in dozens of cells, and hosts hand over a fresh copy of the range each time.
 */
export class Remembered<T> {
  readonly #answers = new Map<string, T>();

  of(table: Table, rest: readonly unknown[], make: () => T): T {
    const key = keyOf(table, rest);
    if (key === undefined) return make();
    const known = this.#answers.get(key);
    if (known !== undefined) return known;
    const made = make();
    if (this.#answers.size >= kept) this.#answers.clear();
    this.#answers.set(key, made);
    return made;
  }
}

/** Undefined when a cell holds an error: it is on its way to the caller anyway. */
function keyOf(table: Table, rest: readonly unknown[]): string | undefined {
  if (table.some((row) => row.some((cell) => cell instanceof HostError || cell instanceof Error)))
    return undefined;
  return JSON.stringify([table, rest]);
}

/** The units that plain figures are read in, as part of the key. */
export function symbolsOf({ units }: Context): readonly string[] {
  return Object.values(units).map(({ symbol }) => symbol);
}
