import type { Place } from '../formula/compiled-formula.ts';
import type { Operand } from '../model/operand.ts';
import { lastSerial, weekdayOf } from '../model/serial-date.ts';
import { CellError, numberError, valueError } from '../model/values.ts';
import { numbersIn } from './numbers-in.ts';
import { placed } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/** Free days of the week, Sunday first. */
type Weekend = readonly boolean[];

function weekendOf(days: readonly number[]): Weekend {
  return Array.from({ length: 7 }, (_, day) => days.includes(day));
}

const usualWeekend = weekendOf([0, 6]);

/** Weekend by number (1 Saturday and Sunday, 2 Sunday and Monday, …, 11 Sunday only, …) or by seven digits from Monday. */
function readWeekend(choice: Operand): Weekend | CellError {
  if (choice === undefined || choice === null) return usualWeekend;
  if (typeof choice === 'string' && /^[01]{7}$/.test(choice)) {
    if (choice === '1111111') return valueError;
    const mondayFirst = [...choice].map((digit) => digit === '1');
    return [mondayFirst[6] === true, ...mondayFirst.slice(0, 6)];
  }
  const number = Number(choice);
  if (number >= 1 && number <= 7) return weekendOf([(number + 5) % 7, (number + 6) % 7]);
  if (number >= 11 && number <= 17) return weekendOf([number - 11]);
  return numberError;
}

function readHolidays(operand: Operand, place: Place): ReadonlySet<number> | CellError {
  if (operand === undefined) return new Set();
  const numbers = numbersIn([operand], place.workbook.dateSystem);
  return numbers instanceof CellError ? numbers : new Set(numbers.map(Math.floor));
}

interface Calendar {
  readonly isFree: (day: number) => boolean;
}

function calendar(place: Place, weekendChoice: Operand, holidays: Operand): Calendar | CellError {
  const weekend = readWeekend(weekendChoice);
  if (weekend instanceof CellError) return weekend;
  const free = readHolidays(holidays, place);
  if (free instanceof CellError) return free;
  const system = place.workbook.dateSystem;
  return { isFree: (day) => weekend[weekdayOf(day, system)] === true || free.has(day) };
}

function countWorkdays(
  place: Place,
  start: number,
  end: number,
  weekend: Operand,
  holidays: Operand,
): Operand {
  const days = calendar(place, weekend, holidays);
  if (days instanceof CellError) return days;
  const first = Math.floor(Math.min(start, end));
  const last = Math.floor(Math.max(start, end));
  if (first < 0 || last > lastSerial) return numberError;
  let count = 0;
  for (let day = first; day <= last; day++) if (!days.isFree(day)) count++;
  return start <= end ? count : -count;
}

function stepWorkdays(
  place: Place,
  start: number,
  steps: number,
  weekend: Operand,
  holidays: Operand,
): Operand {
  const days = calendar(place, weekend, holidays);
  if (days instanceof CellError) return days;
  const direction = steps < 0 ? -1 : 1;
  let day = Math.floor(start);
  for (let left = Math.abs(Math.trunc(steps)); left > 0;) {
    day += direction;
    if (day < 0 || day > lastSerial) return numberError;
    if (!days.isFree(day)) left--;
  }
  return day;
}

/** Working days between dates and after a date. */
export const workdayFunctions: FunctionTable = {
  NETWORKDAYS: placed(['number', 'number', 'operand?'], (place, start, end, holidays) =>
    countWorkdays(place, start, end, undefined, holidays),
  ),
  'NETWORKDAYS.INTL': placed(['number', 'number', 'any?', 'operand?'], countWorkdays),
  WORKDAY: placed(['number', 'number', 'operand?'], (place, start, steps, holidays) =>
    stepWorkdays(place, start, steps, undefined, holidays),
  ),
  'WORKDAY.INTL': placed(['number', 'number', 'any?', 'operand?'], stepWorkdays),
};
