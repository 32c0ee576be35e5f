import { describe, expect, it } from 'vitest';
import { dayOfDate, readDay, serialOfDay, textOfDay } from '../../../functions/runtime/dates.ts';
import { errorOf, probe } from './probe.ts';

const description = 'A day.';
const day = probe(
  { day: { kind: 'date', description } },
  { kind: 'date', description },
  ({ day: given }) => given,
);

/** 2026-07-14 is day 46217 of the spreadsheet calendar (LibreOffice Calc: =DATEVALUE("2026-07-14"), from memory of its epoch 1899-12-30). */
const serial = Date.UTC(2026, 6, 14) / 86_400_000 + 25_569;

describe('a day', () => {
  it('is 46217 for 14 July 2026, counted from 30 December 1899', () => {
    expect(serial).toBe(46_217);
    // Count of days between the two calendar dates, independent of the epoch constant.
    expect((Date.UTC(2026, 6, 14) - Date.UTC(1899, 11, 30)) / 86_400_000).toBe(serial);
  });

  it.each([
    ['2026-07-14'],
    [' 2026-7-14 '],
    ['2026-07-14T18:30:00Z'],
    ['2026-07-14 23:59'],
    [46_217],
    [46_217.75],
    [new Date(2026, 6, 14)],
    [new Date(2026, 6, 14, 23, 59)],
  ])('%s is that day', (given) => {
    expect(day([given])).toBe(serial);
  });

  it.each([
    ['14.07.2026'],
    ['07/14/2026'],
    ['2026-02-30'],
    ['2026-13-01'],
    ['0050-01-01'],
    ['2026-07-14x'],
    ['July 14'],
    [62],
    [-1],
    [true],
    [new Date(Number.NaN)],
  ])('%s is not guessed', (given) => {
    expect(errorOf(day([given]))).toMatchObject({ code: 'invalid-argument', parameter: 'day' });
  });

  it('knows leap days', () => {
    expect(readDay('2024-02-29')).toBeDefined();
    expect(readDay('2100-02-29')).toBeUndefined();
  });

  it('goes back to the text it came from', () => {
    expect(textOfDay(readDay('2026-11-01') ?? 0)).toBe('2026-11-01');
  });

  it('is the calendar day where the date was made, also on the day the clocks change', () => {
    expect(serialOfDay(dayOfDate(new Date(2026, 10, 1, 0, 30)) ?? 0)).toBe(
      Date.UTC(2026, 10, 1) / 86_400_000 + 25_569,
    );
  });
});
