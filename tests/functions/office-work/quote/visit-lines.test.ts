import { describe, expect, test } from 'vitest';
import { visitLines } from '../../../../functions/office-work/quote/visit-lines.ts';
import { unitHistory } from '../../../../src/records/index.ts';
import type { RecordRow } from '../../../../src/records/index.ts';

const ounce = 0.028349523125;

/** Two visits and a day without a number, out of order; hand arithmetic. */
const rows: RecordRow[] = [
  {
    unit_id: 'A',
    visit_id: 'V2',
    set_no: 2,
    date_time: 200.5,
    added: 3 * ounce,
    recovered: 0,
    added_reason: 'leak',
  },
  { unit_id: 'A', visit_id: 'V1', set_no: 1, date_time: 100.4, added: 0, recovered: 0 },
  {
    unit_id: 'A',
    visit_id: 'V2',
    set_no: 1,
    date_time: 200.4,
    added: 0,
    recovered: 2 * ounce,
    verified_on: 200,
  },
  {
    unit_id: 'A',
    visit_id: 'V1',
    set_no: 2,
    date_time: 101.2,
    added: 1 * ounce,
    recovered: 0,
    note: 'twice',
  },
  { unit_id: 'A', date_time: 150.7, added: 0.5 * ounce },
  { unit_id: 'A', visit_id: 'V9', added: 7 * ounce },
];

describe('the lines of a ledger', () => {
  const lines = visitLines(rows);

  test('are one for each visit, oldest first, and none without a date', () => {
    expect(lines.map(({ visit, day }) => [visit, day])).toEqual([
      ['V1', 101],
      [undefined, 150],
      ['V2', 200],
    ]);
    const [first, second, third] = lines;
    expect(first?.addedKg).toBeCloseTo(ounce, 12);
    expect(first?.note).toBe('twice');
    expect(second?.addedKg).toBeCloseTo(ounce / 2, 12);
    expect(third?.addedKg).toBeCloseTo(3 * ounce, 12);
    expect(third?.recoveredKg).toBeCloseTo(2 * ounce, 12);
    expect(third?.verifiedDay).toBe(200);
    expect(third?.reason).toBe('leak');
  });

  test('make the same history as the sets they came from', () => {
    const again = visitLines(rows).map((line): RecordRow => ({
      unit_id: 'A',
      date_time: line.day,
      added: line.addedKg,
      recovered: line.recoveredKg,
      ...(line.visit === undefined ? {} : { visit_id: line.visit }),
      ...(line.reason === undefined ? {} : { added_reason: line.reason }),
      ...(line.verifiedDay === undefined ? {} : { verified_on: line.verifiedDay }),
    }));
    const known = rows.filter((row) => row['date_time'] !== undefined);
    const { additions, verifiedDay } = unitHistory(again);
    expect(verifiedDay).toBe(unitHistory(known).verifiedDay);
    expect(additions.map(({ day, massKg }) => [day, massKg.toFixed(9)])).toEqual(
      unitHistory(known).additions.map(({ day, massKg }) => [day, massKg.toFixed(9)]),
    );
  });
});
