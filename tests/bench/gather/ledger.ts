import { createReadStream, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { DuckDBInstance } from '@duckdb/node-api';
import { registerFunctions } from '../../../functions/hosts/sql/duckdb/register.ts';
import { summarizeLedger } from '../../../functions/office-work/ledger/summarize-ledger.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';

/** `npm run bench -- ledger [ROWS]`: a ledger by unit, gas and month through DuckDB beside a plain loop over its lines. */
const rows = Number(process.argv[2] ?? 1_000_000);
const folder = mkdtempSync(join(tmpdir(), 'ouncewise-ledger-'));
const us = unitSystem('US');

async function generate(): Promise<void> {
  const instance = await DuckDBInstance.create(':memory:');
  const connection = await instance.connect();
  // 5,000 units, two years; every tenth row adds refrigerant.
  await connection.run(`CREATE TABLE ledger AS SELECT
    'U-' || (x * 7919) % 5000 AS "Unit", 'V-' || x // 3 AS "Visit", x % 3 + 1 AS "Set",
    TIMESTAMP '2024-11-01 08:00:00' + INTERVAL 1 MINUTE * (x * 1051200 // ${rows}) AS "Date and time",
    ['R-410A', 'R-22', 'R-32', 'R-407C'][((x * 7919) % 5000) % 4 + 1] AS "Gas in unit",
    CASE WHEN x % 10 = 0 THEN (x % 37 + 1) / 10 ELSE 0 END AS "Added (oz)", 0.0 AS "Recovered (oz)", 0.0 AS "Lost in hoses (oz)"
    FROM range(${rows}) t(x)`);
  for (const [name, format] of [
    ['ledger.csv', 'FORMAT csv, HEADER'],
    ['ledger.parquet', 'FORMAT parquet'],
  ] as const) {
    await connection.run(`COPY ledger TO '${join(folder, name)}' (${format})`);
  }
  connection.closeSync();
  instance.closeSync();
}

interface Sum {
  added: number;
  rows: number;
}

/** What a short script would do; it minds no repeats, no units and no broken cells. */
async function plainLoop(): Promise<Map<string, Sum>> {
  const sums = new Map<string, Sum>();
  const lines = createInterface({ input: createReadStream(join(folder, 'ledger.csv')), crlfDelay: Infinity });
  let isHeading = true;
  for await (const line of lines) {
    if (isHeading) {
      isHeading = false;
      continue;
    }
    const [unit = '', , , moment = '', gas = '', added = ''] = line.split(',');
    const key = `${unit}|${gas}|${moment.slice(0, 7)}`;
    const sum = sums.get(key);
    if (sum === undefined) sums.set(key, { added: Number(added), rows: 1 });
    else {
      sum.added += Number(added);
      sum.rows += 1;
    }
  }
  return sums;
}

async function timed<T>(what: string, action: () => Promise<T>): Promise<T> {
  const started = performance.now();
  const cpu = process.cpuUsage();
  const result = await action();
  const { user, system } = process.cpuUsage(cpu);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${what}: ${seconds} s, processor ${((user + system) / 1e6).toFixed(1)} s`);
  return result;
}

try {
  await timed(`${rows} rows generated`, generate);
  console.log(
    `CSV ${(statSync(join(folder, 'ledger.csv')).size / 1e6).toFixed(0)} MB, Parquet ${(statSync(join(folder, 'ledger.parquet')).size / 1e6).toFixed(0)} MB`,
  );
  const plain = await timed('plain loop over the CSV', plainLoop);
  const total = [...plain.values()].reduce((sum, { added }) => sum + added, 0);
  for (const [name, kind] of [
    ['ledger.csv', 'month'],
    ['ledger.parquet', 'month'],
    ['ledger.parquet', 'unit'],
  ] as const) {
    const summary = await timed(`DuckDB, ${name} by ${kind}`, () =>
      summarizeLedger({
        files: [join(folder, name)],
        units: { written: us, plain: us },
        unitsWord: 'US',
        kind,
        target: join(folder, `summary-${kind}.csv`),
        registerFunctions,
      }),
    );
    const same =
      Math.abs(summary.added - total) < 1e-3 && (kind === 'unit' || summary.rowsWritten === plain.size);
    console.log(
      `  ${summary.rowsWritten} rows, ${summary.added.toFixed(1)} oz; equal to the loop: ${same ? 'yes' : 'NO'}`,
    );
    if (!same) process.exitCode = 1;
  }
  console.log(`memory at most ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
