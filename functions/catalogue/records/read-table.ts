import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { CalcError } from '../../../src/errors.ts';
import {
  atmosphereOfRow,
  headingProblemText,
  matchHeadings,
  missingHeadings,
} from '../../../src/records/index.ts';
import type {
  FieldValue,
  Finding,
  MatchedColumn,
  RecordRow,
  RecordTable,
} from '../../../src/records/index.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { readRecordCell } from './read-cell.ts';

export type Cells = readonly CellInput[];

/** How the columns of one sheet are read. */
export interface SheetReader {
  readonly table: RecordTable;
  readonly columns: readonly MatchedColumn[];
  readonly units: UnitSystem;
}

export interface ReadRow {
  readonly row: RecordRow;
  /** Cells that could not be read. */
  readonly unreadable: readonly Finding[];
}

/**
 * Reads the heading row of a sheet.
 *
 * @throws CalcError invalid-argument, parameter `parameter`, when a field stands twice, a unit does not fit, or a
 * field that is needed is missing
 */
export function sheetReader(
  table: RecordTable,
  headings: Cells,
  options: { readonly units: UnitSystem; readonly parameter: string; readonly needed?: readonly string[] },
): SheetReader {
  const { units, parameter, needed = [] } = options;
  const texts = headings.map((cell) =>
    typeof cell === 'string' ? cell : typeof cell === 'number' ? String(cell) : '',
  );
  const { columns, problems } = matchHeadings(table, texts);
  const [problem] = problems;
  if (problem !== undefined)
    throw wrongHeading(
      parameter,
      `the headings of ${parameter} are unclear: ${headingProblemText(problem)}`,
      texts,
    );
  const missing = missingHeadings(table, columns, needed);
  if (missing.length > 0) {
    throw wrongHeading(
      parameter,
      `${parameter} has no column ${missing.join(', ')}; its first row must be the headings`,
      texts,
    );
  }
  return { table, columns, units };
}

function wrongHeading(parameter: string, message: string, texts: readonly string[]): CalcError {
  const seen = texts.filter((text) => text !== '').slice(0, 8);
  return new CalcError(message, {
    code: 'invalid-argument',
    parameter,
    received: seen.length === 0 ? 'no headings' : seen.join(', '),
    limit: 'a heading row with declared names',
  });
}

const seaLevelPa = standardAtmospherePa(0);

/** The units of a column: its heading's before the call's. Kept per sheet, since a sheet has many rows. */
const columnUnits = new WeakMap<MatchedColumn, { readonly call: UnitSystem; readonly units: UnitSystem }>();

function unitsOf(column: MatchedColumn, call: UnitSystem): UnitSystem {
  const { field, unit } = column;
  if (unit === undefined || field.quantity === undefined) return call;
  const known = columnUnits.get(column);
  if (known?.call === call) return known.units;
  const units = { ...call, [field.quantity]: unit };
  columnUnits.set(column, { call, units });
  return units;
}

interface Selection {
  /** Read last: they depend on the elevation of the row. */
  readonly gauges: readonly MatchedColumn[];
  readonly others: readonly MatchedColumn[];
}

const everyField: ReadonlySet<string> = new Set();

const selections = new WeakMap<SheetReader, Map<ReadonlySet<string>, Selection>>();

/** The columns of a sheet that are asked for, worked out once and not row by row. */
function selection(sheet: SheetReader, only: ReadonlySet<string> = everyField): Selection {
  const bySet = selections.get(sheet) ?? new Map<ReadonlySet<string>, Selection>();
  selections.set(sheet, bySet);
  const known = bySet.get(only);
  if (known) return known;
  const wanted = sheet.columns.filter(({ field }) => only === everyField || only.has(field.name));
  const isGauge = ({ field }: MatchedColumn): boolean => field.quantity === 'pressure';
  const made = { gauges: wanted.filter(isGauge), others: wanted.filter((column) => !isGauge(column)) };
  bySet.set(only, made);
  return made;
}

/** One row → values by field name. Blank cells stay undefined, zero is a value. */
export function readRow(sheet: SheetReader, cells: Cells, only?: ReadonlySet<string>): ReadRow {
  const row: Record<string, FieldValue | undefined> = {};
  const unreadable: Finding[] = [];
  const read = (column: MatchedColumn, atmospherePa: number): void => {
    const cell = cells[column.index];
    if (isBlank(cell)) return;
    try {
      row[column.field.name] = readRecordCell(column.field, cell, {
        units: unitsOf(column, sheet.units),
        atmospherePa,
      });
    } catch (error) {
      if (!(error instanceof CalcError)) throw error;
      unreadable.push({ field: column.field.name, severity: 'reject', message: [error.message] });
    }
  };
  const { gauges, others } = selection(sheet, only);
  for (const column of others) read(column, seaLevelPa);
  if (gauges.length === 0) return { row, unreadable };
  // Gauges read from the air pressure of the row's own site; a reading marked absolute counts from vacuum.
  const fromPa = row['gauge_reference'] === 'absolute' ? 0 : atmosphereOfRow(row);
  for (const column of gauges) read(column, fromPa);
  return { row, unreadable };
}

/** True when nothing is typed in any declared column. */
export function isEmptyRow(sheet: SheetReader, cells: Cells): boolean {
  return sheet.columns.every(({ index }) => isBlank(cells[index]));
}
