import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { makeCase } from './make-case.ts';
import { watch } from './watch.ts';
import type { Watched } from './watch.ts';

const usage = `npm run fuzz -- files [--seed 1] [--count 1000] [--from 0] [--keep FOLDER]

Tries damaged and hostile workbook files. Every case that fails is kept as a file with a note beside it (in
.cache/fuzz-files unless told otherwise), and is made again with --seed S --from N --count 1.`;

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '1000' },
    from: { type: 'string', default: '0' },
    keep: { type: 'string', default: '.cache/fuzz-files' },
    help: { type: 'boolean', default: false },
  },
});
if (values.help) {
  console.log(usage);
  process.exit(0);
}
const seed = Number(values.seed);
const from = Number(values.from);
const count = Number(values.count);
if (![seed, from, count].every(Number.isSafeInteger)) {
  console.error(usage);
  process.exit(2);
}

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-fuzz-'));
const started = Date.now();
const outcomes = { result: 0, refused: 0, ended: 0 };
const slowest: Watched[] = [];
let failed = 0;
let peakBytes = 0;

function keep(watched: Watched): void {
  failed += 1;
  const { number, findings, story, fileName } = watched;
  const stem = join(values.keep, `seed-${seed}-case-${number}`);
  mkdirSync(values.keep, { recursive: true });
  const made = makeCase(seed, number);
  writeFileSync(`${stem}${made.fileName.slice(made.fileName.lastIndexOf('.'))}`, made.bytes);
  writeFileSync(`${stem}.txt`, [story || made.story, fileName, ...findings, ''].join('\n'));
  console.log(`case ${number}: ${story}\n  ${findings.join('\n  ')}`);
}

/** Asked to stop, it still says what it has done. */
let isEnough = false;
let tried = 0;
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => (isEnough = true));

await watch({
  seed,
  isEnough: () => isEnough,
  numbers: Array.from({ length: count }, (_, index) => from + index),
  folder,
  onCase: (watched) => {
    tried += 1;
    if (tried % 100 === 0) console.error(`${tried} of ${count}`);
    outcomes[watched.outcome] += 1;
    peakBytes = Math.max(peakBytes, watched.peakBytes);
    slowest.push(watched);
    slowest.sort((one, other) => other.processorMs - one.processorMs).splice(3);
    if (watched.findings.length > 0) keep(watched);
  },
});
rmSync(folder, { recursive: true, force: true });
const slow = slowest.map(({ number, processorMs }) => `${number} (${Math.round(processorMs)} ms)`).join(', ');
console.log(
  `${tried} cases of seed ${seed} from ${from}: ${outcomes.result} gave a result, ${outcomes.refused} were refused, ${outcomes.ended} had to be ended; ${failed} failed. ` +
    `Slowest: ${slow}; largest ${Math.round(peakBytes / 2 ** 20)} MiB; ${Math.round((Date.now() - started) / 1000)} s.`,
);
process.exitCode = failed === 0 ? 0 : 1;
