import type { DateSystem } from '../../../workbook/model/serial-date.ts';
import { daysInMonth, serialOf } from '../../../workbook/model/serial-date.ts';
import { parseTime } from '../../../workbook/model/text-number.ts';

/** Which part stands first in 03/04/2026: the month where figures are US, the day elsewhere. */
export type DateOrder = 'month first' | 'day first';

export interface TypedMoment {
  readonly serial: number;
  /** Number format that shows it as what it is. */
  readonly format: string;
}

const year = String.raw`(\d{4})`;
const part = String.raw`(\d{1,2})`;
const time = String.raw`(?:[T ]\s*(.+))?`;
const iso = new RegExp(`^${year}-${part}-${part}${time}$`);
const slashes = new RegExp(`^${part}/${part}/${year}${time}$`);
/** Written with points the day always stands first; where months do, nobody writes points. */
const points = new RegExp(`^${part}\\.\\s?${part}\\.\\s?${year}${time}$`);

const dateFormat = 'yyyy-mm-dd';
const timeFormat = 'hh:mm';

/** A date, with or without a time, in a form that has one meaning in this log; undefined for anything else. */
export function typedDate(text: string, system: DateSystem, order: DateOrder): TypedMoment | undefined {
  const read = partsOf(text, order);
  if (read === undefined) return undefined;
  const [years, month, day, clock] = read;
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(years, month)) return undefined;
  const date = serialOf(years, month, day, system);
  if (clock === undefined) return { serial: date, format: dateFormat };
  const fraction = parseTime(clock.trim());
  if (fraction === undefined || fraction >= 1) return undefined;
  return { serial: date + fraction, format: `${dateFormat} ${clockFormat(clock)}` };
}

/** A time of day: 13:45, 1:45 pm, 13:45:10. */
export function typedTime(text: string): TypedMoment | undefined {
  if (!/^\d{1,2}:\d{2}/.test(text)) return undefined;
  const fraction = parseTime(text);
  if (fraction === undefined) return undefined;
  // Hours beyond a day are a duration.
  return { serial: fraction, format: fraction >= 1 ? '[h]:mm' : clockFormat(text) };
}

/** Something that may have been meant as a date and has no one meaning here: 25/11/2026 with months first, 3/4/26. */
export function isDoubtfulDate(text: string): boolean {
  return /^\d{1,4}([./])\d{1,2}\1\d{1,4}$/.test(text) || /^\d{4}-\d{1,2}-\d{1,2}$/.test(text);
}

function clockFormat(clock: string): string {
  return /:\d+:/.test(clock) ? `${timeFormat}:ss` : timeFormat;
}

type Parts = [year: number, month: number, day: number, clock: string | undefined];

function partsOf(text: string, order: DateOrder): Parts | undefined {
  const fromIso = iso.exec(text);
  if (fromIso !== null) return [Number(fromIso[1]), Number(fromIso[2]), Number(fromIso[3]), fromIso[4]];
  const fromSlashes = slashes.exec(text);
  if (fromSlashes !== null) {
    const [, one, other, years, clock] = fromSlashes;
    return order === 'month first'
      ? [Number(years), Number(one), Number(other), clock]
      : [Number(years), Number(other), Number(one), clock];
  }
  const fromPoints = order === 'day first' ? points.exec(text) : null;
  if (fromPoints === null) return undefined;
  return [Number(fromPoints[3]), Number(fromPoints[2]), Number(fromPoints[1]), fromPoints[4]];
}
