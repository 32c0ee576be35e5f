import { headingProblemText, matchHeadings, missingHeadings, visitLog } from '../../../src/records/index.ts';
import type { MatchedColumn } from '../../../src/records/index.ts';
import { toSi } from '../../../src/units/conversion.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';

/** What a summary needs of a ledger; the others may be missing. */
const needed = ['unit_id', 'date_time', 'added'] as const;

export interface LedgerUnits {
  /** What the summary is written in. */
  readonly written: UnitSystem;
  /** What columns are in whose heading states no unit. */
  readonly plain: UnitSystem;
}

/**
 * The select list that turns the columns of a file, named in whatever way and order, into the ones a summary works with.
 *
 * @throws FileError when a needed column is missing or a weight is in a unit that is none
 */
export function ledgerColumns(headings: readonly string[], units: LedgerUnits): string {
  const { columns, problems } = matchHeadings(visitLog, headings);
  const problem = problems.find(({ kind }) => kind === 'wrong-unit');
  if (problem !== undefined) throw new FileError('not-a-workbook', `row 1: ${headingProblemText(problem)}`);
  const missing = missingHeadings(visitLog, columns, needed);
  if (missing.length > 0) {
    throw new FileError(
      'not-a-workbook',
      `it has no column ${missing.join(', ')}; its first row must be the headings`,
    );
  }
  const by = new Map(columns.map((column) => [column.field.name, column]));
  const raw = (name: string): string => {
    const column = by.get(name);
    return column === undefined
      ? 'NULL'
      : `nullif(trim(${identifier(headings[column.index] ?? '')}::VARCHAR), '')`;
  };
  const mass = (name: string): string[] => {
    const factor = factorOf(by.get(name), units);
    return [`TRY_CAST(${raw(name)} AS DOUBLE) * ${factor} AS ${name}`, `${raw(name)} AS ${name}_text`];
  };
  return [
    `${raw('unit_id')} AS unit_id`,
    `${raw('visit_id')} AS visit_id`,
    `${raw('set_no')} AS set_no`,
    `TRY_CAST(${raw('date_time')} AS TIMESTAMP) AS moment`,
    `${raw('date_time')} AS moment_text`,
    `coalesce(${raw('gas_in_unit')}, ${raw('gas_added')}) AS gas_text`,
    `${raw('added_reason')} AS reason`,
    `TRY_CAST(${raw('verified_on')} AS DATE) AS verified_on`,
    ...mass('added'),
    ...mass('recovered'),
    ...mass('hose'),
  ].join(',\n  ');
}

/** One of the column's unit in the unit of the summary. */
function factorOf(column: MatchedColumn | undefined, { written, plain }: LedgerUnits): number {
  const from = column?.unit ?? plain.mass;
  return toSi(1, from, 0) / toSi(1, written.mass, 0);
}

function identifier(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

export function literal(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}
