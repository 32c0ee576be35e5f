import type { DateSystem } from './serial-date.ts';
import { daysInMonth, serialOf } from './serial-date.ts';

const numberPattern = /^[+-]?(?:\d{1,3}(?:,\d{3})+|\d+)?(?:\.\d*)?(?:[eE][+-]?\d+)?$/;
const isoDate = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ](.+))?$/;
const slashDate = /^(\d{1,2})\/(\d{1,2})\/(\d{4})(?: (.+))?$/;
const clock = /^(\d{1,5}):(\d{1,2})(?::(\d{1,2}(?:\.\d+)?))?(?: ?([ap])m?)?$/i;

/** Fraction of a day of "13:45", "1:45 pm" or "26:10:05"; undefined when it is no time. */
export function parseTime(text: string): number | undefined {
  const match = clock.exec(text);
  if (match === null) return undefined;
  let hours = Number(match[1]);
  const minutes = Number(match[2]);
  const seconds = Number(match[3] ?? 0);
  const half = match[4]?.toLowerCase();
  if (minutes > 59 || seconds >= 60) return undefined;
  if (half !== undefined) {
    if (hours < 1 || hours > 12) return undefined;
    hours = (hours % 12) + (half === 'p' ? 12 : 0);
  }
  return (hours * 3600 + minutes * 60 + seconds) / 86_400;
}

/** Serial of "2026-11-25", "11/25/2026" or either with a time behind; undefined when it is no date. */
export function parseDate(text: string, system: DateSystem): number | undefined {
  const iso = isoDate.exec(text);
  const slash = iso === null ? slashDate.exec(text) : null;
  if (iso === null && slash === null) return undefined;
  const [year, month, day, rest] =
    iso !== null
      ? [Number(iso[1]), Number(iso[2]), Number(iso[3]), iso[4]]
      : [Number(slash?.[3]), Number(slash?.[1]), Number(slash?.[2]), slash?.[4]];
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return undefined;
  const time = rest === undefined ? 0 : parseTime(rest);
  if (time === undefined) return undefined;
  return serialOf(year, month, day, system) + time;
}

/**
 * Number that a text stands for where a formula needs a number: "12", " 1,250.5 ", "3.5e2", "15%", "$12", an ISO or
 * month/day/year date, a time. Undefined when it stands for none; empty text is none.
 */
export function parseNumber(text: string, system: DateSystem): number | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  const first = trimmed.charCodeAt(0);
  const mayBeNumber = first >= 36 && first <= 57;
  if (!mayBeNumber) return undefined;
  if (numberPattern.test(trimmed) && /\d/.test(trimmed)) return finite(Number(trimmed.replaceAll(',', '')));
  if (trimmed.endsWith('%')) {
    const share = trimmed.slice(0, -1).trim();
    if (numberPattern.test(share) && /\d/.test(share)) return finite(Number(share.replaceAll(',', '')) / 100);
    return undefined;
  }
  if (first === 36) {
    const amount = trimmed.slice(1).trim();
    return numberPattern.test(amount) && /\d/.test(amount)
      ? finite(Number(amount.replaceAll(',', '')))
      : undefined;
  }
  return parseDate(trimmed, system) ?? parseTime(trimmed);
}

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}
