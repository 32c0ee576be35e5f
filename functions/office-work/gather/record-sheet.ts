import {
  cylinderMovements,
  cylinderRegister,
  foldHeading,
  guessHeading,
  matchHeadings,
  unitRegister,
  visitLog,
} from '../../../src/records/index.ts';
import type { Field, HeadingProblem, MatchedColumn, RecordTable } from '../../../src/records/index.ts';
import { findUnit } from '../../../src/units/conversion.ts';
import type { Unit } from '../../../src/units/quantities.ts';
import type { SheetReader } from '../../catalogue/records/read-table.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { noRules } from './reading-rules.ts';
import type { ReadingRules } from './reading-rules.ts';
import type { SheetValues } from './sheet-values.ts';
import { readWrittenDate } from './written-dates.ts';
import type { TypedElsewhere } from './typed-elsewhere.ts';
import { typedColumnHeading, typedElsewhere } from './typed-elsewhere.ts';

/** The tables that logs are searched for. */
export const gatheredTables: readonly RecordTable[] = [
  visitLog,
  unitRegister,
  cylinderRegister,
  cylinderMovements,
];

/** A sheet that holds one of the declared tables. */
export interface RecordSheet {
  readonly table: RecordTable;
  readonly sheetName: string;
  readonly reader: SheetReader;
  /** Index of the first row with values. */
  readonly firstRow: number;
  /** Index of the heading row. */
  readonly headingRow: number;
  /** Headings in doubt; what they hold is not read. */
  readonly problems: readonly HeadingProblem[];
  /** Columns under headings that mean no field, or one that another column holds; what they hold is kept as text. */
  readonly others: readonly { readonly index: number; readonly heading: string }[];
  /** Columns whose heading was guessed. */
  readonly guessed: readonly { readonly heading: string; readonly field: Field }[];
  /** Set for a sheet that repeats what was typed on another one. */
  readonly typedElsewhere: TypedElsewhere | undefined;
}

/** Headings stand below a title, not below a page of text. */
const rowsSearched = 40;

/** Fewer known headings than this are a coincidence. */
const fewestHeadings = 3;

/**
 * Without these a table is no ledger or register. A summary made from the log repeats its units, dates and ounces but
 * not the numbers of its sets; reading it as well would count every ounce twice.
 */
const needed = new Map<RecordTable, readonly string[]>([
  [visitLog, ['unit_id', 'visit_id', 'set_no', 'date_time', 'added']],
  [unitRegister, ['unit_id', 'refrigerant', 'nameplate']],
  [cylinderRegister, ['cyl_id', 'tare']],
  [cylinderMovements, ['cyl_id', 'date', 'gross_before', 'gross_after']],
]);

/** A log that has no numbers of visits and sets at all is read too, when the file holds nothing better. */
const leastOfALog = ['unit_id', 'date_time', 'added'];

/** Every declared table in the sheets of one file, wherever its headings stand and in whatever order. */
export function findRecordSheets(
  sheets: readonly SheetValues[],
  units: UnitSystem,
  rules: ReadingRules = noRules,
): RecordSheet[] {
  const strict = sheets.flatMap((sheet) => bestTable(sheet, units, needed, rules) ?? []);
  if (strict.some(({ table }) => table === visitLog)) return strict;
  const loose = sheets.flatMap(
    (sheet) => bestTable(sheet, units, new Map([[visitLog, leastOfALog]]), rules) ?? [],
  );
  const [log] = loose.sort((one, other) => other.reader.columns.length - one.reader.columns.length);
  return log === undefined ? strict : [...strict.filter(({ sheetName }) => sheetName !== log.sheetName), log];
}

/** The sheet that holds one declared table with these fields; where several do, the one with most of its columns. */
export function findTableSheet(
  sheets: readonly SheetValues[],
  units: UnitSystem,
  table: RecordTable,
  names: readonly string[],
): RecordSheet | undefined {
  return sheets
    .flatMap((sheet) => bestTable(sheet, units, new Map([[table, names]]), noRules) ?? [])
    .sort((one, other) => other.reader.columns.length - one.reader.columns.length)[0];
}

interface Found {
  readonly table: RecordTable;
  readonly row: number;
  readonly columns: readonly MatchedColumn[];
  readonly problems: readonly HeadingProblem[];
  readonly guessed: RecordSheet['guessed'];
}

function bestTable(
  sheet: SheetValues,
  units: UnitSystem,
  demanded: ReadonlyMap<RecordTable, readonly string[]>,
  rules: ReadingRules,
): RecordSheet | undefined {
  let best: Found | undefined;
  for (let row = 0; row < Math.min(rowsSearched, sheet.rows.length); row += 1) {
    const headings = (sheet.rows[row] ?? []).map(textOf);
    if (headings.filter((text) => text !== '').length < fewestHeadings) continue;
    for (const [table, names] of demanded) {
      const found = columnsOf(table, sheet, row, headings, rules);
      // A column in an impossible unit is there all the same; whoever reads the file is told.
      const unfit = found.problems.filter(({ kind }) => kind === 'wrong-unit');
      const present = new Set([...found.columns, ...unfit].map(({ field }) => field.name));
      if (found.columns.length < fewestHeadings || !names.every((name) => present.has(name))) continue;
      if (found.columns.length > (best?.columns.length ?? 0)) best = found;
    }
  }
  if (best === undefined) return undefined;
  const { table, row, problems, guessed } = best;
  const above = unitsRow(sheet.rows[row - 1] ?? [], best.columns);
  const below = unitsRow(sheet.rows[row + 1] ?? [], best.columns);
  const stated = above ?? below;
  const columns = stated === undefined ? best.columns : withUnits(best.columns, stated);
  const taken = new Set(columns.map(({ index }) => index));
  return {
    table,
    sheetName: sheet.name,
    reader: { table, columns, units },
    headingRow: row,
    firstRow: row + (above === undefined && below !== undefined ? 2 : 1),
    problems,
    guessed,
    others: (sheet.rows[row] ?? []).flatMap((cell, index) => {
      const heading = textOf(cell);
      return heading === '' || heading === typedColumnHeading || taken.has(index) ? [] : [{ index, heading }];
    }),
    typedElsewhere: typedElsewhere(sheet, row),
  };
}

/** The columns of a heading row: by their declared names, by what the office ruled, then by likeness. */
function columnsOf(
  table: RecordTable,
  sheet: SheetValues,
  row: number,
  headings: readonly string[],
  rules: ReadingRules,
): Found {
  const { columns, unknown, problems } = matchHeadings(table, headings);
  const taken = new Set(columns.map(({ field }) => field.name));
  const more: MatchedColumn[] = [];
  const guessed: { heading: string; field: Field }[] = [];
  const open = new Set(unknown);
  headings.forEach((heading, index) => {
    if (!open.has(heading)) return;
    const ruled = rules.heading(table, heading);
    if (ruled === null) return;
    const meanings = ruled === undefined ? guessHeading(table, heading) : [{ field: ruled, unit: undefined }];
    const fit = meanings.filter(({ field }) => !taken.has(field.name) && holds(sheet, row, index, field));
    const [only] = fit;
    if (only === undefined || fit.length > 1) return;
    taken.add(only.field.name);
    more.push({ index, ...only });
    if (ruled === undefined) guessed.push({ heading, field: only.field });
  });
  return { table, row, columns: [...columns, ...more], problems, guessed };
}

const rowsTried = 60;
const fitShare = 0.6;

/** Whether the cells of a column look like values of a field. A column without values may be anything. */
function holds(sheet: SheetValues, headingRow: number, index: number, field: Field): boolean {
  let filled = 0;
  let fit = 0;
  for (let row = headingRow + 1; row < sheet.rows.length && filled < rowsTried; row += 1) {
    const cell = sheet.rows[row]?.[index];
    if (isBlank(cell)) continue;
    filled += 1;
    if (looksLike(cell, field)) fit += 1;
  }
  return fit >= fitShare * filled;
}

function looksLike(cell: CellInput, field: Field): boolean {
  const text = typeof cell === 'string' ? cell.trim() : undefined;
  switch (field.kind) {
    case 'number':
      return typeof cell === 'number' || (text !== undefined && /^[<>~]?\s*[+-]?\.?\d/.test(text));
    case 'date':
    case 'dateTime':
      return typeof cell === 'number' || (text !== undefined && readWrittenDate(text) !== undefined);
    case 'refrigerant':
      return text !== undefined && /^r[\s-]?\d/i.test(text);
    case 'choice': {
      const folded = foldHeading(text ?? '');
      return (field.choices ?? []).some((choice) => folded.startsWith(foldHeading(choice)));
    }
    case 'yesNo':
      return typeof cell === 'boolean' || (text !== undefined && /^(?:y|n|yes|no|true|false|x)$/i.test(text));
    default:
      return typeof cell === 'string' || typeof cell === 'number';
  }
}

function textOf(cell: CellInput): string {
  return typeof cell === 'string' ? cell.trim() : '';
}

/** The units that a row states, by column; undefined when the row is no row of units. */
function unitsRow(
  row: readonly CellInput[],
  columns: readonly MatchedColumn[],
): ReadonlyMap<number, Unit> | undefined {
  const stated = new Map<number, Unit>();
  for (const { index, field } of columns) {
    const cell = row[index];
    if (isBlank(cell)) continue;
    const unit =
      typeof cell === 'string' && field.quantity !== undefined
        ? findUnit(field.quantity, cell.replace(/^[([]|[)\]]$/g, ''))
        : undefined;
    // A row of values has texts, dates and numbers; in a row of units nothing but units stands under known headings.
    if (unit === undefined) return undefined;
    stated.set(index, unit);
  }
  return stated.size === 0 ? undefined : stated;
}

/** A unit inside a heading stands before that of the row of units. */
function withUnits(columns: readonly MatchedColumn[], stated: ReadonlyMap<number, Unit>): MatchedColumn[] {
  return columns.map((column) => ({ ...column, unit: column.unit ?? stated.get(column.index) }));
}
