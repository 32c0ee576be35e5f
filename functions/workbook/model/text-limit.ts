import type { CellValue } from './values.ts';
import { valueError } from './values.ts';

/** Longest text a cell can hold. */
export const textLimit = 32_767;

/** A text, or #VALUE! when no cell could hold it: texts that double from cell to cell would soon fill the memory. */
export function limitedText(text: string): CellValue {
  return text.length > textLimit ? valueError : text;
}
