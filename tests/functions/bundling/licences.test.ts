import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import webpack from 'webpack';
import {
  bundledLibraries,
  KnownLibrariesOnly,
  librariesOf,
  notPermissive,
  shippedPackages,
} from '../../../functions/bundling/shipped-packages.js';
import { thirdPartyText } from '../../../functions/bundling/third-party.ts';

const root = join(import.meta.dirname, '../../..');
const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

/** Programs that only build: no line of theirs is in what they make. */
const buildTools = [
  'marked',
  'dts-bundle-generator',
  'esbuild',
  'prettier',
  'playwright-core',
  'typescript',
  'webpack',
];
/** Loaded when the user has installed it. */
const optional = ['@duckdb/node-api'];

describe('licences of what is shipped', () => {
  const shipped = shippedPackages(root);

  test('every library inside the built files is permissive', () => {
    expect(notPermissive(shipped)).toEqual([]);
    expect(shipped.length).toBeGreaterThanOrEqual(bundledLibraries.length);
  });

  test.each([
    ['GPL-3.0-only', false],
    ['MPL-2.0', false],
    ['LGPL-2.1 AND MIT', false],
    ['UNLICENSED', false],
    ['(MIT OR GPL-2.0)', true],
    ['MIT AND ISC', true],
  ])('a library under %s: may be shipped %s', (licence, expected) => {
    const library = { name: 'x', version: '1.0.0', integrity: '', licence, needs: [] };
    expect(notPermissive([library]).length === 0).toBe(expected);
  });

  test('a copyleft library that a library of ours brings along is found', () => {
    const folder = fakeProject({
      ours: { needs: ['theirs'], licence: 'MIT' },
      theirs: { licence: 'GPL-3.0' },
    });
    const found = notPermissive(shippedPackages(folder, ['ours']));
    expect(found.map(({ name }) => name)).toEqual(['theirs']);
  });

  test('a library that does not say its licence stops the build', () => {
    const folder = fakeProject({ ours: { licence: '' } });
    expect(() => shippedPackages(folder, ['ours'])).toThrow('ours does not say its licence');
  });

  test('every import in the sources is a library on the list, a build tool or optional', () => {
    const known = [...bundledLibraries, ...buildTools, ...optional];
    const strangers = importsOf(['src', 'functions']).filter(({ name }) => !known.includes(name));
    expect(strangers).toEqual([]);
    const used = new Set(importsOf(['src', 'functions']).map(({ name }) => name));
    expect(bundledLibraries.filter((name) => !used.has(name))).toEqual([]);
  });

  test('webpack refuses a library that is not on the list', async () => {
    const folder = fakeProject({ stranger: { licence: 'MIT' } });
    writeFileSync(join(folder, 'entry.js'), "import 'stranger';\n");
    const problems = await new Promise<string[]>((resolve, reject) => {
      webpack(
        {
          mode: 'development',
          devtool: false,
          context: folder,
          entry: './entry.js',
          output: { path: join(folder, 'out') },
          plugins: [new KnownLibrariesOnly(root)],
        },
        (error, stats) => {
          if (error) reject(error);
          else resolve((stats?.toJson({ errors: true }).errors ?? []).map(({ message }) => message));
        },
      );
    });
    expect(problems).toEqual([expect.stringContaining('stranger would be shipped')]);
  });

  test('the notices carry the licence of each in full', () => {
    const text = thirdPartyText(root, shipped);
    for (const { name, version, licence } of shipped)
      expect(text).toContain(`${name} ${version} (${licence})`);
    // Each of these licences asks for the copyright line and for its own words to go along.
    const parts = text.split(/^-{100}\n(?=\S+ \S+ \()/m).slice(1);
    expect(parts).toHaveLength(shipped.length);
    for (const part of parts) {
      expect(part).toMatch(/copyright/i);
      expect(part).toMatch(/AS IS/);
    }
  });

  test('NOTICES.md lists the same libraries', () => {
    const rows = readFileSync(join(root, 'NOTICES.md'), 'utf8').matchAll(
      /^\| `([^`]+)` +\| ([\w.-]+) +\| library/gm,
    );
    expect([...rows].map(([, name, licence]) => `${name ?? ''}: ${licence ?? ''}`)).toEqual(
      shipped.map(({ name, licence }) => `${name}: ${licence}`),
    );
  });

  test('programs that build and check are permissive too, but for a few that never ship', () => {
    const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
      packages: Record<string, { license?: string }>;
    };
    const others = Object.entries(packages)
      .filter(([path, { license }]) => path !== '' && license !== undefined)
      .map(([path, { license = '' }]) => ({ name: path.replace(/.*node_modules\//, ''), licence: license }))
      .filter((entry) => notPermissive([{ ...entry, version: '', integrity: '', needs: [] }]).length > 0)
      .map(({ name, licence }) => `${name.replace(/^lightningcss-.*/, 'lightningcss-*')}: ${licence}`);
    // BlueOak is permissive; MPL binds changed files of its own; CC-BY asks for the author's name.
    expect([...new Set(others)].sort()).toEqual(
      [
        '@isaacs/nonrecursive-glob-match: BlueOak-1.0.0',
        'axe-core: MPL-2.0',
        'caniuse-lite: CC-BY-4.0',
        'graceful-fs: BlueOak-1.0.0',
        'lightningcss-*: MPL-2.0',
        'lightningcss: MPL-2.0',
        'minimatch: BlueOak-1.0.0',
      ].sort(),
    );
  });

  test('package names are told from paths', () => {
    expect(
      librariesOf([
        '/a/node_modules/@b/c/d.js',
        'C:\\a\\node_modules\\e\\f.js',
        '/a/src/g.ts',
        '/node_modules/h/node_modules/i/j.js',
      ]),
    ).toEqual(['@b/c', 'e', 'i']);
  });
});

function fakeProject(libraries: Record<string, { licence: string; needs?: readonly string[] }>): string {
  const folder = mkdtempSync(join(tmpdir(), 'ouncewise-licences-'));
  folders.push(folder);
  const packages: Record<string, unknown> = {};
  for (const [name, { licence, needs = [] }] of Object.entries(libraries)) {
    const place = join(folder, 'node_modules', name);
    mkdirSync(place, { recursive: true });
    writeFileSync(join(place, 'package.json'), JSON.stringify({ name, license: licence, main: 'index.js' }));
    writeFileSync(join(place, 'index.js'), 'globalThis.here = true;\n');
    packages[`node_modules/${name}`] = {
      version: '1.0.0',
      integrity: 'sha512-',
      dependencies: Object.fromEntries(needs.map((need) => [need, '1.0.0'])),
    };
  }
  writeFileSync(join(folder, 'package-lock.json'), JSON.stringify({ packages }));
  return folder;
}

/** Packages that are imported for more than their types. */
function importsOf(places: readonly string[]): { file: string; name: string }[] {
  return places.flatMap((place) =>
    readdirSync(join(root, place), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|js)$/.test(file) && !file.endsWith('.d.ts'))
      .flatMap((file) => {
        const text = readFileSync(join(root, place, file), 'utf8');
        const static_ = text.matchAll(
          /^(?:import|export) (?!type )[^;]*?from '((?:@[^/']+\/)?[^./'][^/']*)/gm,
        );
        const dynamic = text.matchAll(/\bimport\('((?:@[^/']+\/)?[^./'][^/']*)/g);
        return [...static_, ...dynamic]
          .map(([, name = '']) => ({ file: `${place}/${file}`, name }))
          .filter(({ name }) => !name.startsWith('node:'));
      }),
  );
}
