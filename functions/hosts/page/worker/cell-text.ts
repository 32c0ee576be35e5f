import { format, isDateFormat } from 'numfmt';
import { numberText } from '../../../workbook/model/number-text.ts';
import type { DateSystem } from '../../../workbook/model/serial-date.ts';
import { dateOf } from '../../../workbook/model/serial-date.ts';
import { parseNumber } from '../../../workbook/model/text-number.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import { CellError } from '../../../workbook/model/values.ts';
import type { ValueKind } from '../protocol.ts';
import { typedDate } from './typed-date.ts';

export function kindOf(value: CellValue): ValueKind {
  if (value === null || value === '') return 'blank';
  if (value instanceof CellError) return 'error';
  return typeof value === 'number' ? 'number' : typeof value === 'boolean' ? 'truth' : 'text';
}

/** A value as its number format shows it. */
export function shownText(value: CellValue, pattern: string, system: DateSystem): string {
  if (value === null) return '';
  if (value instanceof CellError) return value.code;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string' && (pattern === 'General' || pattern === '@')) return value;
  if (value === '') return '';
  try {
    const serial =
      typeof value === 'number' && system === 1904 && isDateFormat(pattern) ? value + 1462 : value;
    return format(pattern, serial, { throws: false });
  } catch {
    return typeof value === 'number' ? numberText(value) : value;
  }
}

/** A value as it is typed, so that typing it again gives the same value. */
export function typedText(value: CellValue, pattern: string, system: DateSystem): string {
  if (value === null) return '';
  if (value instanceof CellError) return value.code;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') {
    const isSafe =
      parseNumber(value, system) === undefined &&
      typedDate(value, system, 'day first') === undefined &&
      !/^(?:['=]|true$|false$)/i.test(value);
    return isSafe ? value : `'${value}`;
  }
  if (isDateFormat(pattern) && !/[yd]/i.test(pattern) && value >= 0) return clockText(value);
  if (isDateFormat(pattern) && value >= 1 && value < 2_958_466) return dateText(value, system);
  if (pattern.includes('%')) return `${numberText(Number((value * 100).toPrecision(15)))}%`;
  return numberText(value);
}

function dateText(value: number, system: DateSystem): string {
  const whole = Math.floor(value);
  const { year, month, day } = dateOf(whole, system);
  const two = (part: number): string => String(part).padStart(2, '0');
  const date = `${year}-${two(month)}-${two(day)}`;
  const seconds = Math.round((value - whole) * 86_400);
  if (seconds <= 0 || seconds >= 86_400) return date;
  return `${date} ${clockText(seconds / 86_400)}`;
}

/** Hours, minutes and, when there are some, seconds of a number of days. */
function clockText(days: number): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  const seconds = Math.round(days * 86_400);
  const clock = `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}`;
  return `${clock}${seconds % 60 === 0 ? '' : `:${two(seconds % 60)}`}`;
}
