import type { RecordRow } from '../../../src/records/index.ts';

/** One visit in one line: what was weighed in and out, and whether a repair was found to hold. SI, days from 1970. */
export interface VisitLine {
  readonly visit: string | undefined;
  readonly day: number;
  readonly addedKg: number;
  readonly recoveredKg: number;
  readonly reason: string | undefined;
  readonly verifiedDay: number | undefined;
  readonly note: string | undefined;
}

const number = (row: RecordRow, name: string): number | undefined => {
  const value = row[name];
  return typeof value === 'number' ? value : undefined;
};

const text = (row: RecordRow, name: string): string | undefined => {
  const value = row[name];
  return typeof value === 'string' && value !== '' ? value : undefined;
};

/**
 * The reading sets of one unit brought together by visit, oldest first. A visit without a number is its day. The day is
 * that of the last weighing, as the history of a unit counts it. Rows without a date are left out: they have no place in time.
 */
export function visitLines(rows: readonly RecordRow[]): readonly VisitLine[] {
  const visits = new Map<string, RecordRow[]>();
  const dated = rows.filter((row) => number(row, 'date_time') !== undefined);
  dated.sort(
    (one, other) =>
      (number(one, 'date_time') ?? 0) - (number(other, 'date_time') ?? 0) ||
      (number(one, 'set_no') ?? 0) - (number(other, 'set_no') ?? 0),
  );
  for (const row of dated) {
    const key = text(row, 'visit_id') ?? `day ${Math.floor(number(row, 'date_time') ?? 0)}`;
    visits.set(key, [...(visits.get(key) ?? []), row]);
  }
  return [...visits.values()].map(lineOf).sort((one, other) => one.day - other.day);
}

function lineOf(rows: readonly RecordRow[]): VisitLine {
  const sum = (name: string): number => rows.reduce((total, row) => total + (number(row, name) ?? 0), 0);
  const weighing = rows.findLast(
    (row) => (number(row, 'added') ?? 0) > 0 || (number(row, 'recovered') ?? 0) > 0,
  );
  const [first = {}] = rows;
  const verified = rows.map((row) => number(row, 'verified_on') ?? -Infinity);
  const latest = Math.max(...verified);
  return {
    visit: text(first, 'visit_id'),
    day: Math.floor(number(weighing ?? rows.at(-1) ?? first, 'date_time') ?? 0),
    addedKg: sum('added'),
    recoveredKg: sum('recovered'),
    reason: rows.map((row) => text(row, 'added_reason')).findLast((reason) => reason !== undefined),
    verifiedDay: latest === -Infinity ? undefined : latest,
    note: rows.map((row) => text(row, 'note')).findLast((note) => note !== undefined),
  };
}
