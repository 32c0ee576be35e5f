import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { loadWorkbook } from '../../../functions/workbook/file/load-workbook.ts';
import { savedBytes } from '../../../functions/workbook/file/save-workbook.ts';
import { generateLogs } from '../../functions/office-work/gather/generated-logs.ts';

/**
 * `npm run bench -- gather [LOGS] [SETS]`: the built command line over generated logs of three kinds, then the fleet workbook
 * it wrote, recalculated from nothing.
 */
const logs = Number(process.argv[2] ?? 200);
const sets = Number(process.argv[3] ?? 50);
const root = join(import.meta.dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'ouncewise-logs-'));
const output = join(folder, 'fleet.xlsx');

try {
  execFileSync(
    process.execPath,
    [join(root, 'node_modules/webpack/bin/webpack.js'), '--config-name', 'command-line'],
    {
      cwd: root,
      stdio: 'pipe',
    },
  );
  const generated = generateLogs(logs, sets);
  mkdirSync(join(folder, 'logs'));
  for (const { name, bytes } of generated.logs) writeFileSync(join(folder, 'logs', name), bytes);

  const report = join(folder, 'usage.json');
  const usage = join(folder, 'usage.mjs');
  writeFileSync(
    usage,
    `import { writeFileSync } from 'node:fs';
     process.on('exit', () => writeFileSync(${JSON.stringify(report)}, JSON.stringify(process.resourceUsage())));`,
  );
  const started = performance.now();
  const run = spawnSync(
    process.execPath,
    [
      '--import',
      usage,
      join(root, 'dist/command-line/ouncewise.js'),
      'gather',
      join(folder, 'logs'),
      '-o',
      output,
    ],
    { encoding: 'utf8' },
  );
  const seconds = (performance.now() - started) / 1000;
  const used = JSON.parse(readFileSync(report, 'utf8')) as {
    maxRSS: number;
    userCPUTime: number;
    systemCPUTime: number;
  };
  console.log(run.stderr.trim());
  console.log(run.stdout.trim());
  const cpu = ((used.userCPUTime + used.systemCPUTime) / 1e6).toFixed(1);
  console.log(
    `gather, ${logs} logs of ${sets} sets: ${seconds.toFixed(1)} s, processor ${cpu} s, memory ${(used.maxRSS / 1024).toFixed(0)} MB, exit code ${String(run.status)}`,
  );

  const bytes = new Uint8Array(readFileSync(output));
  let from = performance.now();
  let cpu0 = process.cpuUsage();
  const spent = (what: string): void => {
    const { user, system } = process.cpuUsage(cpu0);
    const clock = ((performance.now() - from) / 1000).toFixed(2);
    console.log(`  ${what}: ${clock} s, processor ${((user + system) / 1e6).toFixed(2)} s`);
    from = performance.now();
    cpu0 = process.cpuUsage();
  };
  for (let round = 1; round <= 3; round += 1) {
    from = performance.now();
    cpu0 = process.cpuUsage();
    const loaded = loadWorkbook(bytes, { customFunctions: catalogueFunctions });
    spent(`round ${round}, file of ${(bytes.length / 1e6).toFixed(1)} MB read`);
    loaded.workbook.recalculate({ everything: true });
    spent('recalculated');
    savedBytes(loaded, bytes);
    spent('written');
    if (round === 1) compare(loaded);
  }
} finally {
  if (process.env['KEEP'] === undefined) rmSync(folder, { recursive: true, force: true });
}

function compare({ workbook }: ReturnType<typeof loadWorkbook>): void {
  const table = workbook.findTable('Ledger');
  if (table === undefined) throw new Error('the fleet has no ledger');
  const column = table.left + table.columns.indexOf('Added');
  let ounces = 0;
  for (let row = table.firstRow; row <= table.lastRow; row += 1) {
    const value = table.sheet.value(row, column);
    if (typeof value === 'number') ounces += value;
  }
  const truth = generateLogs(logs, sets).truth.reduce((sum, set) => sum + set.addedTenths, 0) / 10;
  const same = Math.abs(ounces - truth) < 0.001;
  console.log(
    `  ${table.lastRow - table.firstRow + 1} sets, ${ounces.toFixed(1)} oz; the generator put in ${truth.toFixed(1)} oz: ${same ? 'equal' : 'NOT EQUAL'}`,
  );
  if (!same) process.exitCode = 1;
}
