import type { Field, RecordTable } from '../../../src/records/index.ts';
import type { DateOrder } from './written-dates.ts';

/** What is known beforehand of how files are written: by the office's rulings, or by an option. */
export interface ReadingRules {
  /** The field that a heading means; null when it means none; undefined when nobody said. */
  readonly heading: (table: RecordTable, heading: string) => Field | null | undefined;
  /** Of a column whose dates make sense both ways. */
  readonly dateOrder: (column: DateColumn) => DateOrder | undefined;
}

export interface DateColumn {
  readonly file: string;
  readonly heading: string;
  readonly technicians: readonly string[];
  /** The first of its dates as it is written. */
  readonly example: string;
}

export const noRules: ReadingRules = { heading: () => undefined, dateOrder: () => undefined };

/** What reading a file left open, for the office to settle. */
export type ReadingQuestion =
  | {
      readonly kind: 'heading';
      readonly heading: string;
      /** Undefined when nothing is like it; the column is kept as text and read as nothing. */
      readonly guess: Field | undefined;
    }
  | { readonly kind: 'date order'; readonly column: DateColumn; readonly rows: number }
  | { readonly kind: 'date order read'; readonly column: DateColumn; readonly order: DateOrder };
