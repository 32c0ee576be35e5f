import type { Answered, Instruments, Knowledge, UnitFacts } from '../visit/answer/index.ts';
import { answerSet, defaultInstruments, nothingKnown } from '../visit/answer/index.ts';
import type { Finding, RecordRow } from './field.ts';
import { foldHeading } from './match-headings.ts';
import { gasOf, personOf, unitFactsOf, visitSetOf } from './visit-facts.ts';

export interface LogEntry {
  readonly row: RecordRow;
  /** Cells of the row that could not be read. */
  readonly unreadable: readonly Finding[];
}

export interface LogQuestion {
  /** Every row gets an answer, in this order. */
  readonly log: readonly LogEntry[];
  readonly register?: readonly RecordRow[] | undefined;
  /** Undefined: there is no list, so nobody is missing from it. */
  readonly staff?: readonly RecordRow[] | undefined;
  /** Rows of visits before those of the log, of any units. */
  readonly earlier?: readonly LogEntry[] | undefined;
  readonly instruments?: Instruments | undefined;
}

/** Units, persons and visits as people vary them: "W-12" and " w-12 " are one. */
function keyOf(row: RecordRow, name: string): string {
  const value = row[name];
  return value === undefined ? '' : foldHeading(String(value));
}

function firstByKey(rows: readonly RecordRow[], name: string): ReadonlyMap<string, RecordRow> {
  const found = new Map<string, RecordRow>();
  for (const row of rows) {
    const key = keyOf(row, name);
    if (key !== '' && !found.has(key)) found.set(key, row);
  }
  return found;
}

/** Persons of a staff list by their short name. */
export type People = ReadonlyMap<string, RecordRow>;

export function peopleOf(staff: readonly RecordRow[]): People {
  return firstByKey(staff, 'technician_id');
}

/** How units are told apart in logs and registers. */
export function unitKeyOf(row: RecordRow): string {
  return keyOf(row, 'unit_id');
}

/** Everything about one unit. */
export interface UnitLog {
  /** Every entry gets an answer, in this order. */
  readonly log: readonly LogEntry[];
  /** Visits before those of the log. */
  readonly earlier: readonly LogEntry[];
  readonly registered: RecordRow | undefined;
  /** Undefined: there is no staff list. */
  readonly people: People | undefined;
  readonly instruments?: Instruments | undefined;
  /** For a caller that asks again after an edit: may give an answer it kept for the same entry and the same knowledge. */
  readonly recall?: ((entry: LogEntry, before: Knowledge, answer: () => Answered) => Answered) | undefined;
}

interface Placed extends LogEntry {
  /** Where in the log it stands; undefined for a row of an earlier visit. */
  readonly index: number | undefined;
  readonly entry?: LogEntry;
}

/**
 * What to do next after every row of one unit. Sets follow each other in the order of their times, set numbers where times are
 * blank, wherever the rows stand and whoever took them.
 *
 * @returns an answer for each row of the log, in the order of the rows
 */
export function answerUnit(given: UnitLog): readonly Answered[] {
  const { log, earlier, registered, people, instruments = defaultInstruments } = given;
  const unit: UnitFacts = registered === undefined ? {} : unitFactsOf(registered);
  const placed: Placed[] = [
    ...earlier.map((entry) => ({ ...entry, index: undefined })),
    ...log.map((entry, index) => ({ ...entry, index, entry })),
  ];
  const answers: Answered[] = [];
  let known: Knowledge = nothingKnown;
  const { recall = (_entry, _before, answer) => answer() } = given;
  for (const { row, unreadable, index, entry } of inOrder(placed)) {
    const before = known;
    const answered = recall(entry ?? { row, unreadable }, before, () => answerOne(row, unreadable, before));
    known = answered.known;
    if (index !== undefined) answers[index] = answered;
  }
  return answers;

  function answerOne(row: RecordRow, unreadable: readonly Finding[], before: Knowledge): Answered {
    const person = personOf(row, people?.get(keyOf(row, 'technician_id')), people !== undefined);
    const set = visitSetOf(row, unreadable);
    return answerSet({
      // Where the register is silent, what the row says of the label stands.
      unit: { ...unit, refrigerant: unit.refrigerant ?? gasOf(set.gasInUnit) },
      person,
      set,
      before,
      instruments,
    });
  }
}

/**
 * What to do next after every row of a log of many units. A visit's number belongs to its unit.
 *
 * @returns an answer for each row, in the order of the rows
 */
export function answerLog(question: LogQuestion): readonly Answered[] {
  const { log, register = [], staff, earlier = [], instruments } = question;
  const units = firstByKey(register, 'unit_id');
  const people = staff && peopleOf(staff);
  const rowsOf = new Map<string, number[]>();
  log.forEach(({ row }, index) => {
    const key = unitKeyOf(row);
    const rows = rowsOf.get(key);
    if (rows) rows.push(index);
    else rowsOf.set(key, [index]);
  });
  const answers: Answered[] = [];
  for (const [key, rows] of rowsOf) {
    const answered = answerUnit({
      log: rows.flatMap((index) => log[index] ?? []),
      earlier: earlier.filter(({ row }) => unitKeyOf(row) === key),
      registered: units.get(key),
      people,
      instruments,
    });
    rows.forEach((index, place) => {
      const one = answered[place];
      if (one !== undefined) answers[index] = one;
    });
  }
  return answers;
}

/** Earlier visits first, then by time; where a time is blank, by the number of the set within its visit. */
function inOrder(rows: readonly Placed[]): readonly Placed[] {
  const visitStart = new Map<string, number>();
  for (const { row } of rows) {
    const at = row['date_time'];
    const visit = keyOf(row, 'visit_id');
    if (typeof at === 'number') visitStart.set(visit, Math.min(at, visitStart.get(visit) ?? Infinity));
  }
  const startOf = ({ row }: Placed): number => visitStart.get(keyOf(row, 'visit_id')) ?? Infinity;
  return [...rows].sort((one, other) => {
    const early = Number(one.index !== undefined) - Number(other.index !== undefined);
    if (early !== 0) return early;
    const visits = startOf(one) - startOf(other);
    if (keyOf(one.row, 'visit_id') !== keyOf(other.row, 'visit_id') && visits !== 0 && !Number.isNaN(visits))
      return visits;
    return byTime(one.row, other.row) || (one.index ?? 0) - (other.index ?? 0);
  });
}

function byTime(one: RecordRow, other: RecordRow): number {
  const { date_time: at, set_no: set } = one;
  const { date_time: otherAt, set_no: otherSet } = other;
  if (typeof at === 'number' && typeof otherAt === 'number' && at !== otherAt) return at - otherAt;
  return typeof set === 'number' && typeof otherSet === 'number' ? set - otherSet : 0;
}
