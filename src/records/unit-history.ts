import type { Addition, AdditionReason } from '../leak/additions.ts';
import type { LeakRecord } from '../leak/intervals.ts';
import type { RecordRow } from './field.ts';

/** Fields of the visit log that a history is made of. */
export const historyFields = [
  'unit_id',
  'visit_id',
  'set_no',
  'date_time',
  'added',
  'added_reason',
  'recovered',
  'mass_basis',
  'verified_on',
  'tap_left',
  'verdict',
] as const;

/** What the log knows of one unit. */
export interface UnitHistory {
  readonly visits: number;
  readonly lastDay: number | undefined;
  readonly lastVerdict: string | undefined;
  /** Net of what was recovered in the same visit; hose losses never reached the unit. */
  readonly additions: readonly Addition[];
  /** Everything weighed in, whatever the reason [kg]. */
  readonly addedKg: number;
  /** Visits in which a charge was weighed in from a known start, with all that went in. */
  readonly weighedIn: readonly { readonly day: number; readonly addedKg: number }[];
  readonly verifiedDay: number | undefined;
  readonly tapsLeft: number | undefined;
}

function number(row: RecordRow, name: string): number | undefined {
  const value = row[name];
  return typeof value === 'number' ? value : undefined;
}

/** Order of the sets: by time, within one time by number. */
function inOrder(a: RecordRow, b: RecordRow): number {
  return (
    (number(a, 'date_time') ?? 0) - (number(b, 'date_time') ?? 0) ||
    (number(a, 'set_no') ?? 0) - (number(b, 'set_no') ?? 0)
  );
}

/**
 * The history of a unit from its reading sets.
 *
 * @param rows - of one unit, in any order; rows without a date are left out
 * @param asOfDay - later rows are left out
 */
export function unitHistory(rows: readonly RecordRow[], asOfDay = Infinity): UnitHistory {
  const dated = rows
    .filter(
      (row) =>
        Math.floor(number(row, 'date_time') ?? Infinity) <= asOfDay && number(row, 'date_time') !== undefined,
    )
    .sort(inOrder);
  const last = dated.at(-1);
  return {
    visits: new Set(dated.map(visitKey)).size,
    lastDay: last && dayOf(last),
    lastVerdict: lastText(dated, 'verdict'),
    additions: netAdditions(dated),
    weighedIn: weighedIn(dated),
    addedKg: dated.reduce((sum, row) => sum + (number(row, 'added') ?? 0), 0),
    verifiedDay: dated.reduce<number | undefined>((latest, row) => {
      const day = number(row, 'verified_on');
      return day !== undefined && day <= asOfDay && day > (latest ?? -Infinity) ? day : latest;
    }, undefined),
    tapsLeft: dated.findLast((row) => number(row, 'tap_left') !== undefined)?.['tap_left'] as
      number | undefined,
  };
}

/** Share of the nameplate from which on a weighed addition is a full charge: a rest may have stayed in the oil. */
const fullShare = 0.9;

/**
 * What leaks, from top-up to top-up. The first interval begins only where a full charge was weighed in: neither the day of
 * installation nor the first visit tells what the unit held.
 *
 * @param nameplateKg - without it only additions that are booked as a new charge are taken as full
 */
export function leakRecordOf(
  { additions, weighedIn: charges, verifiedDay }: UnitHistory,
  nameplateKg: number | undefined,
): LeakRecord {
  const fullDays = charges
    .filter(({ addedKg }) => nameplateKg !== undefined && addedKg >= fullShare * nameplateKg)
    .map(({ day }) => day);
  return { additions, fullDays, verifiedDay };
}

function weighedIn(rows: readonly RecordRow[]): { readonly day: number; readonly addedKg: number }[] {
  const visits = new Map<string, { day: number; addedKg: number; known: boolean }>();
  for (const row of rows) {
    const addedKg = number(row, 'added') ?? 0;
    if (addedKg <= 0) continue;
    const key = visitKey(row);
    const visit = visits.get(key) ?? { day: 0, addedKg: 0, known: false };
    visit.addedKg += addedKg;
    visit.day = dayOf(row);
    visit.known ||= row['mass_basis'] === 'nameplate weighed in';
    visits.set(key, visit);
  }
  return [...visits.values()].filter(({ known }) => known).map(({ day, addedKg }) => ({ day, addedKg }));
}

function dayOf(row: RecordRow): number {
  return Math.floor(number(row, 'date_time') ?? 0);
}

/** A visit by its number; without one, by its day. */
function visitKey(row: RecordRow): string {
  return typeof row['visit_id'] === 'string' ? row['visit_id'] : `day ${String(dayOf(row))}`;
}

function lastText(rows: readonly RecordRow[], name: string): string | undefined {
  const value = rows.findLast((row) => typeof row[name] === 'string' && row[name] !== '')?.[name];
  return typeof value === 'string' ? value : undefined;
}

/**
 * One addition per visit and reason, less what was recovered in that visit: gas that was taken out and put back
 * did not leak. It counts on the day of the last weighing of the visit.
 */
function netAdditions(rows: readonly RecordRow[]): Addition[] {
  const visits = new Map<
    string,
    { addedKg: number; recoveredKg: number; day: number; reason?: AdditionReason }
  >();
  for (const row of rows) {
    const addedKg = number(row, 'added') ?? 0;
    const recoveredKg = number(row, 'recovered') ?? 0;
    if (addedKg <= 0 && recoveredKg <= 0) continue;
    const key = visitKey(row);
    const visit = visits.get(key) ?? { addedKg: 0, recoveredKg: 0, day: 0 };
    visit.addedKg += addedKg;
    visit.recoveredKg += recoveredKg;
    visit.day = dayOf(row);
    const reason = row['added_reason'];
    // The reason of the last weighing that gives one stands for the visit.
    if (typeof reason === 'string') visit.reason = reason as AdditionReason;
    visits.set(key, visit);
  }
  return [...visits.values()]
    .filter(({ addedKg, recoveredKg }) => addedKg - recoveredKg > 1e-9)
    .map(({ addedKg, recoveredKg, day, reason }) => ({ day, massKg: addedKg - recoveredKg, reason }));
}
