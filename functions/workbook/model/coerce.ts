import { numberText } from './number-text.ts';
import type { DateSystem } from './serial-date.ts';
import { parseNumber } from './text-number.ts';
import type { CellValue } from './values.ts';
import { CellError, valueError } from './values.ts';

/** Number a value stands for: blank is 0, TRUE is 1, text must read as a number. */
export function toNumber(value: CellValue, system: DateSystem): number | CellError {
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (typeof value === 'string') return parseNumber(value, system) ?? valueError;
  return value;
}

/** Text a value stands for: blank is empty, numbers as in General format. */
export function toText(value: CellValue): string | CellError {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return numberText(value);
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return value;
}

/** Truth of a value: any number but 0 is true, the words TRUE and FALSE count, other text does not. */
export function toBoolean(value: CellValue): boolean | CellError {
  if (typeof value === 'boolean') return value;
  if (typeof value === 'number') return value !== 0;
  if (value === null) return false;
  if (value instanceof CellError) return value;
  const word = value.toUpperCase();
  if (word === 'TRUE') return true;
  if (word === 'FALSE') return false;
  return valueError;
}
