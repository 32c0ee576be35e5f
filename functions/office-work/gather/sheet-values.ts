import type { CellInput } from '../../runtime/cells.ts';

/** The values of one sheet, row by row from its first row; rows may differ in length. */
export interface SheetValues {
  readonly name: string;
  readonly rows: readonly (readonly CellInput[] | undefined)[];
  /** Days to add to serial numbers of dates. */
  readonly dayShift?: number;
}
