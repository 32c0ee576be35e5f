import { columnLetters } from '../../workbook/model/address.ts';
import type { GatheredRow } from './gathered-row.ts';

/** Address of the cell that holds a field, as "Readings!K12"; the row alone when the sheet has no such column. */
export function cellOf({ from, place }: GatheredRow, fieldName: string): string {
  const column = from.reader.columns.find(({ field }) => field.name === fieldName);
  const cell = column === undefined ? `row ${place.row}` : `${columnLetters(column.index)}${place.row}`;
  if (place.sheet === undefined) return cell;
  return column === undefined ? `${place.sheet} ${cell}` : `${quoted(place.sheet)}!${cell}`;
}

function quoted(sheet: string): string {
  return /^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}
