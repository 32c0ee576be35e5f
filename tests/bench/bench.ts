/**
 * One table of everything that is measured: `npm run bench [-- PART …]`. `npm run bench -- PART WORDS` hands the words to the
 * part's own script and shows what it prints; parts that are in no table (`alone`) always run so.
 * `npm run bench -- --kept` measures nothing and prints the table of what each part measured last.
 * Rounds of a part that measures something else beside ours take turns; the least and the median of all rounds are shown.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { runScript } from '../run-script.ts';
import { figuresOfGather, figuresOfPage, figuresOfProperties } from './printed-figures.ts';
import { tableText } from './table-rows.ts';
import type { BenchReport, TableRow } from './table-rows.ts';
import { benchFolder } from './workbook/kept-file.ts';

const rounds = Number(process.env['ROUNDS'] ?? 3);

function run(script: string, args: readonly string[] = [], report?: string): string {
  console.error(`${new Date().toISOString().slice(11, 19)} ${script} ${args.join(' ')}`);
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', join(import.meta.dirname, script), ...args],
    {
      encoding: 'utf8',
      maxBuffer: 2 ** 28,
      env: report === undefined ? process.env : { ...process.env, BENCH_REPORT: report },
    },
  );
  // The bench of gathering makes damaged logs on purpose and ends with the exit code of the command.
  if (status !== 0 && stdout === '') throw new Error(`${script} failed: ${stderr.slice(-2_000)}`);
  return stdout;
}

function reported(script: string, args: readonly string[]): BenchReport {
  mkdirSync(benchFolder, { recursive: true });
  const file = join(benchFolder, 'report.json');
  rmSync(file, { force: true });
  run(script, args, file);
  return JSON.parse(readFileSync(file, 'utf8')) as BenchReport;
}

function printed(script: string, read: (outputs: readonly string[]) => TableRow[]): BenchReport {
  return { rows: read(Array.from({ length: rounds }, () => run(script))), notes: [] };
}

const scripts = {
  properties: 'properties/bench.ts',
  engines: 'workbook/engines/bench.ts',
  edits: 'workbook/edits.ts',
  gather: 'gather/logs.ts',
  page: 'page/bench.ts',
} as const;

const alone = {
  grids: 'page/grids.ts',
  ledger: 'gather/ledger.ts',
  workbook: 'workbook/bench.ts',
  causes: 'causes/bench.ts',
} as const;

const parts: Readonly<Record<string, () => BenchReport>> = {
  properties: () => printed(scripts.properties, figuresOfProperties),
  engines: () => reported(scripts.engines, [String(rounds)]),
  edits: () => reported(scripts.edits, []),
  gather: () => printed(scripts.gather, figuresOfGather),
  page: () => printed(scripts.page, figuresOfPage),
};

const [part = '', ...words] = process.argv.slice(2);
const scriptOfPart = ({ ...scripts, ...alone } as Readonly<Record<string, string>>)[part];
if (
  scriptOfPart !== undefined &&
  (part in alone || words.some((word) => !(word in parts) && word !== '--kept'))
)
  runScript(new URL(scriptOfPart, import.meta.url), words);

const keptAt = (name: string): string => join(benchFolder, `part-${name}.json`);
const wanted = process.argv.slice(2).filter((word) => word !== '--kept');
const measuresNothing = process.argv.includes('--kept');
const unknown = wanted.filter((name) => !(name in parts));
if (unknown.length > 0)
  throw new Error(
    `no part ${unknown.join(', ')}; there are ${Object.keys({ ...scripts, ...alone }).join(', ')}`,
  );
const rows: TableRow[] = [];
const notes: string[] = [];
for (const [name, measure] of Object.entries(parts)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  if (measuresNothing && !existsSync(keptAt(name))) continue;
  const report = measuresNothing
    ? (JSON.parse(readFileSync(keptAt(name), 'utf8')) as BenchReport)
    : measure();
  if (!measuresNothing) {
    mkdirSync(benchFolder, { recursive: true });
    writeFileSync(keptAt(name), JSON.stringify(report));
  }
  rows.push(...report.rows);
  notes.push(...report.notes);
}
const [first] = cpus();
console.log(tableText(rows));
console.log(
  [
    '',
    `${cpus().length} cores (${first?.model.trim() ?? 'unknown'}), Node.js ${process.version}, ${new Date().toISOString().slice(0, 10)}`,
    ...notes,
  ].join('\n'),
);
