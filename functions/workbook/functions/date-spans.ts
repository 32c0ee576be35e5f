import type { CalendarDate, DateSystem } from '../model/serial-date.ts';
import { dateOf, daysInMonth, serialOf } from '../model/serial-date.ts';
import type { CellValue } from '../model/values.ts';
import { numberError } from '../model/values.ts';

/** Whole years, months or days between two dates as DATEDIF counts them. */
export function dateSpan(start: number, end: number, unit: string, system: DateSystem): CellValue {
  if (start > end) return numberError;
  const from = dateOf(start, system);
  const to = dateOf(end, system);
  const months = (to.year - from.year) * 12 + to.month - from.month - (to.day < from.day ? 1 : 0);
  switch (unit) {
    case 'd':
      return end - start;
    case 'm':
      return months;
    case 'y':
      return Math.floor(months / 12);
    case 'ym':
      return months % 12;
    case 'md': {
      if (to.day >= from.day) return to.day - from.day;
      const previous =
        to.month === 1 ? { year: to.year - 1, month: 12 } : { year: to.year, month: to.month - 1 };
      return to.day + daysInMonth(previous.year, previous.month) - from.day;
    }
    case 'yd': {
      const isPassed = to.month > from.month || (to.month === from.month && to.day >= from.day);
      return end - serialOf(isPassed ? to.year : to.year - 1, from.month, from.day, system);
    }
    default:
      return numberError;
  }
}

function isLastOfFebruary(date: CalendarDate): boolean {
  return date.month === 2 && date.day === daysInMonth(date.year, 2);
}

/** Days between two dates in a year of twelve months of thirty days. */
export function daysBetween360(start: CalendarDate, end: CalendarDate, european: boolean): number {
  let startDay = start.day;
  let endDay = end.day;
  if (european) {
    startDay = Math.min(startDay, 30);
    endDay = Math.min(endDay, 30);
  } else {
    if (startDay === 31 || isLastOfFebruary(start)) startDay = 30;
    if (endDay === 31 && startDay === 30) endDay = 30;
  }
  return (end.year - start.year) * 360 + (end.month - start.month) * 30 + endDay - startDay;
}

function isLeapYear(year: number): boolean {
  return daysInMonth(year, 2) === 29;
}

/** Share of a year between two dates by day-count basis 0 to 4. */
export function yearFraction(start: number, end: number, basis: number, system: DateSystem): CellValue {
  const [first, last] = start <= end ? [start, end] : [end, start];
  const from = dateOf(first, system);
  const to = dateOf(last, system);
  switch (basis) {
    case 0: {
      // The US rule also moves the end to the 30th when both dates end February.
      const shifted = isLastOfFebruary(from) && isLastOfFebruary(to) ? { ...to, day: 30 } : to;
      return daysBetween360(from, shifted, false) / 360;
    }
    case 1:
      return (last - first) / averageYear(from, to, first, last, system);
    case 2:
      return (last - first) / 360;
    case 3:
      return (last - first) / 365;
    case 4:
      return daysBetween360(from, to, true) / 360;
    default:
      return numberError;
  }
}

function averageYear(
  from: CalendarDate,
  to: CalendarDate,
  first: number,
  last: number,
  system: DateSystem,
): number {
  const withinOneYear =
    from.year === to.year ||
    (to.year === from.year + 1 && (to.month < from.month || (to.month === from.month && to.day <= from.day)));
  if (withinOneYear) {
    if (from.year === to.year) return isLeapYear(from.year) ? 366 : 365;
    const leapDays = [from.year, to.year].filter(isLeapYear).map((year) => serialOf(year, 2, 29, system));
    return leapDays.some((day) => day >= first && day <= last) ? 366 : 365;
  }
  const years = to.year - from.year + 1;
  return (serialOf(to.year + 1, 1, 1, system) - serialOf(from.year, 1, 1, system)) / years;
}
