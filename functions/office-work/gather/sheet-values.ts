import type { CellInput } from '../../runtime/cells.ts';

/** The values of one sheet, row by row from its first row; rows may differ in length. */
export interface SheetValues {
  readonly name: string;
  readonly rows: readonly (readonly CellInput[] | undefined)[];
  /** Days to add to serial numbers of dates. */
  readonly dayShift?: number;
  /** Numbers of the rows in the file they were read from first, where they were set aside since. */
  readonly rowNumbers?: readonly (number | undefined)[];
  /** What the rows are known again by, where they were set aside. */
  readonly prints?: readonly (string | undefined)[];
}
