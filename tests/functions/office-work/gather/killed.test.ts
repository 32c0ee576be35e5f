import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { catalogueFunctions } from '../../../../functions/workbook/catalogue-functions.ts';
import { recalculate } from '../../../../functions/workbook/recalculate.ts';
import { generateLogs } from './generated-logs.ts';

const root = join(import.meta.dirname, '../../../..');
const folder = mkdtempSync(join(tmpdir(), 'ouncewise-killed-'));
const logs = join(folder, 'logs');
const output = join(folder, 'fleet.xlsx');
// The program stands inside the package, as it is installed: it finds its template from there.
const programFolder = join(root, '.cache/built', `gather-${String(process.pid)}`);
const program = join(programFolder, 'ouncewise.js');

beforeAll(() => {
  mkdirSync(logs);
  for (const { name, bytes } of generateLogs(30, 20).logs) writeFileSync(join(logs, name), bytes);
  const webpack = join(root, 'node_modules/webpack/bin/webpack.js');
  execFileSync(process.execPath, [webpack, '--config-name', 'command-line', '--output-path', programFolder], {
    cwd: root,
    stdio: 'pipe',
  });
}, 180_000);
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(programFolder, { recursive: true, force: true });
});

function gather(
  killAfterMs?: number,
): Promise<{ code: number | null; signal: string | null; ms: number; said: string }> {
  const started = performance.now();
  const child = spawn(process.execPath, [program, 'gather', logs, '-o', output], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (data: Buffer) => (said += data.toString()));
  if (killAfterMs !== undefined) setTimeout(() => child.kill('SIGKILL'), killAfterMs);
  return new Promise((resolve) => {
    child.once('close', (code, signal) => resolve({ code, signal, ms: performance.now() - started, said }));
  });
}

test(
  'a run that dies at any moment leaves the old file or the new one, never half of one',
  { timeout: 300_000 },
  async () => {
    const whole = await gather();
    // Two of the logs are damaged: the result is there, and the exit code says so.
    expect(whole.code).toBe(1);
    expect(whole.said).toContain('left out');
    const complete = readFileSync(output);
    expect(recalculate(new Uint8Array(complete), catalogueFunctions).errors).toEqual([]);

    const old = new TextEncoder().encode('the file of yesterday');
    let killed = 0;
    // The end of the run, where the file is written, is where it matters.
    for (const share of [0.1, 0.4, 0.7, 0.85, 0.92, 0.96, 0.99]) {
      writeFileSync(output, old);
      const { signal } = await gather(whole.ms * share);
      if (signal === 'SIGKILL') killed += 1;
      const left = readFileSync(output);
      expect(left.equals(old) || left.equals(complete), `killed at ${share}`).toBe(true);
    }
    // How many is up to what else the machine does: the first of them is far from the end in any case.
    expect(killed).toBeGreaterThan(0);
    // What a dead run may leave is a hidden part file, not one that looks like a result. The file as it was stands beside.
    const left = readdirSync(folder).filter((name) => name.endsWith('.xlsx'));
    expect(['fleet.previous.xlsx', 'fleet.xlsx']).toEqual(expect.arrayContaining(left));
    expect(left).toContain('fleet.xlsx');
    if (left.includes('fleet.previous.xlsx'))
      expect(readFileSync(join(folder, 'fleet.previous.xlsx')).equals(old)).toBe(true);
  },
);

test('nothing is drawn over the output when it goes into a file', { timeout: 60_000 }, async () => {
  const { said } = await gather();
  for (const control of ['\r', '\u001b']) expect(said).not.toContain(control);
});
