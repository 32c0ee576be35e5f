import type { DuckDBConnection, DuckDBValue } from '@duckdb/node-api';
import { DuckDBDateValue, DuckDBInstance, DuckDBListValue, DuckDBStructValue } from '@duckdb/node-api';
import { beforeAll, describe, expect, test } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import { catalogue } from '../../../../functions/catalogue/index.ts';
import { registerFunctions } from '../../../../functions/hosts/sql/duckdb/register.ts';
import { isRange } from '../../../../functions/runtime/broadcast.ts';
import type { CellOutput, Outcome } from '../../../../functions/runtime/cells.ts';
import type { RegisteredFunction } from '../../../../functions/runtime/registry.ts';
import { CalcError } from '../../../../src/errors.ts';
import type { Call } from '../calls.ts';
import { everyCall } from '../calls.ts';
import { sqlLiteral } from './literal.ts';

let connection: DuckDBConnection;
beforeAll(async () => {
  connection = await (await DuckDBInstance.create(':memory:')).connect();
  await registerFunctions(connection);
});

async function one(query: string): Promise<DuckDBValue> {
  const [row] = (await connection.runAndReadAll(query)).getRows();
  return row?.[0] ?? null;
}

/** A table's rows as cells without headings. */
function plain(value: DuckDBValue): unknown {
  if (value instanceof DuckDBDateValue) return value.days + 25_569;
  if (value instanceof DuckDBListValue) return value.items.map(plain);
  if (value instanceof DuckDBStructValue) return Object.values(value.entries).map(plain);
  return value;
}

function expectedOf({ returns }: RegisteredFunction, outcome: Outcome): unknown {
  const cell = (value: CellOutput, asText: boolean): unknown =>
    value === '' || typeof value === 'object' ? null : asText ? String(value) : value;
  if (returns.kind === 'table' && Array.isArray(outcome)) {
    const { columns } = returns;
    return outcome.slice(1).map((row) => row.map((value, i) => cell(value, columns[i]?.kind === 'text')));
  }
  return cell(outcome as CellOutput, ['text', 'verdict', 'fact'].includes(returns.kind));
}

describe('every call of the table in DuckDB', () => {
  test('gives what it gives in this process, and OUNCE_WHY says the same reason', async () => {
    const wrong: string[] = [];
    const compared: Call[] = everyCall().filter(({ id, args }) => {
      const parameters = Object.values(catalogue.get(id).parameters);
      return args.every((arg, i) => !isRange(arg) || ['list', 'table'].includes(parameters[i]?.kind ?? ''));
    });
    for (const { label, id, args } of compared) {
      const declaration = catalogue.get(id);
      const parameters = Object.values(declaration.parameters);
      const literals = args.map((arg, index) => sqlLiteral(arg, parameters[index]));
      const outcome = call(id, args);
      const expected = expectedOf(declaration, outcome);
      const found = plain(await one(`SELECT OUNCE_${id}(${literals.join(', ')})`));
      if (JSON.stringify(found) !== JSON.stringify(expected)) {
        wrong.push(`${label}: ${JSON.stringify(found)} instead of ${JSON.stringify(expected)}`);
      }
      const why = await one(`SELECT OUNCE_WHY(${[`'${id}'`, ...literals].join(', ')})`);
      const reason = outcome instanceof CalcError ? outcome.message : null;
      if (why !== reason) wrong.push(`${label}: why ${String(why)} instead of ${String(reason)}`);
    }
    expect(wrong).toEqual([]);
    expect(compared.length).toBeGreaterThan(2 * catalogue.all().length);
  });
});

describe('in SQL', () => {
  // Definitions: 16 oz to the pound; common practice R-22 at 68.5 psig about 40 degF is checked elsewhere.
  test.each([
    ['what may be left out is given by name', `OUNCE_READMASS('1 lb', units := 'SI')`, 453.59237],
    ['names are taken in any case', `ounce_readmass('1 lb 4 oz')`, 20],
    [
      'decimals, big integers and floats are numbers',
      `OUNCE_READMASS(1.5) + OUNCE_READMASS(2::BIGINT) + OUNCE_READMASS(0.5::FLOAT)`,
      4,
    ],
    ['NULL for a required input gives NULL', `OUNCE_READMASS(NULL)`, null],
    ['a NULL of a known type too', `OUNCE_READMASS(NULL::DOUBLE)`, null],
    ['a wrong input gives NULL', `OUNCE_READMASS('12 fl oz')`, null],
    ['a value no function takes gives NULL', `OUNCE_READMASS({'a': 1})`, null],
  ])('%s', async (_what, expression, expected) => {
    expect(await one(`SELECT ${expression}`)).toBe(expected);
  });

  test('a value no function takes is named', async () => {
    expect(await one(`SELECT OUNCE_WHY('READMASS', {'a': 1})`)).toMatch(/type STRUCT.*cannot be read/);
    expect(await one(`SELECT OUNCE_WHY('nosuch', 1)`)).toBe('no function is called nosuch');
  });

  test('each row of a column stands alone, over more rows than one batch', async () => {
    const rows = await connection.runAndReadAll(
      `SELECT x, OUNCE_SATTEMP(CASE WHEN x % 7 = 0 THEN 'R-9999' ELSE 'R-410A' END, CASE WHEN x % 5 <> 0 THEN x / 50 END) FROM range(5000) t(x) ORDER BY x`,
    );
    const found = rows.getRows();
    expect(found).toHaveLength(5000);
    for (const [x, value] of found) {
      const index = Number(x);
      const outcome = call('SATTEMP', [
        index % 7 === 0 ? 'R-9999' : 'R-410A',
        index % 5 === 0 ? null : index / 50,
      ]);
      expect(value).toBe(typeof outcome === 'number' ? outcome : null);
    }
  });

  test('a table comes back as rows', async () => {
    const outcome = call('REFRIGERANTLIST', []) as unknown[][];
    expect(
      await one(`SELECT count(*)::INTEGER FROM (SELECT unnest(OUNCE_REFRIGERANTLIST(), recursive := true))`),
    ).toBe(outcome.length - 1);
  });

  test('with errors: "fail" the query ends with the reason', async () => {
    const strict = await (await DuckDBInstance.create(':memory:')).connect();
    await registerFunctions(strict, { errors: 'fail' });
    await expect(strict.run(`SELECT OUNCE_READMASS('12 fl oz')`)).rejects.toThrow(
      /OUNCE_READMASS: .*fluid ounces/,
    );
    const blank = await strict.runAndReadAll('SELECT OUNCE_READMASS(NULL)');
    expect(blank.getRows()).toEqual([[null]]);
  });

  test('registering twice, and on a second connection of the same database, works', async () => {
    const instance = await DuckDBInstance.create(':memory:');
    for (const again of [await instance.connect(), await instance.connect()]) {
      await registerFunctions(again);
      await registerFunctions(again);
      expect((await again.runAndReadAll(`SELECT OUNCE_READMASS('1 lb')`)).getRows()).toEqual([[16]]);
    }
  });
});
