import type * as DuckDb from '@duckdb/node-api';
import type { DuckDBConnection } from '@duckdb/node-api';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';
import { CalcError } from '../../../src/errors.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import type { LedgerUnits } from './ledger-columns.ts';
import { ledgerColumns, literal } from './ledger-columns.ts';
import { byMonth, byUnit } from './summary-queries.ts';

export type SummaryKind = 'month' | 'unit';

export interface LedgerSummary {
  readonly rowsRead: number;
  readonly repeated: number;
  /** Rows that share the key of a row that counts and do not say the same. */
  readonly conflicts: readonly string[];
  readonly conflictCount: number;
  /** Cells that should hold a weight or a date and do not. */
  readonly unreadable: readonly string[];
  readonly unreadableCount: number;
  readonly added: number;
  readonly rowsWritten: number;
}

/** So many of each kind are told one by one. */
const told = 20;

/**
 * Sums up a ledger of any size from CSV or Parquet into a CSV or Parquet file: the rows never are in this program's memory.
 * Rows count once by unit, visit and set, as when logs are gathered.
 *
 * @param registerFunctions - brings our functions into the engine that the rows go through
 * @param target - written whole; the caller moves it to its place
 */
export async function summarizeLedger(given: {
  readonly files: readonly string[];
  readonly units: LedgerUnits;
  readonly unitsWord: 'US' | 'SI';
  readonly kind: SummaryKind;
  readonly target: string;
  readonly registerFunctions: (connection: DuckDBConnection) => Promise<void>;
}): Promise<LedgerSummary> {
  const { DuckDBInstance } = await importDuckDb();
  const instance = await DuckDBInstance.create(':memory:');
  const connection = await instance.connect();
  try {
    await given.registerFunctions(connection);
    return await summarize(connection, given);
  } finally {
    connection.closeSync();
    instance.closeSync();
  }
}

async function importDuckDb(): Promise<typeof DuckDb> {
  try {
    return await import('@duckdb/node-api');
  } catch {
    throw new FileError(
      'unreadable',
      'ledgers of this size need DuckDB, an optional package that is not installed here; run: npm install @duckdb/node-api',
    );
  }
}

type Given = Parameters<typeof summarizeLedger>[0];

async function summarize(connection: DuckDBConnection, given: Given): Promise<LedgerSummary> {
  await readEntries(connection, given.files, given.units);
  await nameGases(connection);
  const rowsRead = await count(connection, 'SELECT count(*) FROM entries');
  const unreadableRows = `FROM entries WHERE (added IS NULL AND added_text IS NOT NULL)
    OR (recovered IS NULL AND recovered_text IS NOT NULL) OR (hose IS NULL AND hose_text IS NOT NULL)
    OR moment IS NULL`;
  const conflictRows = `FROM later WHERE content <> first_content`;
  const repeatedRows = `FROM later WHERE content = first_content`;
  const query = given.kind === 'month' ? byMonth(given.unitsWord) : byUnit(given.unitsWord);
  await connection.run(`CREATE TEMP TABLE summary AS ${query}`);
  const format = /\.parquet$/i.test(given.target) ? 'FORMAT parquet' : 'FORMAT csv, HEADER';
  await connection.run(`COPY summary TO ${literal(given.target)} (${format})`);
  const where = `file || ', row ' || (row_in_file + header) `;
  return {
    rowsRead,
    repeated: await count(connection, `SELECT count(*) ${repeatedRows}`),
    conflictCount: await count(connection, `SELECT count(*) ${conflictRows}`),
    conflicts: await texts(
      connection,
      `SELECT ${where} || ': ' || concat_ws(' / ', unit_id, visit_id, set_no) ${conflictRows} ORDER BY place LIMIT ${told}`,
    ),
    unreadableCount: await count(connection, `SELECT count(*) ${unreadableRows}`),
    unreadable: await texts(
      connection,
      `SELECT ${where} || ': ' || concat_ws(', ',
        CASE WHEN moment IS NULL THEN 'date "' || coalesce(moment_text, '') || '"' END,
        CASE WHEN added IS NULL AND added_text IS NOT NULL THEN 'added "' || added_text || '"' END,
        CASE WHEN recovered IS NULL AND recovered_text IS NOT NULL THEN 'recovered "' || recovered_text || '"' END,
        CASE WHEN hose IS NULL AND hose_text IS NOT NULL THEN 'hose "' || hose_text || '"' END)
      ${unreadableRows} ORDER BY place LIMIT ${told}`,
    ),
    added: (await number(connection, 'SELECT sum(added) FROM ledger')) ?? 0,
    rowsWritten: await count(connection, 'SELECT count(*) FROM summary'),
  };
}

/** The rows of all files as they stand there, then those that count. */
async function readEntries(
  connection: DuckDBConnection,
  files: readonly string[],
  units: LedgerUnits,
): Promise<void> {
  const parts: string[] = [];
  for (const file of files) {
    const isParquet = /\.parquet$/i.test(file);
    const source = isParquet
      ? `read_parquet(${literal(file)})`
      : `read_csv(${literal(file)}, all_varchar = true, header = true, null_padding = true)`;
    const headings = await tried(file, () =>
      texts(connection, `SELECT column_name FROM (DESCRIBE FROM ${source})`),
    );
    const columns = await tried(file, () => Promise.resolve(ledgerColumns(headings, units)));
    parts.push(`SELECT ${literal(file)} AS file, row_number() OVER () AS row_in_file, ${isParquet ? 0 : 1} AS header,
  ${columns} FROM ${source}`);
  }
  await connection.run('CREATE TEMP SEQUENCE places');
  const [first = ''] = files;
  await tried(first, () =>
    connection.run(
      `CREATE TEMP TABLE entries AS SELECT nextval('places') AS place, * FROM (${parts.join('\nUNION ALL\n')}) WHERE unit_id IS NOT NULL`,
    ),
  );
}

/** One spelling for each gas: "r410a" and "R-410A" are one. */
async function nameGases(connection: DuckDBConnection): Promise<void> {
  const found = await texts(connection, 'SELECT DISTINCT gas_text FROM entries WHERE gas_text IS NOT NULL');
  await connection.run('CREATE TEMP TABLE gases (gas_text VARCHAR, gas VARCHAR)');
  for (const text of found) {
    await connection.run(`INSERT INTO gases VALUES (${literal(text)}, ${literal(designation(text))})`);
  }
  await connection.run(`CREATE TEMP TABLE keyed AS
    SELECT *, lower(unit_id) AS unit_key, lower(visit_id) AS visit_key,
      hash(moment, coalesce(gas, gas_text), added, recovered, hose, reason, verified_on) AS content,
      -- A row whose key has a gap is known by all it says.
      CASE WHEN visit_id IS NULL OR set_no IS NULL THEN content END AS gap_key
    FROM entries LEFT JOIN gases USING (gas_text)`);
  await connection.run(`CREATE TEMP TABLE firsts AS
    SELECT unit_key, visit_key, set_no, gap_key, min(place) AS first_place, arg_min(content, place) AS first_content,
      count(*) AS copies
    FROM keyed GROUP BY unit_key, visit_key, set_no, gap_key`);
  await connection.run(`CREATE TEMP VIEW later AS
    SELECT keyed.*, first_content FROM keyed JOIN (FROM firsts WHERE copies > 1) AS repeats
      ON keyed.unit_key = repeats.unit_key AND keyed.visit_key IS NOT DISTINCT FROM repeats.visit_key
      AND keyed.set_no IS NOT DISTINCT FROM repeats.set_no AND keyed.gap_key IS NOT DISTINCT FROM repeats.gap_key
    WHERE place > first_place`);
  await connection.run(`CREATE TEMP VIEW ledger AS
    SELECT unit_id, coalesce(visit_id, 'day ' || moment::DATE) AS visit_id, moment, moment::DATE AS day,
      coalesce(gas, gas_text, 'unknown') AS gas, added, recovered, hose, reason, verified_on
    FROM keyed WHERE moment IS NOT NULL AND place NOT IN (SELECT place FROM later)`);
}

function designation(text: string): string {
  try {
    return findRefrigerant(text).designation;
  } catch (error) {
    if (error instanceof CalcError) return text;
    throw error;
  }
}

/** DuckDB's own words say which line of which file it could not read. */
async function tried<T>(file: string, action: () => Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (error) {
    if (error instanceof FileError) throw new FileError(error.code, `${file}: ${error.message}`);
    const [line = ''] = (error instanceof Error ? error.message : String(error)).split('\n\n');
    throw new FileError(
      'corrupt',
      `${file}: ${line
        .replace(/^\w+ Error: /i, '')
        .split('\n')
        .slice(0, 3)
        .join(' ')}`,
    );
  }
}

async function texts(connection: DuckDBConnection, query: string): Promise<string[]> {
  const [column = []] = (await connection.runAndReadAll(query)).getColumns();
  return column.map(String);
}

async function number(connection: DuckDBConnection, query: string): Promise<number | undefined> {
  const [column = []] = (await connection.runAndReadAll(query)).getColumns();
  const [value] = column;
  return value === null || value === undefined ? undefined : Number(value);
}

async function count(connection: DuckDBConnection, query: string): Promise<number> {
  return (await number(connection, query)) ?? 0;
}
