import { DuckDBInstance } from '@duckdb/node-api';
import { expect, test } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import { registerFunctions } from '../../functions/hosts/sql/duckdb/register.ts';

const count = 1_000_000;
const pressure = (row: number): number => 50 + (row % 20_011) / 100;

test('a million rows in DuckDB give, row by row, what a plain loop gives', async () => {
  const connection = await (await DuckDBInstance.create(':memory:')).connect();
  await registerFunctions(connection);
  const query = `SELECT OUNCE_SATTEMP('R-410A', 50 + (x % 20011) / 100::DOUBLE) FROM range(${count}) t(x) ORDER BY x`;
  let started = performance.now();
  const reader = await connection.runAndReadAll(query);
  const [found = []] = reader.getColumns();
  const inDuckDb = (performance.now() - started) / 1000;

  started = performance.now();
  let different = 0;
  for (let row = 0; row < count; row += 1) {
    if (call('SATTEMP', ['R-410A', pressure(row)]) !== found[row]) different += 1;
  }
  const inLoop = (performance.now() - started) / 1000;
  console.log(`${count} rows: DuckDB ${inDuckDb.toFixed(1)} s, plain loop ${inLoop.toFixed(1)} s`);
  expect(found).toHaveLength(count);
  expect(different).toBe(0);
});
