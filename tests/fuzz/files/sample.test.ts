import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { watch } from './watch.ts';
import type { Watched } from './watch.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-fuzz-sample-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

// A fixed sample; `npm run fuzz -- files` tries any number of others.
it(
  'two hundred damaged and hostile files give a result or a plain refusal, within time and memory',
  { timeout: 900_000 },
  async () => {
    const cases: Watched[] = [];
    await watch({
      seed: 4,
      numbers: Array.from({ length: 200 }, (_, index) => index),
      folder,
      onCase: (watched) => cases.push(watched),
    });
    const failures = cases
      .filter(({ findings }) => findings.length > 0)
      .map(({ number, story, findings }) => ({ number, story, findings }));
    expect(failures).toEqual([]);
    expect(cases).toHaveLength(200);
    // Both happen often, or the cases say little.
    for (const outcome of ['result', 'refused']) {
      expect(cases.filter((watched) => watched.outcome === outcome).length).toBeGreaterThan(40);
    }
  },
);
