import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Every text a person reads before filling a cylinder. */
const root = join(import.meta.dirname, '../..');
const folders = ['sample-workbooks', 'manifest', 'functions', 'src'];
const texts = folders.flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|md|html)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name)),
);

describe('the limit of a recovery cylinder is told by volume (49 CFR 173.304a counts a filling density of water)', () => {
  it('nowhere as 80 % by weight', () => {
    expect(texts.length).toBeGreaterThan(500);
    const wrong = texts.filter((file) =>
      /80\s*%\s*(full\s*)?(by|of its) weight/i.test(
        readFileSync(file, 'utf8').replaceAll(/half of 80 % by weight|80 % by weight would be/g, ''),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('as net weight up to 0.8 x water capacity x specific gravity, in the cautions and the guide', () => {
    for (const file of ['sample-workbooks/visit-log/cautions.ts', 'manifest/guides/office.md'])
      expect(readFileSync(join(root, file), 'utf8')).toMatch(/0\.8 × water capacity × specific gravity/);
  });
});
