import type { CellValue, ErrorText } from '../model/values.ts';
import { CellError, errorFromText } from '../model/values.ts';
import { parseDate } from '../model/text-number.ts';
import type { DateSystem } from '../model/serial-date.ts';
import type { CellEntry } from './sheet-part.ts';

/** Value of a cell as the file gives it (ECMA-376 Part 1, 18.18.11, ST_CellType). */
export function valueOf(cell: CellEntry, strings: readonly string[], system: DateSystem): CellValue {
  const { text, type } = cell;
  if (text === undefined) return null;
  switch (type) {
    case 's':
      return strings[Number(text)] ?? '';
    case 'str':
    case 'inlineStr':
      return text;
    case 'b':
      return text.trim() === '1' || text.trim().toLowerCase() === 'true';
    case 'e':
      return errorFromText(text.trim());
    case 'd':
      return parseDate(text.trim().replace(/Z$|\.\d+Z?$/, ''), system) ?? text;
    default: {
      if (text.trim() === '') return null;
      const number = Number(text);
      return Number.isFinite(number) ? number : text;
    }
  }
}

/** Errors of newer programs, which older files cannot spell in a value. */
const newerErrors: ReadonlySet<ErrorText> = new Set<ErrorText>(['#SPILL!', '#CALC!', '#FIELD!']);

/** Value as a file spells it: the cell type and the text of its value. */
export function spellValue(value: CellValue): { type: string | undefined; text: string } {
  if (value === null) return { type: 'str', text: '' };
  if (typeof value === 'number') return { type: undefined, text: String(value) };
  if (typeof value === 'string') return { type: 'str', text: value };
  if (typeof value === 'boolean') return { type: 'b', text: value ? '1' : '0' };
  return { type: 'e', text: newerErrors.has(value.code) ? '#VALUE!' : value.code };
}

/**
 * Whether a saved value already says what was worked out. Numbers that differ only in the last digits that binary
 * arithmetic can tell apart count as the same, since every program rounds there in its own way.
 */
export function sameValue(saved: CellValue, fresh: CellValue): boolean {
  if (saved === fresh) return true;
  if (typeof saved === 'number' && typeof fresh === 'number') {
    return Math.abs(saved - fresh) <= 1e-14 * Math.max(Math.abs(saved), Math.abs(fresh));
  }
  if (saved instanceof CellError && fresh instanceof CellError) {
    return spellValue(saved).text === spellValue(fresh).text;
  }
  return (saved ?? '') === (fresh ?? '') && typeof saved !== 'number' && typeof fresh !== 'number';
}
