import { parseArea } from '../../../workbook/model/address.ts';
import type { FoundCell, Spot } from '../protocol.ts';
import { shownText } from './cell-text.ts';
import type { LogSession } from './log-session.ts';

const address = /^(?:'?(.+?)'?!)?\$?([A-Z]{1,3})\$?(\d{1,7})$/i;

/**
 * Where a text stands: after a cell or before it, row by row, then on the sheets behind, and around to where it began. An
 * address, with or without its sheet, is gone to.
 *
 * @returns undefined when it stands nowhere
 */
export function findCell(
  session: LogSession,
  text: string,
  from: Spot & { readonly sheet: number },
  isBackwards: boolean,
): FoundCell | undefined {
  const wanted = text.trim().toLowerCase();
  if (wanted === '') return undefined;
  const { sheets } = session.workbook;
  const [, name = '', letters = '', digits = ''] = address.exec(text.trim()) ?? [];
  if (letters !== '') {
    const sheet =
      name === '' ? from.sheet : sheets.findIndex((each) => each.name.toLowerCase() === name.toLowerCase());
    const area = parseArea(`${letters}${digits}`.toUpperCase());
    // A unit may be called like a cell, such as RV7: what stands in the log goes before the place.
    const found = search(session, wanted, from, isBackwards);
    if (found !== undefined && name === '') return found;
    return sheet < 0 || area === undefined ? undefined : { sheet, row: area.top, column: area.left };
  }
  return search(session, wanted, from, isBackwards);
}

function search(
  session: LogSession,
  wanted: string,
  from: Spot & { readonly sheet: number },
  isBackwards: boolean,
): FoundCell | undefined {
  const { sheets } = session.workbook;
  const order = sheets.map((_sheet, index) =>
    isBackwards ? (from.sheet - index + sheets.length) % sheets.length : (from.sheet + index) % sheets.length,
  );
  const isBehind = (spot: Spot): boolean => {
    const difference = spot.row === from.row ? spot.column - from.column : spot.row - from.row;
    return isBackwards ? difference < 0 : difference > 0;
  };
  for (const index of order) {
    if (sheets[index]?.hidden === true) continue;
    const places = placesOf(session, index, wanted);
    const after = index === from.sheet ? places.filter(isBehind) : places;
    const found = isBackwards ? after.at(-1) : after[0];
    if (found !== undefined) return { sheet: index, ...found };
  }
  const here = placesOf(session, from.sheet, wanted);
  const around = isBackwards ? here.at(-1) : here[0];
  return around === undefined ? undefined : { sheet: from.sheet, ...around };
}

function placesOf(session: LogSession, index: number, wanted: string): Spot[] {
  const sheet = session.sheet(index);
  const places: Spot[] = [];
  for (let column = 0; column < sheet.columnCount; column++) {
    for (const key of Object.keys(sheet.columns[column] ?? [])) {
      const row = Number(key);
      const value = sheet.value(row, column);
      if (value === null || value === '') continue;
      const shown = shownText(value, session.format(sheet, row, column), session.workbook.dateSystem);
      if (shown.toLowerCase().includes(wanted)) places.push({ row, column });
    }
  }
  return places.sort((one, other) => one.row - other.row || one.column - other.column);
}
