import type { DateSystem } from '../../../workbook/model/serial-date.ts';
import { parseNumber } from '../../../workbook/model/text-number.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import { errorFromText } from '../../../workbook/model/values.ts';
import type { DateOrder } from './typed-date.ts';
import { isDoubtfulDate, typedDate, typedTime } from './typed-date.ts';

/**
 * What was typed into a cell: a value, or a formula without its equals sign. A date, time or share typed into a cell
 * without a format brings the one that shows it.
 */
export type Content =
  { readonly value: CellValue; readonly format?: string | undefined } | { readonly formula: string };

/** Longest text a cell of the format holds (18.3.1.96). */
export const longestText = 32_767;

/** Reads what was typed. An apostrophe in front makes text of anything. */
export function readTyped(
  typed: string,
  pattern: string,
  system: DateSystem,
  order: DateOrder = 'month first',
): Content {
  if (typed.startsWith("'")) return { value: typed.slice(1, longestText) };
  if (typed.startsWith('=') && typed.trim().length > 1) return { formula: typed.slice(1).trim() };
  const trimmed = typed.trim();
  if (trimmed === '') return { value: null };
  if (pattern === '@') return { value: typed.slice(0, longestText) };
  if (/^true$/i.test(trimmed)) return { value: true };
  if (/^false$/i.test(trimmed)) return { value: false };
  if (/^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)$/i.test(trimmed)) {
    return { value: errorFromText(trimmed) };
  }
  const moment = typedDate(trimmed, system, order) ?? typedTime(trimmed);
  if (moment !== undefined) {
    return pattern === 'General' ? { value: moment.serial, format: moment.format } : { value: moment.serial };
  }
  // What reads as a date in another order than this log's stays what was typed.
  if (isDoubtfulDate(trimmed)) return { value: typed.slice(0, longestText) };
  const number = parseNumber(trimmed, system);
  if (number !== undefined && trimmed.endsWith('%') && pattern === 'General') {
    return { value: number, format: trimmed.includes('.') ? '0.00%' : '0%' };
  }
  return { value: number ?? typed.slice(0, longestText) };
}
