/**
 * How CAUSES does on the simulated units, and how long a call takes: `npm run bench -- causes [--speed]`.
 * Tables by mask: the shipped fit; every unit answered by a fit without it; the same with designs moved further apart than they are.
 * What the rows count stands in tests/visit/simulated/exam.ts.
 */
import { causes } from '../../../src/visit/diagnosis/causes.ts';
import { rankedBeliefs } from '../../../src/visit/diagnosis/diagnose.ts';
import { responseTable } from '../../../src/visit/diagnosis/response-table.ts';
import { simulatedSets } from '../../../src/visit/diagnosis/tools/simulated-sets.ts';
import { answerTo, isExamined, masks, scoreRows, scoresOf } from '../../visit/simulated/exam.ts';
import type { Answer } from '../../visit/simulated/exam.ts';
import { tablesWithoutEach, widened } from '../../visit/simulated/held-out.ts';

const every = simulatedSets();
const sets = every.filter(isExamined);

function print(title: string, answers: readonly Answer[]): void {
  console.log(`${title.padEnd(12)}${masks.map((mask) => mask.padStart(8)).join('')}`);
  console.log(`${scoreRows(scoresOf(answers)).join('\n')}\n`);
}

function speed(name: string, run: (index: number) => void, count: number): void {
  const times: number[] = [];
  for (let index = 0; index < count; index += 1) {
    const start = performance.now();
    run(index);
    times.push(performance.now() - start);
  }
  const kept = times.slice(-1000).sort((one, other) => one - other);
  console.log(
    `${name}: median ${kept[500]!.toFixed(3)} ms, 95 % under ${kept[950]!.toFixed(3)} ms (1,000 distinct sets)`,
  );
}

if (!process.argv.includes('--speed')) {
  print(
    'shipped',
    sets.map((set) => answerTo(set)),
  );
  const tables = tablesWithoutEach(every);
  print(
    'held out',
    sets.map((set) => answerTo(set, tables.get(set.unit))),
  );
  for (const factor of [1.5, 2]) {
    const moved = widened(sets, { designs: responseTable.designs, factor, seed: 1 });
    print(
      `widened ${factor}`,
      moved.map((set) => answerTo(set, tables.get(set.unit))),
    );
  }
}
speed('CAUSES, lines', (index) => causes(sets[index]!.readings), sets.length);
speed('beliefs as data', (index) => rankedBeliefs(sets[index]!.readings), sets.length);
