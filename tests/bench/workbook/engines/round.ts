import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { pythonWithEngines } from './environment.ts';
import type { Job } from './ledger-file.ts';

export interface Timed {
  readonly processor: number;
  readonly wall: number;
}

export interface Round {
  readonly open: Timed;
  readonly edits: readonly (readonly Timed[])[];
  readonly values: readonly unknown[];
  /** Null when the engine was stopped before the last edit. */
  readonly after: readonly unknown[] | null;
}

/** One round of one engine in a fresh process, or the reason why there is none. */
export function playRound(engine: string, job: Job, secondsAtMost: number): Round | string {
  const [command, args] =
    engine === 'ours'
      ? [process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'ours.ts')]]
      : [pythonWithEngines(), [join(import.meta.dirname, 'others.py'), engine]];
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    input: JSON.stringify(job),
    encoding: 'utf8',
    timeout: secondsAtMost * 1_000,
    maxBuffer: 2 ** 28,
  });
  // A line cut off in the middle says nothing; whatever an engine prints of its own comes before.
  const last = stdout
    .split('\n')
    .slice(0, -1)
    .findLast((line) => line.startsWith('{'));
  if (error === undefined && status !== 0) {
    return `failed: ${stderr.trim().split('\n').at(-1) ?? 'without a word'}`;
  }
  return last === undefined ? `not done after ${secondsAtMost} s` : (JSON.parse(last) as Round);
}

/** Where two lists of values differ; numbers may differ by the last digits of a sum. */
export function firstDifference(
  ours: readonly unknown[],
  theirs: readonly unknown[],
  job: Job,
): string | undefined {
  for (let index = 0; index < ours.length; index++) {
    const [one, other] = [ours[index], theirs[index]];
    if (one === other) continue;
    if (typeof one === 'number' && typeof other === 'number') {
      if (Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one))) continue;
    }
    const [sheet, row, column] = job.checked[index] ?? [0, 0, 0];
    return `sheet ${sheet} row ${row} column ${column}: ${String(one)} here, ${String(other)} there`;
  }
  return undefined;
}
