import { isBlank } from '../../runtime/cells.ts';
import type { SheetValues } from '../gather/sheet-values.ts';
import { parseAddress } from '../../workbook/model/address.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, workbookPart } from '../../workbook/file/package-parts.ts';
import { documentKind, openContainer } from '../../workbook/file/recognize.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';

/** Names that logs and fleet workbooks give to cells, and the cell of the estimate that each one fills. */
const carried = {
  log_outfit: 'quote_outfit',
  log_town: 'quote_town',
  log_currency: 'quote_currency',
  fleet_outfit: 'quote_outfit',
  quote_outfit: 'quote_outfit',
  quote_town: 'quote_town',
  quote_currency: 'quote_currency',
} as const;

export type SettingName = (typeof carried)[keyof typeof carried] | 'quote_by';

/** Who prints the quote, as far as the file says so. Only an .xlsx has named cells; other files say nothing. */
export function readSettings(
  bytes: Uint8Array,
  sheets: readonly SheetValues[],
): ReadonlyMap<SettingName, string> {
  const settings = new Map<SettingName, string>();
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) return settings;
  const archive = openContainer(bytes, usualLimits);
  if (documentKind(archive) === 'ods') return settings;
  const main = workbookPart(archive);
  const { names } = readWorkbookPart(readPart(archive, main), main);
  const found = names.filter(({ name }) => name in carried);
  for (const { name, formula } of found) {
    const [, quoted, plain, cell = ''] = /^(?:'(.*)'|([^'!]+))!(.*)$/.exec(formula) ?? [];
    const sheetName = quoted?.replaceAll("''", "'") ?? plain;
    const position = parseAddress(cell.replaceAll('$', ''));
    const sheet = sheets.find((candidate) => candidate.name === sheetName);
    if (sheet === undefined || position === undefined) continue;
    const value = sheet.rows[position.row]?.[position.column];
    // What a fleet workbook says until somebody has typed a name.
    if (value === 'Your outfit') continue;
    if (typeof value === 'string' && !isBlank(value))
      settings.set(carried[name as keyof typeof carried], value);
  }
  return settings;
}
