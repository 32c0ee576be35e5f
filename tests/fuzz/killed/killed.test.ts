import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Chance } from '../files/chance.ts';
import { buildProgram } from './program.ts';
import { killRuns } from './kill-runs.ts';
import { scenes } from './scenes.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-kill-runs-'));
let built: Awaited<ReturnType<typeof buildProgram>>;
beforeAll(async () => {
  built = await buildProgram();
}, 120_000);
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(built.folder, { recursive: true, force: true });
});

// `npm run fuzz -- killed` does the same a hundred times.
test.each(scenes)(
  '$name: killed runs leave the old file or the new one, and nothing after the next run',
  { timeout: 240_000 },
  async (scene) => {
    const report = await killRuns({
      program: built.program,
      scene,
      folder: join(folder, scene.name.replaceAll(' ', '-')),
      runs: 5,
      chance: new Chance(5, scene.name.length),
    });
    expect(report.failures).toEqual([]);
    expect(report.killed).toBeGreaterThan(0);
  },
);
