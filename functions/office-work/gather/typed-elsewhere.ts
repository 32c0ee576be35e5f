import type { SheetValues } from './sheet-values.ts';

/** Headings by which a sheet that only repeats says where its values were typed: above its headings the row, beside each row the column. */
export const typedRowHeading = 'Typed in row';
export const typedColumnHeading = 'Typed in column';

/** Where the values of a repeating sheet were typed. */
export interface TypedElsewhere {
  /** Column of the sheet whose cells say sheet and column: "Visit!C". */
  readonly column: number;
  /** For each column the row in which its values were typed, or the one cell in which all of them were: "Visit!C7". */
  readonly rows: ReadonlyMap<number, number | string>;
}

/** What a sheet says of the cells that it repeats; undefined for one that was typed into. */
export function typedElsewhere(sheet: SheetValues, headingRow: number): TypedElsewhere | undefined {
  const column = (sheet.rows[headingRow] ?? []).findIndex((cell) => cell === typedColumnHeading);
  const above = sheet.rows[headingRow - 1] ?? [];
  if (column < 0 || above[column] !== typedRowHeading) return undefined;
  const rows = above.flatMap((cell, index) =>
    index !== column && (typeof cell === 'number' || typeof cell === 'string')
      ? [[index, cell] as const]
      : [],
  );
  return { column, rows: new Map(rows) };
}
