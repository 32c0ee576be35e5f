import { foldId, recordTables, unitRegister, visitLog } from '../../../../src/records/index.ts';
import type { RecordRow, RecordTable } from '../../../../src/records/index.ts';
import type { GatheredRow } from '../gathered-row.ts';
import type { Conflict } from '../gathering.ts';
import { completes, differing, keyOf } from '../gathering.ts';
import type { ReadingQuestion } from '../reading-rules.ts';
import { Evidence } from './evidence.ts';
import { IdReader } from './id-reader.ts';
import { KnownSets, sameText } from './known-sets.ts';
import { settledKey } from './ruling.ts';
import type { SettledKind, SettledRow } from './ruling.ts';
import { Rulings, dateColumnText } from './rulings.ts';
import { weighingOf } from './signature.ts';
import { TotalLines } from './total-line.ts';
import { differenceText, keyText } from './words.ts';

/** A row that is in no sum. */
export interface AsideRow {
  readonly row: GatheredRow;
  readonly why: string;
  /** open: it would count if the office said so; twice: it counts under another row; no set: it never counts. */
  readonly state: 'open' | 'twice' | 'no set' | 'settled';
  /** What an open row lacks. */
  readonly cause?: 'date' | 'unit' | 'weight';
}

interface Given {
  /** Rows of the fleet workbook that is gathered onto, each with its row number. */
  readonly base?: readonly GatheredRow[];
  /** What earlier gatherings set aside. */
  readonly aside?: readonly AsideRow[];
  readonly settled?: readonly SettledRow[];
  readonly rulings?: Rulings;
  /** The name of a file as the sheets show it. */
  readonly fileName?: (file: string) => string;
}

/** Marks a row whose version came from elsewhere than the one before. */
export const placeChanged = '(place)';

const masses = ['added', 'recovered', 'hose'] as const;

/**
 * Rows of many files, and of the fleet they are gathered onto, brought together by what they are about: unit, visit and set.
 * Nothing counts twice, nothing is dropped unseen, and what the office ruled is applied. What cannot count is set aside
 * with its reason, and what only the office can decide becomes a question.
 */
export class FleetGathering {
  readonly conflicts: Conflict[] = [];
  readonly aside: AsideRow[] = [];
  readonly questions: SettledRow[] = [];
  repeated = 0;
  /** Sets that this gathering brought. */
  added: GatheredRow[] = [];

  readonly #tables = new Map<RecordTable, { rows: GatheredRow[]; byKey: Map<string, GatheredRow[]> }>(
    recordTables.map((table) => [table, { rows: [], byKey: new Map() }]),
  );
  readonly #rulings: Rulings;
  readonly #fileName: (file: string) => string;
  readonly #asked = new Map<string, SettledRow>();
  readonly #ids: IdReader;
  readonly #prints = new Set<string>();
  readonly #sets = new KnownSets();
  readonly #evidence = new Evidence();
  readonly #pairs = new Map<string, string>();

  constructor(
    fresh: readonly GatheredRow[],
    {
      base = [],
      aside = [],
      settled = [],
      rulings = new Rulings(settled),
      fileName = (file) => file,
    }: Given = {},
  ) {
    this.#rulings = rulings;
    this.#fileName = fileName;
    this.#ids = new IdReader({
      rulings,
      evidence: this.#evidence,
      register: () => this.rows(unitRegister),
      ask: (...question) => this.#ask(...question),
    });
    const ofLog = ({ from }: GatheredRow): boolean => from.table === visitLog;
    for (const row of base.filter((own) => !ofLog(own))) this.#register(this.#renamed(row));
    for (const row of fresh.filter((own) => !ofLog(own))) this.#register(this.#renamed(row));
    for (const { values } of this.rows(unitRegister)) this.#ids.knowUnit(values['unit_id']);
    const cylinders = recordTables.find(({ name }) => name === 'cylinder register');
    if (cylinders !== undefined)
      // A cylinder without a tare is one that only the log knows: its name may be a slip.
      for (const { values } of this.rows(cylinders))
        if (values['tare'] !== undefined) this.#ids.knowCylinder(values['cyl_id']);
    for (const row of base.filter(ofLog)) this.#keep(row);
    for (const row of [...base, ...aside.map((entry) => entry.row), ...fresh].filter(ofLog))
      this.#evidence.note(row);
    for (const entry of aside) this.#again(entry);
    const totals = new TotalLines();
    for (const row of fresh.filter(ofLog)) this.#take(row, totals);
    this.#closeAside();
  }

  rows(table: RecordTable): readonly GatheredRow[] {
    return this.#tables.get(table)?.rows ?? [];
  }

  /** What reading the files left open. */
  askAll(questions: readonly { readonly file: string; readonly question: ReadingQuestion }[]): void {
    for (const { file, question } of questions) {
      if (question.kind === 'heading') {
        const { heading, guess } = question;
        const why =
          guess === undefined
            ? 'no field has this heading or one like it; what stands there is kept as text in the ledger, under Not read'
            : `read as ${guess.heading} already: its words and what stands below fit`;
        this.#ask('heading', heading, file, guess?.heading ?? '', why);
      } else if (question.kind === 'date order') {
        const { column, rows } = question;
        const why = `every date of this column makes sense both ways, such as ${column.example}; ${rows} ${rows === 1 ? 'row does' : 'rows do'} not count until it is known which number is the month`;
        this.#ask('date order', dateColumnText(column), file, 'month first', why);
      }
    }
  }

  #ask(kind: SettledKind, written: string, file: string, suggested: string, why: string): void {
    const row: SettledRow = { kind, written, file: this.#fileName(file), suggested, why, ruling: '' };
    const key = settledKey(row);
    if (this.#asked.has(key)) return;
    this.#asked.set(key, row);
    this.questions.push(row);
  }

  /** A register entry under the id that the office gave the unit. */
  #renamed(row: GatheredRow): GatheredRow {
    for (const name of ['unit_id', 'cyl_id'] as const) {
      const id = row.values[name];
      if (typeof id !== 'string') continue;
      const ruling = name === 'unit_id' ? this.#rulings.unit(id) : this.#rulings.cylinder(id);
      if (ruling !== undefined && ruling !== 'its own' && ruling.means !== id) {
        row.values = { ...row.values, [name]: ruling.means };
        row.changed?.add(name);
      }
    }
    return row;
  }

  #register(row: GatheredRow): void {
    const { table } = row.from;
    const kept = this.#tables.get(table);
    if (kept === undefined) throw new Error(`no place for ${table.name}`);
    const key = keyOf(table, row, foldId);
    const [first, ...others] = kept.byKey.get(key) ?? [];
    if (first === undefined) {
      kept.byKey.set(key, [row]);
      kept.rows.push(row);
      return;
    }
    if ([first, ...others].some((known) => differing(known, row).length === 0)) {
      this.repeated += 1;
      return;
    }
    const before = first.values;
    if (completes(first, row)) {
      for (const name of Object.keys(first.values))
        if (before[name] !== first.values[name]) first.changed?.add(name);
      this.repeated += 1;
      return;
    }
    const fields = differing(first, row).filter(({ name }) => row.values[name] !== undefined);
    if (fields.length > 0) this.conflicts.push({ table, kept: first, other: row, fields });
    kept.byKey.get(key)?.push(row);
  }

  /** A set that is in the fleet already stays there, typed cells and all; only rulings change it. */
  #keep(row: GatheredRow): void {
    const resolved = this.#resolveIds(row, true);
    this.#count(resolved);
    if (row.print !== undefined && row.print !== '')
      for (const print of row.print.split(' ')) this.#prints.add(print);
  }

  /** A row that was set aside before, in the light of what is settled now. */
  #again(entry: AsideRow): void {
    const { row, state } = entry;
    if (state === 'settled') {
      if (row.print !== undefined) this.#prints.add(row.print);
      this.aside.push(entry);
    } else if (state === 'no set') this.#judge(row, String(row.values['unit_id'] ?? 'a line without a unit'));
    else this.#judge(row, undefined);
  }

  #take(row: GatheredRow, totals: TotalLines): void {
    const total = totals.written(row);
    const { print = '' } = row;
    if (print !== '' && this.#prints.has(print)) this.repeated += 1;
    else this.#judge(row, total);
  }

  #judge(row: GatheredRow, total: string | undefined): void {
    if (row.print !== undefined && row.print !== '') this.#prints.add(row.print);
    if (total !== undefined && this.#rulings.isNoUnit(total) !== false) {
      this.#ask(
        'no unit',
        total,
        row.place.file,
        'no unit',
        'a line that adds up others; it is no set and counts for nothing',
      );
      this.aside.push({ row, why: `"${total}" adds up other lines`, state: 'no set' });
      return;
    }
    const why = this.#unfit(row);
    const resolved = this.#resolveIds(row, false);
    if (why !== undefined || resolved === undefined) {
      const reasons = [
        why,
        resolved === undefined ? `no unit ${String(row.values['unit_id'])} is known; see Settled` : undefined,
      ];
      this.aside.push({
        row,
        why: reasons.filter((text) => text !== undefined).join('; '),
        state: 'open',
        cause: causeOf(row, resolved === undefined),
      });
      return;
    }
    this.#place(resolved);
  }

  /** Why a row cannot be in any sum, whatever its unit. */
  #unfit({ values, unreadable, written = {} }: GatheredRow): string | undefined {
    const messages = unreadable
      .filter(
        ({ field }) =>
          field === 'date_time' || field === 'unit_id' || (masses as readonly string[]).includes(field),
      )
      .map(({ field, message }) =>
        field === 'date_time' && !message.map(String).join('').includes(' can be ')
          ? `"${written[field] ?? ''}" is no date that can be read`
          : message.map(String).join(''),
      );
    if (values['unit_id'] === undefined && !unreadable.some(({ field }) => field === 'unit_id'))
      messages.push('no unit');
    if (values['date_time'] === undefined && !unreadable.some(({ field }) => field === 'date_time'))
      messages.push('no date');
    return messages.length === 0 ? undefined : messages.join('; ');
  }

  /** The row with the ids that are meant; undefined when a unit is asked for first. */
  #resolveIds(row: GatheredRow, isKept: true): GatheredRow;
  #resolveIds(row: GatheredRow, isKept: boolean): GatheredRow | undefined;
  #resolveIds(row: GatheredRow, isKept: boolean): GatheredRow | undefined {
    const unit = row.values['unit_id'];
    const cylinder = row.values['cyl_id'];
    if (typeof cylinder === 'string') this.#rename(row, 'cyl_id', this.#ids.cylinder(cylinder, row));
    if (typeof unit !== 'string') return row;
    const meant = this.#ids.unit(unit, row);
    if (meant === undefined) return isKept ? row : undefined;
    this.#rename(row, 'unit_id', meant);
    return row;
  }

  #rename(row: GatheredRow, name: string, id: string): void {
    if (row.values[name] === id) return;
    row.values = { ...row.values, [name]: id };
    row.changed?.add(name);
  }

  /** Puts a set into the ledger, unless it is there. */
  #place(row: GatheredRow): void {
    const kept = this.#tables.get(visitLog);
    if (kept === undefined) throw new Error('no place for the log');
    const same = kept.byKey.get(keyOf(visitLog, row, foldId)) ?? [];
    for (const known of same) {
      const fields = differing(known, row).filter(
        ({ name }) => name !== 'unit_id' && name !== 'visit_id' && name !== 'cyl_id',
      );
      if (fields.length === 0) {
        this.repeated += 1;
        return;
      }
    }
    const [first] = same.filter((known) => !this.#byAnotherHand(known, row));
    if (first !== undefined) {
      this.#version(first, row, 'the ledger has this set already');
      return;
    }
    const twin = this.#sets.twin(row) ?? this.#paired(row);
    if (twin === undefined) {
      this.#count(row);
      this.added.push(row);
      return;
    }
    const isSameUnit = sameText(twin, row, 'unit_id');
    if (isSameUnit) this.#otherVisit(twin, row);
    else
      this.#version(
        twin,
        row,
        `the same weighing or readings stand under ${String(twin.values['unit_id'])} / ${String(twin.values['visit_id'] ?? '')}`,
      );
  }

  /** Two people on one visit both begin to count with set 1: their own sets, not versions of one. */
  #byAnotherHand(one: GatheredRow, other: GatheredRow): boolean {
    const moment = (row: GatheredRow): number => Number(row.values['date_time']);
    return (
      !sameText(one, other, 'technician_id') &&
      one.values['technician_id'] !== undefined &&
      other.values['technician_id'] !== undefined &&
      Math.abs(moment(one) - moment(other)) > 1.5 / 1440 &&
      (weighingOf(one) === undefined || weighingOf(one) !== weighingOf(other))
    );
  }

  /** A set of a visit of which another set turned out to stand under another number. */
  #paired(row: GatheredRow): GatheredRow | undefined {
    const visit = this.#pairs.get(visitKey(row.values));
    if (visit === undefined) return undefined;
    const key = keyOf(visitLog, { ...row, values: { ...row.values, visit_id: visit } }, foldId);
    const [twin] = this.#tables.get(visitLog)?.byKey.get(key) ?? [];
    const near =
      twin === undefined ? 1 : Math.abs(Number(twin.values['date_time']) - Number(row.values['date_time']));
    return near < 1 / 24 ? twin : undefined;
  }

  #otherVisit(twin: GatheredRow, row: GatheredRow): void {
    const [one, other] = [
      String(twin.values['visit_id'] ?? '(no number)'),
      String(row.values['visit_id'] ?? '(no number)'),
    ];
    const written = `${String(row.values['unit_id'])}: ${one} and ${other}`;
    const ruled = this.#rulings.areOne(written);
    if (ruled === false) {
      this.#count(row);
      this.added.push(row);
      return;
    }
    if (typeof twin.values['visit_id'] === 'string')
      this.#pairs.set(visitKey(row.values), twin.values['visit_id']);
    const why =
      weighingOf(row) === undefined
        ? 'same unit, minute, technician and ounces'
        : 'same unit, day and cylinder weights';
    this.#ask('same visit', written, row.place.file, 'one', `${why}; counts once until you say "two"`);
    this.aside.push({ row, why: `the same set stands under visit ${one}`, state: 'twice' });
  }

  /** A set that says something else than the one that counts. */
  #version(kept: GatheredRow, row: GatheredRow, because: string): void {
    const fields = differing(kept, row);
    const written = keyText(row);
    const place = `${this.#fileName(row.place.file)}${row.place.sheet === undefined ? '' : `, ${row.place.sheet}`} row ${row.place.row}`;
    const ruled =
      this.#rulings.versionCounts(written, place) ??
      this.#rulings.versionCounts(written, this.#fileName(row.place.file));
    if (ruled === true) {
      const old: GatheredRow = { ...kept, values: kept.values, at: undefined, changed: undefined };
      for (const name of [...fields.map((field) => field.name), placeChanged]) kept.changed?.add(name);
      this.#sets.drop(kept);
      kept.values = { ...kept.values, ...blanked(fields.map(({ name }) => name)), ...row.values };
      kept.place = row.place;
      kept.print = row.print;
      kept.extras = row.extras;
      this.#count(kept, false);
      this.#move(kept, old);
      this.aside.push({ row: old, why: `replaced by the version of ${place}, as settled`, state: 'settled' });
      return;
    }
    if (ruled === false) {
      this.aside.push({ row, why: 'the version in the ledger counts, as settled', state: 'settled' });
      return;
    }
    const { suggested, why } = this.#evidence.version(kept, row);
    this.#ask(
      'version',
      written,
      place,
      suggested,
      `${because}; ${differenceText(kept, row, fields)}${why}. "yes": this version counts; "no": the one in the ledger stays`,
    );
    this.conflicts.push({ table: visitLog, kept, other: row, fields });
    this.aside.push({ row, why: `${because}: ${differenceText(kept, row, fields)}`, state: 'twice' });
  }

  #count(row: GatheredRow, isNew = true): void {
    const kept = this.#tables.get(visitLog);
    if (kept === undefined) throw new Error('no place for the log');
    if (isNew) {
      const key = keyOf(visitLog, row, foldId);
      const same = kept.byKey.get(key);
      if (same === undefined) kept.byKey.set(key, [row]);
      else same.push(row);
      kept.rows.push(row);
    }
    this.#sets.add(row);
    this.#ids.seenUnit(row.values['unit_id']);
  }

  #move(row: GatheredRow, old: GatheredRow): void {
    const kept = this.#tables.get(visitLog);
    const [from, to] = [keyOf(visitLog, old, foldId), keyOf(visitLog, row, foldId)];
    if (kept === undefined || from === to) return;
    kept.byKey.set(
      from,
      (kept.byKey.get(from) ?? []).filter((other) => other !== row),
    );
    kept.byKey.set(to, [...(kept.byKey.get(to) ?? []), row]);
  }

  /** What was set aside and came again in a way that counts is no open matter any more. */
  #closeAside(): void {
    const counted = this.#tables.get(visitLog);
    this.aside.forEach((entry, index) => {
      if (entry.state !== 'open') return;
      const { row } = entry;
      const [byKey] = counted?.byKey.get(keyOf(visitLog, row, foldId)) ?? [];
      const again =
        this.#sets.byWeighing(row) ??
        (byKey !== undefined && sameMasses(byKey.values, row.values) ? byKey : undefined);
      if (again !== undefined)
        this.aside[index] = { row, why: `came again and counts as ${keyText(again)}`, state: 'settled' };
    });
  }
}

function causeOf({ values }: GatheredRow, isUnknownUnit: boolean): 'date' | 'unit' | 'weight' {
  if (values['date_time'] === undefined) return 'date';
  return isUnknownUnit || values['unit_id'] === undefined ? 'unit' : 'weight';
}

function visitKey(values: RecordRow): string {
  return `${foldId(String(values['unit_id'] ?? ''))}\u0001${foldId(String(values['visit_id'] ?? ''))}`;
}

function blanked(names: readonly string[]): RecordRow {
  return Object.fromEntries(names.map((name) => [name, undefined]));
}

function sameMasses(one: RecordRow, other: RecordRow): boolean {
  return masses.every((name) => Math.abs(Number(one[name] ?? 0) - Number(other[name] ?? 0)) < 1e-4);
}
