/** Whole days from 1899-12-30, where spreadsheets count from, to 1970-01-01, where we count from. */
const serialOfEpoch = 25_569;
const millisecondsPerDay = 86_400_000;

/** Serial numbers outside this span are readings typed into a date cell, not dates: 1955-01-01 to 2149-12-31. */
const firstSerial = 20_090;
const lastSerial = 91_313;

/** Days since 1970-01-01 of a spreadsheet's serial number; the time of day is dropped. */
export function dayOfSerial(serial: number): number | undefined {
  return serial >= firstSerial && serial <= lastSerial ? Math.floor(serial) - serialOfEpoch : undefined;
}

export function serialOfDay(day: number): number {
  return day + serialOfEpoch;
}

/** The calendar day the date shows where it was made; hosts hand over local midnights. */
export function dayOfDate(date: Date): number | undefined {
  if (Number.isNaN(date.getTime())) return undefined;
  return Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / millisecondsPerDay;
}

/** "2026-07-14", with or without a time behind it. Other orders are ambiguous and not guessed. */
export function readDay(text: string): number | undefined {
  const match = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})(?:[T\s].*)?$/.exec(text);
  if (!match) return undefined;
  const [year, month, date] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const milliseconds = Date.UTC(year, month - 1, date);
  const back = new Date(milliseconds);
  const real =
    back.getUTCFullYear() === year && back.getUTCMonth() === month - 1 && back.getUTCDate() === date;
  return real ? milliseconds / millisecondsPerDay : undefined;
}

export function textOfDay(day: number): string {
  return new Date(day * millisecondsPerDay).toISOString().slice(0, 10);
}
