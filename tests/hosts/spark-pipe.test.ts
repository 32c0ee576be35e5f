import { execFileSync } from 'node:child_process';
import { createReadStream, createWriteStream, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { once } from 'node:events';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, test } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import { outcomeJson } from '../../functions/hosts/command-line/outcome-json.ts';
import type { CallArguments } from '../../functions/runtime/call.ts';

/** A Python that has pyspark; Java has to be there too. */
const python = process.env.OUNCEWISE_SPARK_PYTHON ?? 'python3';
const count = Number(process.env.OUNCEWISE_SPARK_ROWS ?? 1_000_000);
const partitions = 8;

/** On CI it has to be there: nothing is skipped in silence. */
function sparkIsHere(): boolean {
  if (process.env.CI !== undefined) return true;
  try {
    execFileSync(python, ['-c', 'import pyspark'], { stdio: 'ignore' });
    execFileSync('java', ['-version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Different kinds of call, a wrong one among a hundred, blanks, text with units, non-ASCII. */
function request(row: number): { id: string; args: CallArguments } {
  const pressure = 40 + (row % 10_007) / 50;
  if (row % 100 === 7) return { id: 'SATTEMP', args: [`кондиционер ${row % 13}`, pressure] };
  if (row % 100 === 8) return { id: 'SATTEMP', args: ['R-22', null] };
  switch (row % 4) {
    case 0:
      return { id: 'SATTEMP', args: ['R-410A', pressure] };
    case 1:
      return { id: 'SATTEMP', args: { refrigerant: 'R-22', pressure: `${pressure} psig`, units: 'K' } };
    case 2:
      return { id: 'READMASS', args: [`1 lb ${row % 16} oz`, 'SI'] };
    default:
      return { id: 'CHARGEFOUND', args: { nameplate: 14, added: (row % 180) / 10 } };
  }
}

async function writeCalls(path: string): Promise<void> {
  const file = createWriteStream(path);
  for (let row = 0; row < count; row += 1) {
    if (!file.write(`${JSON.stringify(request(row))}\n`)) await once(file, 'drain');
  }
  file.end();
  await once(file, 'finish');
}

test.runIf(sparkIsHere())(
  'a million calls through Spark give, line by line, what they give in this process',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ouncewise-spark-'));
    try {
      const calls = join(folder, 'calls.ndjson');
      const results = join(folder, 'results');
      await writeCalls(calls);
      const program = join(import.meta.dirname, '../../dist/command-line/ouncewise.js');
      const command = `${process.execPath} ${program} call --stream`;
      const script = join(import.meta.dirname, 'spark/pipe.py');
      const said = execFileSync(python, [script, calls, results, String(partitions), command], {
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      expect(existsSync(join(results, '_SUCCESS'))).toBe(true);

      const parts = readdirSync(results)
        .filter((name) => name.startsWith('part-'))
        .sort();
      const started = performance.now();
      let row = 0;
      let errors = 0;
      const wrong: string[] = [];
      for (const part of parts) {
        for await (const line of createInterface({ input: createReadStream(join(results, part)) })) {
          const { id, args } = request(row);
          const expected = JSON.stringify(outcomeJson(call(id, args)));
          if (expected.startsWith('{"error"')) errors += 1;
          if (line !== expected && wrong.length < 5) wrong.push(`${row}: ${line} instead of ${expected}`);
          row += 1;
        }
      }
      const seconds = (performance.now() - started) / 1000;
      console.log(
        `${count} calls in ${parts.length} parts through Spark: ${said.trim()}; the same and the comparison in this process: ${seconds.toFixed(1)} s; ${errors} error answers`,
      );
      expect(wrong).toEqual([]);
      expect(row).toBe(count);
      expect(errors).toBeGreaterThan(count / 200);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
  900_000,
);
