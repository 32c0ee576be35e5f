import { isEntry, visitLayout } from '../../../../../src/records/index.ts';
import type { VisitEntry } from '../../../../../src/records/index.ts';
import type { Typed } from '../../protocol.ts';
import type { VisitPlace } from '../../visit-protocol.ts';
import type { LogSession } from '../log-session.ts';
import type { Outcome } from '../outcome.ts';
import { refused } from '../outcome.ts';
import { lastTypedRow } from '../table-rows.ts';
import { typedDate } from '../typed-date.ts';
import { nextVisitNumber } from './visit-number.ts';
import { RecordTableRow, rowsOf, rowWith } from './visit-row.ts';
import type { RecordSheet } from './visit-table.ts';
import { unitTableOf, visitTableOf } from './visit-table.ts';
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
export function beginVisit(session: LogSession, unit: string, at: string): VisitStep {
  const found = visitTableOf(session.workbook);
  if (found === undefined) return { outcome: refused(noLog), row: 0 };
  const name = unit.trim();
  if (name === '') return { outcome: refused('A visit is to a unit: pick one, or write its name.'), row: 0 };
  const trouble = registered(session, name);
  if (trouble !== undefined) return { outcome: trouble, row: 0 };
  // The register may have grown, and with it everything was opened anew.
  const table = visitTableOf(session.workbook) ?? found;
  const visits = [...rowsOf(session, table)].filter((row) => !row.isFree).map((row) => row.shown('visit_id'));
  const technician = lastSet(session)?.typed('technician_id') ?? '';
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

function registered(session: LogSession, unit: string): Outcome | undefined {
  const register = unitTableOf(session.workbook);
  if (register === undefined || rowWith(session, register, 'unit_id', unit) !== undefined) return undefined;
  const { outcome } = put(session, register, lastTypedRow(register.table) + 1, { unit_id: unit });
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

/** What is done between two sets: cleaning when something was found dirty, else a step of the charge. */
function nextStage(here: RecordTableRow, sets: readonly RecordTableRow[]): string {
  const looks = ['filter', 'evap_coil', 'cond_coil', 'vents', 'fan'].map((field) => here.shown(field));
  if (looks.some((word) => word === 'dirty' || word === 'blocked')) return 'after cleaning';
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
