import { cylinderMovements, cylinderRegister, unitRegister, visitLog } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { CalcError } from '../../../src/errors.ts';
import { readRecordCell } from '../../catalogue/records/read-cell.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { unitSystem } from '../../runtime/unit-system.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { extrasIn, extrasText } from '../gather/cell-texts.ts';
import type { GatheredRow } from '../gather/gathered-row.ts';
import { rowsIn } from '../gather/read-log.ts';
import type { ReadingQuestion, ReadingRules } from '../gather/reading-rules.ts';
import { findRecordSheets } from '../gather/record-sheet.ts';
import { readRows } from '../gather/read-rows.ts';
import { noRules } from '../gather/reading-rules.ts';
import type { AsideRow } from '../gather/settle/fleet-gathering.ts';
import type { SettledRow } from '../gather/settle/ruling.ts';
import type { SheetValues } from '../gather/sheet-values.ts';
import type { FleetFile } from './fleet-file.ts';
import { tableRows, tableValues } from './fleet-file.ts';

/** The tables of records of a fleet workbook. */
export const fleetTables = new Map<string, RecordTable>([
  ['Ledger', visitLog],
  ['Register', unitRegister],
  ['CylinderList', cylinderRegister],
  ['Movements', cylinderMovements],
]);

/** What the workbook is written in. */
export function unitsWordOf(fleet: FleetFile): 'US' | 'SI' {
  return settingOf(fleet, 'log_units') === 'SI' ? 'SI' : 'US';
}

/** A single cell by its name. */
export function settingOf(fleet: FleetFile, name: string): CellInput {
  const formula = fleet.names.find((entry) => entry.name === name)?.formula ?? '';
  const match = /^'?(.*?)'?!\$?([A-Z]+)\$?(\d+)$/.exec(formula);
  if (match === null) return null;
  const [, sheet = '', letters = '', row = '0'] = match;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return fleet.values.get(sheet.replaceAll("''", "'"))?.rows[Number(row) - 1]?.[column] ?? null;
}

export function settledRows(fleet: FleetFile): SettledRow[] {
  return tableRows(fleet, 'Settled').flatMap(({ at, text }) => {
    const row = {
      kind: text('Kind'),
      written: text('As written'),
      file: text('File'),
      suggested: text('Suggested'),
      why: text('Why'),
      ruling: text('Ruling'),
      at,
    };
    return row.kind === '' && row.written === '' ? [] : [row];
  });
}

/** The rows that count already, each with its place in the workbook. Headings that were settled since are read now. */
export function baseRows(fleet: FleetFile, rules: ReadingRules): GatheredRow[] {
  const units = unitSystem(unitsWordOf(fleet));
  return [...fleetTables].flatMap(([name, table]) => {
    const sheet = tableValues(fleet, name);
    const from = findRecordSheets([sheet], units).find((found) => found.table === table);
    if (from === undefined) return [];
    const extra = tableRows(fleet, name);
    const first = extra[0]?.at ?? 0;
    return [...readRows(name, sheet, from, true, noRules)].map((row) => {
      const at = row.place.row;
      const cells = extra[at - first];
      const base: GatheredRow = { ...row, at, changed: new Set() };
      if (table !== visitLog || cells === undefined) return { ...base, print: undefined, extras: undefined };
      const sheetName = cells.text('Sheet');
      base.place = {
        file: cells.text('File'),
        sheet: sheetName === '' ? undefined : sheetName,
        row: Number(cells.text('Row')) || at,
      };
      base.print = cells.text('Print');
      const unread = cells.text('Not read');
      base.extras = unread === '' ? undefined : unread;
      base.values = { ...base.values, verdict: cells.text('Verdict') || undefined };
      readSettledHeadings(base, rules, units);
      return base;
    });
  });
}

/** Columns that were kept as text until the office said what their heading means. */
function readSettledHeadings(row: GatheredRow, rules: ReadingRules, units: UnitSystem): void {
  if (row.extras === undefined) return;
  const left: [string, string][] = [];
  for (const [heading, text] of extrasIn(row.extras)) {
    const field = rules.heading(visitLog, heading);
    if (field === undefined || field === null || row.values[field.name] !== undefined) {
      left.push([heading, text]);
      continue;
    }
    try {
      const value = readRecordCell(field, text, { units, atmospherePa: 101_325 });
      row.values = { ...row.values, [field.name]: value };
      row.changed?.add(field.name);
    } catch (problem) {
      if (!(problem instanceof CalcError)) throw problem;
      left.push([heading, text]);
    }
  }
  const extras = extrasText(left);
  if (extras !== row.extras) row.changed?.add('(extras)');
  row.extras = extras;
}

const shown: readonly (readonly [column: string, field: string])[] = [
  ['Unit as written', 'Unit'],
  ['Visit as written', 'Visit'],
  ['Set as written', 'Set'],
  ['Date as written', 'Date and time'],
  ['Added as written', 'Added'],
];

/** What was set aside, read again by what is settled now. A cell that the office typed over there stands. */
export function asideRows(
  fleet: FleetFile,
  rules: ReadingRules,
): { readonly aside: AsideRow[]; readonly questions: { file: string; question: ReadingQuestion }[] } {
  const units = unitSystem(unitsWordOf(fleet));
  const groups = new Map<string, { file: string; sheet: string; rows: ReturnType<typeof tableRows> }>();
  for (const row of tableRows(fleet, 'SetAside')) {
    if (row.text('All of it') === '') continue;
    const [file, sheet] = [row.text('File'), row.text('Sheet')];
    const key = `${file}\u0001${sheet}`;
    const group = groups.get(key) ?? { file, sheet, rows: [] };
    group.rows.push(row);
    groups.set(key, group);
  }
  const aside: AsideRow[] = [];
  const questions: { file: string; question: ReadingQuestion }[] = [];
  for (const { file, sheet, rows } of groups.values()) {
    const log = rowsIn(file, [sheetOf(sheet, rows, units)], units, rules);
    for (const question of log.questions) questions.push({ file, question });
    const byPrint = new Map(rows.map((row) => [row.text('Print'), row]));
    for (const row of log.rows) {
      const told = byPrint.get(row.print ?? '');
      const state = (told?.text('State') ?? 'open') as AsideRow['state'];
      aside.push({ row, why: told?.text('Why') ?? '', state });
    }
  }
  return { aside, questions };
}

function sheetOf(name: string, rows: ReturnType<typeof tableRows>, units: UnitSystem): SheetValues {
  const headings = new Map<string, number>();
  const mass = ` (${units.mass.symbol})`;
  for (const heading of ['Unit', 'Visit', 'Set', 'Date and time', `Added${mass}`])
    headings.set(heading, headings.size);
  const cells = rows.map((row) => {
    const told = new Map(extrasIn(row.text('All of it')));
    for (const [column, field] of shown) {
      const heading =
        [...told.keys()].find((key) => key === field || key.startsWith(`${field} (`)) ??
        (field === 'Added' ? `Added${mass}` : field);
      const typed = row.text(column);
      if (typed !== '' && typed !== (told.get(heading) ?? '')) told.set(heading, typed);
    }
    for (const heading of told.keys()) if (!headings.has(heading)) headings.set(heading, headings.size);
    const line: CellInput[] = [];
    for (const [heading, text] of told) line[headings.get(heading) ?? 0] = text;
    return line;
  });
  return {
    name,
    rows: [[...headings.keys()], ...cells],
    rowNumbers: [undefined, ...rows.map((row) => Number(row.text('Row')) || row.at)],
    prints: [undefined, ...rows.map((row) => row.text('Print'))],
  };
}
