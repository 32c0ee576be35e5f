/**
 * npm run mutate                     every folder of src/ that computes, then the score of each and of all
 * npm run mutate -- access leak      some of them
 * npm run mutate -- --table          the scores of the last runs, nothing run
 *
 * MUTATION_SAMPLE=0.2 tries a fifth of the mutants, drawn by a fixed seed; MUTATION_KILLED_BEFORE=folder takes over
 * from reports copied there what tests noticed, so that after adding tests only the others are tried.
 *
 * src/data is left out: published figures, checked against their sources by tests of their own; so are the tools of
 * src/refrigerants, which write those figures and do not run for a user.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { scoreTable } from './score-table.js';

const everyFolder = [
  'numerics',
  'access',
  'air',
  'units',
  'leak',
  'charge',
  'cost',
  'records',
  'visit',
  'refrigerants',
];
const reports = '.cache/mutation';
const reportOf = (folder) => `${reports}/${folder}.json`;
const shareOf = (folder) => `${reports}/${folder}.share`;

const given = process.argv.slice(2);
const folders = given.filter((word) => !word.startsWith('--'));
const unknown = folders.filter((folder) => !everyFolder.includes(folder));
if (unknown.length > 0) {
  console.error(`no such folder: ${unknown.join(', ')}; there are ${everyFolder.join(', ')}`);
  process.exit(1);
}

/** One run for all folders given: what each test reaches is measured once. */
function mutate(chosen) {
  mkdirSync(reports, { recursive: true });
  const run = `${reports}/${chosen.join('-')}`;
  const config = {
    packageManager: 'npm',
    plugins: ['./tests/mutation/runner.js', './tests/mutation/prose.js'],
    testRunner: 'in-process',
    coverageAnalysis: 'perTest',
    ignorers: ['prose'],
    mutate: [...chosen.map((folder) => `src/${folder}/**/*.ts`), '!src/refrigerants/tools/**'],
    reporters: ['json'],
    jsonReporter: { fileName: `${run}.run.json` },
    concurrency: Number(process.env.MUTATION_WORKERS ?? 1),
    dryRunTimeoutMinutes: 15,
    timeoutMS: 20_000,
    timeoutFactor: 4,
    tempDirName: `${run}.sandbox`,
    ignorePatterns: ['dist', 'output', '.cache', 'sample-workbooks', 'manifest'],
    allowConsoleColors: false,
  };
  writeFileSync(`${run}.config.json`, JSON.stringify(config, null, 2));
  const began = Date.now();
  const { status } = spawnSync('npx', ['stryker', 'run', `${run}.config.json`], {
    stdio: 'inherit',
    env: { ...process.env, MUTATION_FOLDERS: chosen.join(' ') },
  });
  console.log(`${chosen.join(', ')}: ${Math.round((Date.now() - began) / 1000)} s`);
  if (status === 0) split(`${run}.run.json`, chosen);
  else process.exitCode = 1;
}

/** A report for each folder, so that later runs of other folders leave it alone. */
function split(file, chosen) {
  const report = JSON.parse(readFileSync(file, 'utf8'));
  for (const folder of chosen) {
    const files = Object.entries(report.files).filter(([name]) => name.startsWith(`src/${folder}/`));
    writeFileSync(reportOf(folder), JSON.stringify({ ...report, files: Object.fromEntries(files) }));
    writeFileSync(shareOf(folder), process.env.MUTATION_SAMPLE ?? '1');
  }
}

if (!given.includes('--table')) mutate(folders.length > 0 ? folders : everyFolder);

const done = everyFolder.filter((folder) => existsSync(reportOf(folder)) && existsSync(shareOf(folder)));
console.log(
  scoreTable(
    done.map((folder) => ({
      folder,
      report: JSON.parse(readFileSync(reportOf(folder), 'utf8')),
      share: Number(readFileSync(shareOf(folder), 'utf8')),
    })),
  ),
);
