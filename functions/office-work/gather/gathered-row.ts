import type { Finding, RecordRow } from '../../../src/records/index.ts';
import type { RecordSheet } from './record-sheet.ts';

/** Where a row was read. */
export interface Place {
  readonly file: string;
  /** Undefined for a file without sheets. */
  readonly sheet: string | undefined;
  /** As the sheet counts, from 1. */
  readonly row: number;
}

export interface GatheredRow {
  readonly place: Place;
  /** SI, by field name. Gaps of a register are filled from its other copies. */
  values: RecordRow;
  /** Cells that could not be read; what stands in them is not in `values`. */
  readonly unreadable: readonly Finding[];
  readonly from: RecordSheet;
}

/** "north.xlsx, Readings row 12". */
export function placeText({ file, sheet, row }: Place): string {
  return sheet === undefined ? `${file}, row ${row}` : `${file}, ${sheet} row ${row}`;
}
