import type { Finding, RecordRow } from '../../../src/records/index.ts';
import type { RecordSheet } from './record-sheet.ts';

/** Where a row was read. */
export interface Place {
  readonly file: string;
  /** Undefined for a file without sheets. */
  readonly sheet: string | undefined;
  /** As the sheet counts, from 1. */
  readonly row: number;
  /** Sheet and column in which the values of the row were typed, "Visit!C", where it only repeats them. */
  readonly typedIn?: string | undefined;
}

export interface GatheredRow {
  /** Moves with the version of a set that counts. */
  place: Place;
  /** SI, by field name. Gaps of a register are filled from its other copies. */
  values: RecordRow;
  /** Cells that could not be read; what stands in them is not in `values`. */
  readonly unreadable: readonly Finding[];
  readonly from: RecordSheet;
  /** What stands in the cells that could not be read, by field. */
  readonly written?: Readonly<Record<string, string>> | undefined;
  /** Cells under headings that mean no field, as text. */
  extras?: string | undefined;
  /** Of all that its cells say, to know it again. */
  print?: string | undefined;
  /** Row of the fleet workbook in which it stands already, from 1. */
  readonly at?: number | undefined;
  /** Fields that were changed since it was written there. */
  readonly changed?: Set<string> | undefined;
}

/** "north.xlsx, Readings row 12". */
export function placeText({ file, sheet, row, typedIn }: Place): string {
  if (typedIn !== undefined) return `${file}, ${typedIn.replace('!', ' column ')}`;
  return sheet === undefined ? `${file}, row ${row}` : `${file}, ${sheet} row ${row}`;
}
