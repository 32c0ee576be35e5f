import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { provenanceOf, provenanceRules, provenanceText } from '../../../functions/release/provenance.ts';

const root = join(import.meta.dirname, '../../..');
const notices = readFileSync(join(root, 'NOTICES.md'), 'utf8');
const rules = provenanceRules(notices);
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>;
};

describe('where the figures come from', () => {
  test('every file of figures is in exactly one line of NOTICES.md', () => {
    const wrong = provenanceOf(root, rules).filter((entry) => entry.rules.length !== 1);
    expect(wrong.map(({ file, rules: found }) => `${file}: ${found.length} lines`)).toEqual([]);
  });

  test('a file without a line stops the release', () => {
    const without = provenanceOf(
      root,
      rules.filter(({ files }) => files !== 'src/data/blends/*.ts'),
    ).filter((entry) => entry.rules.length === 0);
    const blends = readdirSync(join(root, 'src/data/blends'));
    expect(without.map(({ file }) => file).sort()).toEqual(
      blends.map((name) => `src/data/blends/${name}`).sort(),
    );
  });

  test('every line names files that are there, a source and how they were made', () => {
    const entries = provenanceOf(root, rules);
    for (const rule of rules) {
      expect(
        entries.some((entry) => entry.rules.includes(rule)),
        rule.files,
      ).toBe(true);
      expect(rule.source.length, rule.files).toBeGreaterThan(10);
      const [, script] = /^npm run (\w+)$/.exec(rule.madeBy) ?? [];
      if (script !== undefined) expect(scripts, rule.files).toHaveProperty(script);
      else expect(rule.madeBy).toMatch(/^by hand|^npx vitest run tests\/golden -u$/);
    }
  });

  test('every equation and mixing pair names a paper of the bibliography', () => {
    const bibliography = readFileSync(join(root, 'src/data/references.bib'), 'utf8');
    const known = new Set([...bibliography.matchAll(/^@\w+\{([^,\s]+),/gm)].map(([, key]) => key));
    const admitted = new Set([...bibliography.matchAll(/^% (\S+): not in/gm)].map(([, key]) => key));
    const files = [
      ...readdirSync(join(root, 'src/data/equations')).map((name) => `src/data/equations/${name}`),
      'src/data/mixing/pairs.ts',
      'src/data/mixing/departures.ts',
    ];
    for (const file of files) {
      const keys = [...readFileSync(join(root, file), 'utf8').matchAll(/source: '([^']+)'/g)];
      expect(keys.length, file).toBeGreaterThan(0);
      const unknown = keys.map(([, key]) => key).filter((key) => !known.has(key) && !admitted.has(key));
      expect(unknown, file).toEqual([]);
    }
  });

  test('tables of expected values carry a source in every row or at their head', () => {
    const entries = provenanceOf(root, rules).filter(({ file }) => /^tests\/standards\/.*\.csv$/.test(file));
    expect(entries.length).toBeGreaterThan(0);
    for (const { file } of entries) {
      const lines = readFileSync(join(root, file), 'utf8').split(/\r?\n/);
      if (lines[0]?.startsWith('#')) expect(lines[0], file).toMatch(/CoolProp \d+\.\d+\.\d+/);
      else {
        const column = lines[0]?.split(',').indexOf('source') ?? -1;
        expect(column, file).toBeGreaterThanOrEqual(0);
        const rows = lines.slice(1).filter((row) => row !== '');
        for (const row of rows) {
          const cells = [...row.matchAll(/(?:^|,)("(?:[^"]|"")*"|[^,]*)/g)].map(([, cell]) => cell ?? '');
          expect(cells[column]?.length, `${file}: ${row}`).toBeGreaterThan(3);
        }
      }
    }
  });

  test('the list of the release has a checksum for each', () => {
    const lines = provenanceText(root).trimEnd().split('\n').slice(1);
    expect(lines).toHaveLength(provenanceOf(root, rules).length);
    for (const line of lines) {
      const [, file = '', sha256 = ''] = /^([^,]+),([^,]+),/.exec(line) ?? [];
      expect(existsSync(join(root, file)), file).toBe(true);
      expect(sha256).toMatch(/^[0-9a-f]{64}$/);
    }
  });
});
