import { columnLetters } from '../../workbook/model/address.ts';
import type { GatheredRow } from './gathered-row.ts';

/** Sheets of the fleet workbook that are called otherwise than their tables. */
const sheetOfTable: Readonly<Record<string, string>> = { CylinderList: 'Cylinder list' };

/**
 * Address of the cell that holds a field, as "Readings!K12"; the row alone when the sheet has no such column. Where a sheet
 * only repeats, the cell in which the value was typed.
 */
export function cellOf({ from, place, at }: GatheredRow, fieldName: string): string {
  const column = from.reader.columns.find(({ field }) => field.name === fieldName);
  // A row of the fleet workbook is put right there: the file it came from may be far.
  if (at !== undefined) {
    const sheet = quoted(sheetOfTable[from.sheetName] ?? from.sheetName);
    return column === undefined ? `${sheet} row ${at}` : `${sheet}!${columnLetters(column.index)}${at}`;
  }
  const cell = column === undefined ? `row ${place.row}` : `${columnLetters(column.index)}${place.row}`;
  if (place.typedIn !== undefined) {
    const row = column === undefined ? undefined : from.typedElsewhere?.rows.get(column.index);
    if (row === undefined) return place.typedIn.replace('!', ' column ');
    return typeof row === 'string' ? row : `${place.typedIn}${row}`;
  }
  if (place.sheet === undefined) return cell;
  return column === undefined ? `${place.sheet} ${cell}` : `${quoted(place.sheet)}!${cell}`;
}

function quoted(sheet: string): string {
  return /^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}
