import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Chance } from '../files/chance.ts';
import { buildProgram } from './program.ts';
import { killRuns } from './kill-runs.ts';
import { scenes } from './scenes.ts';

/** npm run fuzz -- killed [--seed 1] [--count 100] [--only recalc] */
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '100' },
    only: { type: 'string', default: '' },
  },
});

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-kill-runs-'));
const { program, folder: programFolder } = await buildProgram();
for (const [index, scene] of scenes.entries()) {
  if (!scene.name.includes(values.only)) continue;
  const chance = new Chance(Number(values.seed), index);
  const place = join(folder, scene.name.replaceAll(' ', '-'));
  const report = await killRuns({ program, scene, folder: place, runs: Number(values.count), chance });
  console.log(
    `${report.scene}: ${report.runs} runs, ${report.killed} killed; ${report.foundOld} times the old file, ${report.foundNew} times the new one; ` +
      `${report.partsLeft} part files left and taken away by the next run; ${report.failures.length} failures`,
  );
  for (const failure of report.failures) console.log(`  ${failure}`);
  if (report.failures.length > 0) process.exitCode = 1;
}
rmSync(folder, { recursive: true, force: true });
rmSync(programFolder, { recursive: true, force: true });
