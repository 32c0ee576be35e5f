/**
 * Dates as serial numbers. In the 1900 system serial 1 is 1900-01-01 and serial 60 is a 29 February 1900 that never was
 * (ECMA-376 Part 1, 18.17.4.1); serial 0, and with it a blank cell, is the day before in the same month: January 0 (what
 * programs of that system show, from memory). In the 1904 system serial 0 is 1904-01-01.
 */
export type DateSystem = 1900 | 1904;

const millisecondsPerDay = 86_400_000;
/** Serial 0 such that dates from 1900-03-01 on are right in the 1900 system. */
const epoch1900 = Date.UTC(1899, 11, 30);
const epoch1904 = Date.UTC(1904, 0, 1);
/** 9999-12-31 in the 1900 system. */
export const lastSerial = 2_958_465;

export interface CalendarDate {
  readonly year: number;
  /** 1 to 12 */
  readonly month: number;
  readonly day: number;
}

/** Whole-day serial of a calendar date; month and day may overflow, as in "month 14". */
export function serialOf(year: number, month: number, day: number, system: DateSystem): number {
  const instant = new Date(0);
  instant.setUTCFullYear(year, month - 1, day);
  if (system === 1904) return Math.round((instant.getTime() - epoch1904) / millisecondsPerDay);
  const serial = Math.round((instant.getTime() - epoch1900) / millisecondsPerDay);
  return serial < 61 ? serial - 1 : serial;
}

/** Calendar date of a serial; the fraction of the day is ignored. */
export function dateOf(serial: number, system: DateSystem): CalendarDate {
  const whole = Math.floor(serial);
  if (system === 1900 && whole === 60) return { year: 1900, month: 2, day: 29 };
  if (system === 1900 && whole === 0) return { year: 1900, month: 1, day: 0 };
  const base = system === 1904 ? epoch1904 : epoch1900;
  const shifted = system === 1900 && whole < 60 ? whole + 1 : whole;
  const instant = new Date(base + shifted * millisecondsPerDay);
  return { year: instant.getUTCFullYear(), month: instant.getUTCMonth() + 1, day: instant.getUTCDate() };
}

/** Serial with fraction of a local moment, as TODAY and NOW give it. */
export function serialOfMoment(moment: Date, system: DateSystem): number {
  const day = serialOf(moment.getFullYear(), moment.getMonth() + 1, moment.getDate(), system);
  const seconds =
    moment.getHours() * 3600 +
    moment.getMinutes() * 60 +
    moment.getSeconds() +
    moment.getMilliseconds() / 1000;
  return day + seconds / 86_400;
}

/** Days in a month, 1 to 12. */
export function daysInMonth(year: number, month: number): number {
  return new Date(Date.UTC(2000 + (year % 400), month, 0)).getUTCDate();
}

/** 0 Sunday to 6 Saturday, as the spreadsheet counts (serial 1 is a Sunday in the 1900 system). */
export function weekdayOf(serial: number, system: DateSystem): number {
  const whole = Math.floor(serial) + (system === 1904 ? 1462 : 0);
  return (((whole - 1) % 7) + 7) % 7;
}
