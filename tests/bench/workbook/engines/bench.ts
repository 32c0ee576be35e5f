/**
 * Our workbook engine beside two open ones on the same .xlsx file: `npm run bench -- engines [ROUNDS] [ROWS …]`. Rounds take
 * turns between the engines, each in a fresh process; times count only when the values agree.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { growthExponent, leastAndMedian, reportRows } from '../../table-rows.ts';
import type { Figure, TableRow } from '../../table-rows.ts';
import { benchFolder } from '../kept-file.ts';
import { otherEngines } from './environment.ts';
import { ledgerFile } from './ledger-file.ts';
import type { Job, Kind } from './ledger-file.ts';
import { firstDifference, playRound } from './round.ts';
import type { Round } from './round.ts';

const rounds = Number(process.argv[2] ?? 3);
const sizes = process.argv.slice(3).map(Number);
const rowCounts = sizes.length > 0 ? sizes : [1_000, 10_000, 50_000];
/** Another engine that needs longer for one round is told as such and asked no more. */
const secondsAtMost = Number(process.env['SECONDS'] ?? 300);
const kinds: readonly Kind[] = ['standard functions', 'eight own calls a row'];

interface Played {
  readonly rounds: Round[];
  problem: string | undefined;
  /** Stopped once, it would be stopped again. */
  isStopped: boolean;
}

const tasks = ['read and work out', 'edit that its row reads', 'edit that every sum reads'] as const;

function times(round: Round, task: number): number[] {
  return task === 0
    ? [round.open.processor]
    : (round.edits[task - 1] ?? []).map(({ processor }) => processor);
}

function play(job: Job, engines: readonly string[]): Map<string, Played> {
  const played = new Map<string, Played>(
    engines.map((engine) => [engine, { rounds: [], problem: undefined, isStopped: false }]),
  );
  for (let turn = 0; turn < rounds; turn++) {
    for (const [engine, state] of played) {
      if (state.problem !== undefined || state.isStopped) continue;
      const round = playRound(engine, job, engine === 'ours' ? 10 * secondsAtMost : secondsAtMost);
      if (typeof round === 'string') {
        state.problem = round;
        continue;
      }
      const ours = played.get('ours')?.rounds[0] ?? round;
      const difference =
        firstDifference(ours.values, round.values, job) ??
        (round.after === null ? undefined : firstDifference(ours.after ?? [], round.after, job));
      if (difference !== undefined) state.problem = `another value: ${difference}`;
      else state.rounds.push(round);
      state.isStopped = round.after === null;
    }
  }
  return played;
}

const rows: TableRow[] = [];
mkdirSync(benchFolder, { recursive: true });
const all = new Map<string, { rows: number; least: number }[]>();
for (const kind of kinds) {
  for (const rowCount of rowCounts) {
    const { bytes, job } = ledgerFile(rowCount, kind);
    const path = join(benchFolder, `ledger-${rowCount}-${kind.replaceAll(' ', '-')}.xlsx`);
    writeFileSync(path, bytes);
    const others = otherEngines.filter(({ takesFunctions }) => job.custom === '' || takesFunctions);
    const played = play({ ...job, path }, ['ours', ...others.map(({ id }) => id)]);
    tasks.forEach((task, index) => {
      const figures = (engine: string): Figure | string => {
        const state = played.get(engine);
        if (state === undefined || state.problem !== undefined) return state?.problem ?? 'not asked';
        const measured = state.rounds.flatMap((round) => times(round, index));
        if (measured.length === 0) return `not done after ${secondsAtMost} s`;
        const figure = leastAndMedian(measured);
        const key = `${kind}, ${task}\u0000${engine}`;
        all.set(key, [...(all.get(key) ?? []), { rows: rowCount, least: figure.least }]);
        return figure;
      };
      const ours = figures('ours');
      if (typeof ours === 'string') throw new Error(`our engine: ${ours}`);
      others.forEach(({ id, name, version }) => {
        const theirs = figures(id);
        rows.push({
          part: 'workbook engine',
          what: `${kind}, ${task}`,
          size: `${rowCount} rows`,
          unit: 'ms',
          ours,
          other: { name: `${name} ${version}`, figure: theirs },
        });
      });
    });
  }
}
for (const [key, points] of all) {
  const [what = '', engine = ''] = key.split('\u0000');
  if (points.length < 2) continue;
  const other = otherEngines.find(({ id }) => id === engine);
  rows.push({
    part: 'growth exponent',
    what: `${what}: ${other === undefined ? 'ours' : `${other.name} ${other.version}`}`,
    size: points.map(({ rows: count }) => count).join(' → '),
    unit: '',
    growth: growthExponent(points.map(({ rows: count, least }) => [count, least])),
  });
}
reportRows('engines', rows, [
  ...otherEngines.map(({ name, version, licence }) => `${name} ${version}: ${licence}, from PyPI`),
  'milliseconds of processor time, all threads together; reading the file counts with the first working out',
]);
