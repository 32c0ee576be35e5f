import { describe, expect, it } from 'vitest';
import {
  momentOf,
  ordersOf,
  readWrittenDate,
} from '../../../../functions/office-work/gather/written-dates.ts';

/* Expected moments are the calendar's, by Date.UTC; the first five spellings are those of issue 18. */

const utc = (...[year, month, day, hour = 0, minute = 0]: number[]): number =>
  Date.UTC(year!, month! - 1, day, hour, minute) / 86_400_000;

function read(text: string, column: readonly string[] = [text]): number | undefined {
  const date = readWrittenDate(text);
  return date && momentOf(date, ordersOf(column).settled);
}

describe('dates as people write them', () => {
  it.each<[string, number, string?]>([
    ['5/14/26', utc(2026, 5, 14)],
    ['13.04.2025 11:40', utc(2025, 4, 13, 11, 40)],
    ['01/29/2026 11:00 AM', utc(2026, 1, 29, 11)],
    ['5/4/2026 9:30', utc(2026, 5, 4, 9, 30), '5/14/26'],
    ['01/09/2026 11:00 AM', utc(2026, 9, 1, 11), '13/09/2026'],
    ['3/8/26 12:05 am', utc(2026, 3, 8, 0, 5), '3/28/26'],
    ['3/8/26 12:05pm', utc(2026, 3, 8, 12, 5), '3/28/26'],
    ['3/8/26, 2:15 p.m.', utc(2026, 3, 8, 14, 15), '3/28/26'],
    ['3/8/26 9 AM', utc(2026, 3, 8, 9), '3/28/26'],
    ['4.5.26', utc(2026, 5, 4)],
    ['2026-04-05', utc(2026, 4, 5)],
    ['2026-04-05T09:30:15', utc(2026, 4, 5, 9, 30) + 15 / 86_400],
    ['2026/04/05 09.30', utc(2026, 4, 5, 9, 30)],
    ['20260405', utc(2026, 4, 5)],
    ['Apr 5, 2026', utc(2026, 4, 5)],
    ['Apr 5, 26', utc(2026, 4, 5)],
    ['Sun, April 5th 2026 4:00 pm', utc(2026, 4, 5, 16)],
    ['5 April 2026', utc(2026, 4, 5)],
    ['5-Apr-26 16:00', utc(2026, 4, 5, 16)],
    ['7/7/2026', utc(2026, 7, 7)],
  ])('%s', (text, expected, beside) => {
    expect(read(text, beside === undefined ? [text] : [beside, text])).toBeCloseTo(expected, 9);
  });

  it.each([
    '',
    '12',
    '2.4',
    '31/02/2026',
    '13/13/2026',
    'soon',
    '5/4',
    '5/4/2026 25:00',
    '5/4/2026 13:00 pm',
    'x'.repeat(5000),
  ])('none: %.20s', (text) => {
    expect(read(text, [text, '5/14/2026'])).toBeUndefined();
  });
});

describe('the order of a column', () => {
  it('is settled by one date that only one order makes', () => {
    expect(ordersOf(['5/4/2026', '6/4/2026', '13/4/2026']).settled.get('/')).toBe('day first');
    expect(ordersOf(['5/4/2026', '4/13/2026']).settled.get('/')).toBe('month first');
  });

  it('is asked where every date makes sense both ways, or two contradict', () => {
    const { settled, open } = ordersOf([' 5/4/2026', '6/4/2026']);
    expect([settled.size, open.get('/')]).toEqual([0, '5/4/2026']);
    expect(ordersOf(['13/4/2026', '4/13/2026', '5/4/2026']).open.has('/')).toBe(true);
    expect(read('5/4/2026')).toBeUndefined();
    // What only one order makes needs no order.
    expect(read('13/4/2026', ['4/13/2026', '13/4/2026'])).toBe(utc(2026, 4, 13));
  });

  it('is told apart by the mark between the numbers', () => {
    expect(read('4/5/2026', ['4/25/2026', '13.04.2026'])).toBe(utc(2026, 4, 5));
    expect(read('4.5.2026', ['4/25/2026', '13.04.2026'])).toBe(utc(2026, 5, 4));
  });
});
