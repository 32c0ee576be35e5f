import type { Place } from '../formula/compiled-formula.ts';
import {
  dateOf,
  daysInMonth,
  lastSerial,
  serialOf,
  serialOfMoment,
  weekdayOf,
} from '../model/serial-date.ts';
import { parseDate, parseNumber, parseTime } from '../model/text-number.ts';
import type { Operand } from '../model/operand.ts';
import type { CellValue } from '../model/values.ts';
import { numberError, valueError } from '../model/values.ts';
import { dateSpan, daysBetween360, yearFraction } from './date-spans.ts';
import { placed, pure, volatile } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';
import { workdayFunctions } from './workdays.ts';

function checkedSerial(serial: number): CellValue {
  // Months without end come to no number at all.
  return serial >= 0 && serial <= lastSerial ? serial : numberError;
}

function isDate(serial: number): boolean {
  return serial >= 0 && serial < lastSerial + 1;
}

function partOfDate(part: (serial: number, place: Place) => CellValue): FunctionTable[string] {
  return placed(['number'], (place, serial) => (isDate(serial) ? part(serial, place) : numberError));
}

/** Whole seconds of the day of a serial; a fraction of a second short by rounding noise alone counts as full. */
function secondsOfDay(serial: number): number {
  return Math.floor((serial - Math.floor(serial)) * 86_400 + 1e-4) % 86_400;
}

function date(place: Place, year: number, month: number, day: number): Operand {
  const whole = Math.trunc(year);
  if (whole < 0 || whole > 9999) return numberError;
  const full = whole < 1900 ? whole + 1900 : whole;
  return checkedSerial(serialOf(full, Math.trunc(month), Math.trunc(day), place.workbook.dateSystem));
}

/** The same day some months on, or the last of the month where there is no such day. */
function addMonths(place: Place, serial: number, months: number): Operand {
  if (!isDate(serial)) return numberError;
  const { dateSystem } = place.workbook;
  const start = dateOf(serial, dateSystem);
  const month = start.year * 12 + start.month - 1 + Math.trunc(months);
  const year = Math.floor(month / 12);
  const monthOfYear = month - year * 12 + 1;
  const day = Math.min(start.day, daysInMonth(year, monthOfYear));
  return year < 1900 ? numberError : checkedSerial(serialOf(year, monthOfYear, day, dateSystem));
}

function endOfMonth(place: Place, serial: number, months: number): Operand {
  if (!isDate(serial)) return numberError;
  const { dateSystem } = place.workbook;
  const start = dateOf(serial, dateSystem);
  return checkedSerial(serialOf(start.year, start.month + Math.trunc(months) + 1, 0, dateSystem));
}

function weekday(place: Place, serial: number, kind: number | undefined): Operand {
  if (!isDate(serial)) return numberError;
  const day = weekdayOf(serial, place.workbook.dateSystem);
  const choice = Math.trunc(kind ?? 1);
  if (choice === 1) return day + 1;
  if (choice === 2) return ((day + 6) % 7) + 1;
  if (choice === 3) return (day + 6) % 7;
  if (choice >= 11 && choice <= 17) return ((day - (choice - 10) + 7) % 7) + 1;
  return numberError;
}

/** Week of the year by ISO 8601: the week with the year's first Thursday is week 1. */
function isoWeek(place: Place, serial: number): number {
  const { dateSystem } = place.workbook;
  const whole = Math.floor(serial);
  const monday = (weekdayOf(whole, dateSystem) + 6) % 7;
  const thursday = whole - monday + 3;
  const firstDay = serialOf(dateOf(thursday, dateSystem).year, 1, 1, dateSystem);
  return Math.floor((thursday - firstDay) / 7) + 1;
}

function weekNumber(place: Place, serial: number, kind: number | undefined): Operand {
  if (!isDate(serial)) return numberError;
  const choice = Math.trunc(kind ?? 1);
  if (choice === 21) return isoWeek(place, serial);
  const starts: Readonly<Record<number, number>> = {
    1: 0,
    2: 1,
    11: 1,
    12: 2,
    13: 3,
    14: 4,
    15: 5,
    16: 6,
    17: 0,
  };
  const start = starts[choice];
  if (start === undefined) return numberError;
  const { dateSystem } = place.workbook;
  const whole = Math.floor(serial);
  const firstDay = serialOf(dateOf(whole, dateSystem).year, 1, 1, dateSystem);
  const lead = (weekdayOf(firstDay, dateSystem) - start + 7) % 7;
  return Math.floor((whole - firstDay + lead) / 7) + 1;
}

/** Dates and times as serial numbers. */
export const dateFunctions: FunctionTable = {
  ...workdayFunctions,
  TODAY: volatile(
    placed([], (place) => Math.floor(serialOfMoment(place.workbook.now(), place.workbook.dateSystem))),
  ),
  NOW: volatile(placed([], (place) => serialOfMoment(place.workbook.now(), place.workbook.dateSystem))),
  DATE: placed(['number', 'number', 'number'], date),
  TIME: pure(['number', 'number', 'number'], (hours, minutes, seconds) => {
    const total = Math.trunc(hours) * 3600 + Math.trunc(minutes) * 60 + Math.trunc(seconds);
    return total < 0 ? numberError : (total % 86_400) / 86_400;
  }),
  DATEVALUE: placed(['text'], (place, text) => {
    const serial = parseDate(text.trim(), place.workbook.dateSystem);
    return serial === undefined ? valueError : Math.floor(serial);
  }),
  TIMEVALUE: placed(['text'], (place, text) => {
    const time = parseTime(text.trim()) ?? parseNumber(text, place.workbook.dateSystem);
    return time === undefined ? valueError : time - Math.floor(time);
  }),
  YEAR: partOfDate((serial, place) => dateOf(serial, place.workbook.dateSystem).year),
  MONTH: partOfDate((serial, place) => dateOf(serial, place.workbook.dateSystem).month),
  DAY: partOfDate((serial, place) => dateOf(serial, place.workbook.dateSystem).day),
  HOUR: partOfDate((serial) => Math.floor(secondsOfDay(serial) / 3600)),
  MINUTE: partOfDate((serial) => Math.floor(secondsOfDay(serial) / 60) % 60),
  SECOND: partOfDate((serial) => secondsOfDay(serial) % 60),
  WEEKDAY: placed(['number', 'number?'], weekday),
  WEEKNUM: placed(['number', 'number?'], weekNumber),
  ISOWEEKNUM: placed(['number'], (place, serial) => (isDate(serial) ? isoWeek(place, serial) : numberError)),
  EDATE: placed(['number', 'number'], addMonths),
  EOMONTH: placed(['number', 'number'], endOfMonth),
  DAYS: pure(['number', 'number'], (end, start) => Math.floor(end) - Math.floor(start)),
  DAYS360: placed(['number', 'number', 'boolean?'], (place, start, end, european) =>
    daysBetween360(
      dateOf(start, place.workbook.dateSystem),
      dateOf(end, place.workbook.dateSystem),
      european === true,
    ),
  ),
  DATEDIF: placed(['number', 'number', 'text'], (place, start, end, unit) =>
    dateSpan(Math.floor(start), Math.floor(end), unit.toLowerCase(), place.workbook.dateSystem),
  ),
  YEARFRAC: placed(['number', 'number', 'number?'], (place, start, end, basis) => {
    const result = yearFraction(
      Math.floor(start),
      Math.floor(end),
      Math.trunc(basis ?? 0),
      place.workbook.dateSystem,
    );
    return result;
  }),
};
