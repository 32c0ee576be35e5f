import type { DateSystem } from '../../workbook/engine/serial-date.ts';
import { parseNumber } from '../../workbook/engine/text-number.ts';
import type { CellValue } from '../../workbook/engine/values.ts';
import { errorFromText } from '../../workbook/engine/values.ts';

/** What was typed into a cell: a value, or a formula without its equals sign. */
export type Content = { readonly value: CellValue } | { readonly formula: string };

/** Longest text a cell of the format holds (18.3.1.96). */
export const longestText = 32_767;

/** Reads what was typed. An apostrophe in front makes text of anything. */
export function readTyped(typed: string, pattern: string, system: DateSystem): Content {
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
  const number = parseNumber(trimmed, system);
  return { value: number ?? typed.slice(0, longestText) };
}
