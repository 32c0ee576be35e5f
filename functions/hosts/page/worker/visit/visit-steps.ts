import { isEntry, visitLayout } from '../../../../../src/records/index.ts';
import type { VisitEntry } from '../../../../../src/records/index.ts';
import type { Typed } from '../../protocol.ts';
import type { VisitPlace } from '../../visit-protocol.ts';
import { answerInHand } from '../answer-in-hand.ts';
import type { LogSession } from '../log-session.ts';
import type { Outcome } from '../outcome.ts';
import { refused } from '../outcome.ts';
import { lastTypedRow } from '../table-rows.ts';
import { typedDate } from '../typed-date.ts';
import { nextVisitNumber } from './visit-number.ts';
import { RecordTableRow, rowsOf, rowWith } from './visit-row.ts';
import type { RecordSheet } from './visit-table.ts';
import { staffTableOf, unitTableOf, visitTableOf } from './visit-table.ts';
import { lastSet } from './visit-view.ts';

/** A change of a visit, and the row that is in hand after it. */
export interface VisitStep {
  readonly outcome: Outcome;
  readonly row: number;
}

/** The longest time since a change that a log takes; longer ago is another day's work. */
const longestMinutes = 600;

const noLog = 'This workbook has no readings to add to.';

/** Entries by field, each once. */
const entries = new Map<string, VisitEntry>();
for (const entry of visitLayout.flatMap(({ lines }) => lines.filter(isEntry))) {
  if (!entries.has(entry.field)) entries.set(entry.field, entry);
}

/** Begins a visit to a unit; a unit that the register does not know yet is put there. */
export function beginVisit(session: LogSession, unit: string, person: string, at: string): VisitStep {
  const found = visitTableOf(session.workbook);
  if (found === undefined) return { outcome: refused(noLog), row: 0 };
  const name = unit.trim();
  if (name === '') return { outcome: refused('A visit is to a unit: pick one, or write its name.'), row: 0 };
  const who = person.trim();
  const trouble =
    registered(session, unitTableOf(session.workbook), 'unit_id', name) ??
    registered(session, staffTableOf(session.workbook), 'technician_id', who);
  if (trouble !== undefined) return { outcome: trouble, row: 0 };
  // The register may have grown, and with it everything was opened anew.
  const table = visitTableOf(session.workbook) ?? found;
  const visits = [...rowsOf(session, table)].filter((row) => !row.isFree).map((row) => row.shown('visit_id'));
  const technician = who === '' ? usualTechnician(session) : who;
  const row = lastTypedRow(table.table) + 1;
  return put(session, table, row, {
    unit_id: name,
    visit_id: nextVisitNumber(visits),
    set_no: '1',
    stage: 'as found',
    date_time: at,
    technician_id: technician,
  });
}

/** Whoever took the last set, or the only one there is. */
function usualTechnician(session: LogSession): string {
  const last = lastSet(session)?.typed('technician_id') ?? '';
  const staff = staffTableOf(session.workbook);
  if (last !== '' || staff === undefined) return last;
  const people = [...rowsOf(session, staff)].map((row) => row.shown('technician_id'));
  const named = people.filter((name) => name !== '');
  return named.length === 1 ? (named[0] ?? '') : '';
}

/** Puts a name into a register that does not have it yet; the reason when it cannot. */
function registered(
  session: LogSession,
  register: RecordSheet | undefined,
  field: string,
  name: string,
): Outcome | undefined {
  if (register === undefined || name === '' || rowWith(session, register, field, name) !== undefined) {
    return undefined;
  }
  const { outcome } = put(session, register, lastTypedRow(register.table) + 1, { [field]: name });
  return outcome.wasRefused ? outcome : undefined;
}

/**
 * The next set of a visit: it takes over what does not change, counts on, and starts the clock: no minute has passed
 * since the change. Everything else is asked for anew.
 */
export function nextSet(session: LogSession, place: VisitPlace, at: string): VisitStep {
  const table = visitTableOf(session.workbook);
  if (table === undefined) return { outcome: refused(noLog), row: place.row };
  const here = new RecordTableRow(session, table, place.row);
  if (here.isFree) return { outcome: refused('Begin the visit first: pick its unit.'), row: place.row };
  const sets = [...rowsOf(session, table)].filter(
    (row) =>
      !row.isFree &&
      row.shown('unit_id') === here.shown('unit_id') &&
      row.shown('visit_id') === here.shown('visit_id'),
  );
  const number = Math.max(0, ...sets.map((row) => Number(row.fieldValue('set_no')) || 0)) + 1;
  const values: Record<string, string> = {};
  for (const [field, { carries }] of entries) {
    const word = here.shown(field);
    if (carries === undefined || word === '' || here.isWorkedOut(field)) continue;
    if (carries === 'all' || carries.includes(word.toLowerCase())) values[field] = here.typed(field);
  }
  return put(session, table, lastTypedRow(table.table) + 1, {
    ...values,
    set_no: String(number),
    stage: nextStage(here, sets),
    date_time: at,
    minutes_since_change: '0',
  });
}

/** What is done between two sets: cleaning what was dirty, nothing more where all is well, else a step of the charge. */
function nextStage(here: RecordTableRow, sets: readonly RecordTableRow[]): string {
  const looks = ['filter', 'evap_coil', 'cond_coil', 'vents', 'fan'].map((field) => here.shown(field));
  if (looks.some((word) => word === 'dirty' || word === 'blocked')) return 'after cleaning';
  if (answerInHand(here)?.state === 'good') return 'final';
  const steps = sets.map((row) => Number(/ (\d+)$/.exec(row.shown('stage'))?.[1] ?? 0));
  return `after step ${Math.max(0, ...steps) + 1}`;
}

/** The readings are taken now: the time of the set, and the minutes since the change with it. */
export function readNow(session: LogSession, place: VisitPlace, at: string): VisitStep {
  const table = visitTableOf(session.workbook);
  if (table === undefined) return { outcome: refused(noLog), row: place.row };
  const here = new RecordTableRow(session, table, place.row);
  const before = here.fieldValue('date_time');
  const minutes = here.fieldValue('minutes_since_change');
  const now = typedDate(at, session.workbook.dateSystem, 'month first')?.serial;
  const values: Record<string, string> = { date_time: at };
  if (typeof before === 'number' && typeof minutes === 'number' && now !== undefined) {
    const since = Math.round((now - before) * 1440 + minutes);
    if (since >= 0 && since <= longestMinutes) values['minutes_since_change'] = String(since);
  }
  return put(session, table, place.row, values);
}

function put(
  session: LogSession,
  { table, columns }: RecordSheet,
  row: number,
  values: Readonly<Record<string, string>>,
): VisitStep {
  const cells: Typed[] = [];
  for (const [field, typed] of Object.entries(values)) {
    const column = columns.get(field);
    if (column !== undefined && typed !== '') cells.push({ row, column, typed });
  }
  return { outcome: session.type(table.sheet.index, cells, true), row };
}
