import type { DateSystem } from '../../../workbook/model/serial-date.ts';
import { serialOf } from '../../../workbook/model/serial-date.ts';
import { parseTime } from '../../../workbook/model/text-number.ts';
import type { DateOrder } from './typed-date.ts';
import { typedDate } from './typed-date.ts';

export interface MomentOptions {
  readonly system: DateSystem;
  readonly order: DateOrder;
  /** Local time. */
  readonly now: Date;
  /** A time of day alone is one of today. */
  readonly hasTime: boolean;
}

const shortYear = /^(\d{1,2})([./-])(\d{1,2})\2(\d{2})(?=$|[T ])/;
const points = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})(?=$|[T ])/;

/**
 * A day, or a moment, as people write it where one is asked for: 6/3/26 9:40am, 13.04.2026, today, now, 9:40. In a date
 * with slashes the part that stands first is the log's; points always put the day first.
 *
 * @returns the serial number; undefined when it is no date, or one that cannot be
 */
export function typedMoment(
  text: string,
  { system, order, now, hasTime }: MomentOptions,
): number | undefined {
  const words = text.trim().replace(/\s+/g, ' ');
  const today = serialOf(now.getFullYear(), now.getMonth() + 1, now.getDate(), system);
  const minutes = (now.getHours() * 60 + now.getMinutes()) / 1440;
  if (/^now$/i.test(words)) return hasTime ? today + minutes : today;
  if (/^today$/i.test(words)) return today;
  if (/^yesterday$/i.test(words)) return today - 1;
  const ofToday =
    /^today (.+)$/i.exec(words)?.[1] ?? (/^\d{1,2}(?::\d{2}|\s?[ap])/i.test(words) ? words : undefined);
  if (ofToday !== undefined) {
    const time = timeOf(ofToday);
    return hasTime && time !== undefined ? today + time : undefined;
  }
  const long = words
    .replace(
      shortYear,
      (_all, one: string, mark: string, other: string, year: string) =>
        `${one}${mark}${other}${mark}20${year}`,
    )
    .replace(/^(\d{1,2})-(\d{1,2})-(\d{4})/, '$1/$2/$3');
  const byPoints = points.test(long);
  const [day = '', ...rest] = long.split(/[ T](?=\d{1,2}[:ap\s])/i);
  const date = typedDate(day.trim(), system, byPoints ? 'day first' : order)?.serial;
  if (date === undefined || rest.length === 0) return date;
  const time = timeOf(rest.join(' '));
  return time === undefined || !hasTime ? undefined : date + time;
}

/** "9:40", "9:40am", "9 pm". */
function timeOf(text: string): number | undefined {
  const words = text.trim().replace(/\./g, '');
  const hour = /^(\d{1,2})\s?([ap]m?)$/i.exec(words);
  const time = parseTime(
    hour === null
      ? words.replace(/\s?([ap])m?$/i, ' $1m')
      : `${hour[1] ?? ''}:00 ${hour[2]?.slice(0, 1) ?? ''}m`,
  );
  return time === undefined || time >= 1 ? undefined : time;
}
