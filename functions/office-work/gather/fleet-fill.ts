import {
  cylinderMovements,
  cylinderRegister,
  foldHeading,
  unitRegister,
  visitLog,
} from '../../../src/records/index.ts';
import type { Finding, RecordTable, Severity } from '../../../src/records/index.ts';
import { renderPhrase } from '../../runtime/render.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { cellOf } from './cell-of.ts';
import { cellValueOf } from './cell-value-of.ts';
import type { FillValue, TemplateFill } from '../fill/template-fill.ts';
import type { GatheredRow } from './gathered-row.ts';
import { wholeRow } from '../fleet/aside-text.ts';
import type { Conflict } from './gathering.ts';
import type { AsideRow } from './settle/fleet-gathering.ts';
import type { SettledRow } from './settle/ruling.ts';
import { momentText } from './settle/words.ts';
import type { Judge } from './judge.ts';

export type FillRow = Record<string, FillValue>;

export interface FleetFillOptions {
  readonly units: UnitSystem;
  readonly unitsWord: 'US' | 'SI';
  readonly judge: Judge;
  /** What the overview says below its title. */
  readonly gathered: string;
  readonly outfit?: string | undefined;
  readonly visitPrice?: number | undefined;
  readonly gasPrice?: number | undefined;
  /** The name of a file as the sheets show it. */
  readonly fileName: (file: string) => string;
  /** Findings of an earlier gathering, which know the cells of the files: by their words and the set they are about. */
  readonly foundBefore?: ReadonlyMap<string, { readonly cells: string; readonly file: string }> | undefined;
}

/** What a finding is about, to know it again. */
export function findingKey(line: FillRow): string {
  return ['Answer', 'Unit', 'Visit', 'Set', 'What']
    .map((heading) => String(line[heading] ?? ''))
    .join('\u0001');
}

/** Series of gases that the overview has room for; the last one stands for all others. */
const gasSeries = 8;
const firstGasColumn = 'D'.charCodeAt(0);

/** What was gathered, with what was set aside and what is asked where somebody settles such things. */
export interface Gathered {
  readonly rows: (table: RecordTable) => readonly GatheredRow[];
  readonly conflicts: readonly Conflict[];
  readonly aside?: readonly AsideRow[];
  readonly questions?: readonly SettledRow[];
}

/** Everything gathered, as the fleet template takes it. */
export function fleetFill(gathering: Gathered, options: FleetFillOptions): TemplateFill {
  const ledger = [...gathering.rows(visitLog)].sort(inOrderOfTime);
  const register = [...gathering.rows(unitRegister)].sort(byText('unit_id'));
  const cylinders = gathering.rows(cylinderRegister);
  const inConflict = new Set(gathering.conflicts.map(({ kept }) => kept));
  const gases = countedBy(ledger, 'gas_in_unit', 'added');
  const charted = new Set(
    ledger.filter((row) => number(row, 'added') > 0).map((row) => text(row, 'gas_in_unit')),
  ).size;
  const people = countedBy(ledger, 'technician_id');
  const plain = (table: RecordTable, rows: readonly GatheredRow[]): FillRow[] =>
    rows.map((row) => recordCells(table, row, options.units));
  const cylinderRows = plain(cylinderRegister, [...cylinders].sort(byText('cyl_id')));
  const toCorrect = corrections([...ledger, ...register, ...cylinders], options);
  return {
    tables: [
      {
        name: 'Ledger',
        rows: ledger.map((row) => ledgerCells(row, inConflict.has(row), options)),
      },
      { name: 'Register', rows: plain(unitRegister, register) },
      { name: 'CylinderList', rows: withUnlisted(cylinderRows, ledger) },
      { name: 'Movements', rows: plain(cylinderMovements, gathering.rows(cylinderMovements)) },
      { name: 'Corrections', rows: toCorrect, heights: toCorrect.map(correctionHeight) },
      { name: 'Settled', rows: (gathering.questions ?? []).map(settledCells) },
      { name: 'SetAside', rows: (gathering.aside ?? []).map((entry) => asideCells(entry, options)) },
      { name: 'Conflicts', rows: gathering.conflicts.flatMap((conflict) => conflictRows(conflict, options)) },
      { name: 'GasFigures', rows: gases.map((Gas) => ({ Gas })) },
      { name: 'TechnicianFigures', rows: people.map((Technician) => ({ Technician })) },
    ],
    blocks: [
      { name: 'fleet_block', rows: distinct([...register, ...ledger], 'unit_id') },
      { name: 'cylinder_block', rows: withUnlisted(cylinderRows, ledger).length },
    ],
    cells: {
      log_units: options.unitsWord,
      fleet_gathered: options.gathered,
      ...(options.outfit === undefined ? {} : { fleet_outfit: options.outfit }),
      ...(options.visitPrice === undefined ? {} : { fleet_visit_price: options.visitPrice }),
      ...(options.gasPrice === undefined ? {} : { fleet_gas_price: options.gasPrice }),
    },
    words: { mass: options.units.mass.symbol },
    absentSeries: Array.from({ length: gasSeries }, (_, place) => place)
      .filter((place) => place >= charted)
      .map((place) => `Figures!$${String.fromCharCode(firstGasColumn + place)}$5`),
  };
}

/** A set as the ledger has it, with where it came from. */
export function ledgerCells(row: GatheredRow, isInConflict: boolean, options: FleetFillOptions): FillRow {
  return {
    ...recordCells(visitLog, row, options.units),
    Verdict: row.values['verdict'],
    Mark: isInConflict ? 'conflict' : undefined,
    File: options.fileName(row.place.file),
    Sheet: row.place.sheet,
    Row: row.place.row,
    'Not read': row.extras,
    Print: row.print,
  };
}

export function settledCells({ kind, written, file, suggested, why, ruling }: SettledRow): FillRow {
  return { Kind: kind, 'As written': written, File: file, Suggested: suggested, Why: why, Ruling: ruling };
}

export function asideCells({ row, why, state }: AsideRow, { units, fileName }: FleetFillOptions): FillRow {
  const { values, written = {}, place } = row;
  const moment = values['date_time'];
  const added = visitLog.fields.find(({ name }) => name === 'added');
  const mass = added === undefined ? undefined : cellValueOf(added, values, units);
  return {
    State: state,
    Why: why,
    Ounces: mass,
    'Unit as written': values['unit_id'] ?? written['unit_id'],
    'Visit as written': values['visit_id'] ?? written['visit_id'],
    'Set as written': values['set_no'] ?? written['set_no'],
    'Date as written': typeof moment === 'number' ? momentText(moment) : written['date_time'],
    'Added as written': mass === undefined ? written['added'] : String(mass),
    File: fileName(place.file),
    Sheet: place.sheet,
    Row: place.row,
    'All of it': wholeRow(row, units),
    Print: row.print,
  };
}

export function recordCells(table: RecordTable, { values }: GatheredRow, units: UnitSystem): FillRow {
  const cells: FillRow = {};
  for (const field of table.fields) {
    if (field.origin === 'input') cells[field.heading] = cellValueOf(field, values, units);
  }
  return cells;
}

const text = ({ values }: GatheredRow, name: string): string => String(values[name] ?? '');
const number = ({ values }: GatheredRow, name: string): number => {
  const value = values[name];
  return typeof value === 'number' ? value : 0;
};

function byText(name: string): (one: GatheredRow, other: GatheredRow) => number {
  return (one, other) => compare(text(one, name), text(other, name));
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

function inOrderOfTime(one: GatheredRow, other: GatheredRow): number {
  return (
    number(one, 'date_time') - number(other, 'date_time') ||
    compare(text(one, 'unit_id'), text(other, 'unit_id')) ||
    compare(text(one, 'visit_id'), text(other, 'visit_id')) ||
    number(one, 'set_no') - number(other, 'set_no')
  );
}

/** The words of a field, the weightiest first: by the sum of another field, or by the number of rows. */
export function countedBy(rows: readonly GatheredRow[], name: string, weight?: string): string[] {
  const sums = new Map<string, number>();
  for (const row of rows) {
    const word = text(row, name);
    if (word !== '') sums.set(word, (sums.get(word) ?? 0) + (weight === undefined ? 1 : number(row, weight)));
  }
  return [...sums].sort((one, other) => other[1] - one[1] || compare(one[0], other[0])).map(([word]) => word);
}

function distinct(rows: readonly GatheredRow[], name: string): number {
  return new Set(rows.map((row) => foldHeading(text(row, name))).filter((word) => word !== '')).size;
}

/** Cylinders that only the ledger knows are listed too, so that their account shows up as open. */
export function withUnlisted(listed: readonly FillRow[], ledger: readonly GatheredRow[]): FillRow[] {
  const known = new Set(listed.map((row) => foldHeading(String(row['Cylinder'] ?? ''))));
  const more = new Map<string, FillRow>();
  for (const row of ledger) {
    const name = text(row, 'cyl_id');
    const key = foldHeading(name);
    if (name !== '' && !known.has(key) && !more.has(key)) {
      more.set(key, { Cylinder: name, Gas: text(row, 'gas_added') || undefined });
    }
  }
  return [...listed, ...more.values()];
}

const words: Readonly<Record<Severity, string>> = { reject: 'Reject', missing: 'Gaps', warn: 'Look again' };
const worstFirst: readonly Severity[] = ['reject', 'missing', 'warn'];

/** One line for each row and kind of finding. */
export function corrections(rows: readonly GatheredRow[], options: FleetFillOptions): FillRow[] {
  const found = rows.flatMap((row) => {
    const findings = options.judge.findings(row);
    return worstFirst.flatMap((severity) => {
      const own = findings.filter((finding) => finding.severity === severity);
      return own.length === 0 ? [] : [{ severity, line: correction(row, severity, own, options) }];
    });
  });
  return worstFirst.flatMap((severity) =>
    found.filter((entry) => entry.severity === severity).map(({ line }) => line),
  );
}

function correction(
  row: GatheredRow,
  severity: Severity,
  findings: readonly Finding[],
  { units, fileName, foundBefore }: FleetFillOptions,
): FillRow {
  const atmospherePa = 101_325;
  const values = row.values;
  const line = {
    Answer: words[severity],
    Unit: values['unit_id'],
    Visit: values['visit_id'],
    Set: values['set_no'],
    Technician: values['technician_id'],
    What:
      severity === 'missing'
        ? `Blank: ${findings.map(({ field }) => headingOf(row, field)).join(', ')}`
        : findings.map(({ message }) => renderPhrase(message, { units, atmospherePa })).join('; '),
    Cells: [...new Set(findings.map(({ field }) => cellOf(row, field)))].join(', '),
    File: row.at === undefined ? fileName(row.place.file) : '',
  };
  const before = row.at === undefined ? undefined : foundBefore?.get(findingKey(line));
  return before === undefined ? line : { ...line, Cells: before.cells, File: before.file };
}

function headingOf({ from }: GatheredRow, name: string): string {
  return from.table.fields.find((field) => field.name === name)?.heading ?? name;
}

/** Characters that fit into a line of the columns with the words and with the cells, and points of a line. */
const wordsWide = 84;
const cellsWide = 28;
const linePoints = 12.5;

export function correctionHeight({ What, Cells }: FillRow): number {
  const lines = (value: FillValue, wide: number): number => Math.ceil(String(value ?? '').length / wide);
  return 3 + linePoints * Math.max(1, lines(What, wordsWide), lines(Cells, cellsWide));
}

export function conflictRows({ table, kept, other, fields }: Conflict, options: FleetFillOptions): FillRow[] {
  return [kept, other].map((row) => ({
    Counts: row === kept ? 'yes' : 'no',
    Record: table.name,
    Key: table.key.map((name) => text(row, name)).join(' / '),
    'Differs in': fields.map(({ heading }) => heading).join(', '),
    Says: fields
      .map((field) => {
        const unread = row.unreadable.find((finding) => finding.field === field.name);
        const said = cellValueOf(field, row.values, options.units) ?? '(blank)';
        return `${field.heading}: ${unread === undefined ? String(said) : unread.message.map(String).join('')}`;
      })
      .join('; '),
    File: options.fileName(row.place.file),
    Row: row.place.sheet === undefined ? String(row.place.row) : `${row.place.sheet} ${row.place.row}`,
  }));
}
