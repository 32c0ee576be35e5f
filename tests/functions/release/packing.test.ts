import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { packedPaths } from '../../../functions/release/contents.ts';
import { billOfMaterials } from '../../../functions/release/sbom.ts';
import { bundledLibraries, shippedPackages } from '../../../functions/bundling/shipped-packages.js';
import { textFile, zipFolder } from '../../../functions/release/zip.ts';
import { provenance } from '../../../src/data/provenance.ts';

const root = join(import.meta.dirname, '../../..');

describe('what npm packs', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ouncewise-packing-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** What a working copy may hold; only these are for users. */
  const forUsers = [
    'CHANGELOG.md',
    'LICENSE',
    'NOTICES.md',
    'README.md',
    'dist/THIRD-PARTY.txt',
    'dist/command-line/ouncewise.js',
    'dist/library/ouncewise.cjs',
    'dist/library/ouncewise.d.cts',
    'dist/library/ouncewise.d.ts',
    'dist/library/ouncewise.js',
    'dist/office/functions.js',
    'dist/page/index.html',
    'dist/page/samples/visit-log.xlsx',
    'manifest/guides/pictures/a.png',
    'manifest/guides/technician.md',
    'manifest/office/manifest.xml',
    'package.json',
    'sample-workbooks/visit-log.xlsx',
  ];
  const notForUsers = [
    '.cache/built/x.js',
    '.ci/run',
    'DEVELOPERS.md',
    'dist/guide/index.html',
    'dist/guides/technician.html',
    'dist/libreoffice/server.cjs',
    'dist/office/guide/index.html',
    'dist/release/ouncewise.zip',
    'dist/sql/definitions-inline.sql',
    'dist/visit-log.xlsx',
    'functions/release/build-dist.ts',
    'node_modules/mathjs/index.js',
    'output/fleet.xlsx',
    'package-lock.json',
    'sample-workbooks/build.ts',
    'src/index.ts',
    'tests/golden/functions.json',
    'tsconfig.json',
  ];

  beforeAll(() => {
    for (const path of [...forUsers, ...notForUsers]) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), 'x');
    }
    cpSync(join(root, 'package.json'), join(folder, 'package.json'));
  });

  test('what users need, and nothing of what only the house needs', () => {
    expect([...packedPaths(folder)].sort()).toEqual([...forUsers].sort());
  });
});

describe('zips', () => {
  const files = {
    'b.txt': textFile('two'),
    'a/start': { ...textFile('#!/bin/sh\n'), isProgram: true as const },
  };

  test('hold their files in one folder', () => {
    const found = unzipSync(zipFolder('kit', files));
    expect(Object.keys(found)).toEqual(['kit/a/start', 'kit/b.txt']);
    expect(new TextDecoder().decode(found['kit/b.txt'])).toBe('two');
  });

  test('equal files make equal bytes, in whatever order and time zone', () => {
    const before = process.env.TZ;
    const first = zipFolder('kit', files);
    process.env.TZ = 'Pacific/Auckland';
    const second = zipFolder('kit', { 'a/start': files['a/start'], 'b.txt': files['b.txt'] });
    process.env.TZ = before;
    expect(Buffer.compare(first, second)).toBe(0);
  });

  test('a program may be started, a text may not', () => {
    const bytes = Buffer.from(zipFolder('kit', files));
    const rights = (name: string): number => {
      // The central directory: 46 bytes before the name, the rights 8 bytes before the name begins.
      const entry = bytes.indexOf('PK\x01\x02', bytes.lastIndexOf(name) - 60, 'latin1');
      return bytes.readUInt32LE(entry + 38) >>> 16;
    };
    expect(rights('kit/a/start').toString(8)).toBe('100755');
    expect(rights('kit/b.txt').toString(8)).toBe('100644');
  });
});

describe('the bill of materials', () => {
  const product = { name: 'ouncewise', version: '9.9.9', description: 'x' };
  const packages = shippedPackages(root);
  const text = billOfMaterials(product, packages, provenance, bundledLibraries);
  const bill = JSON.parse(text) as {
    specVersion: string;
    serialNumber: string;
    components: { 'bom-ref': string; hashes?: { content: string }[]; licenses: unknown[] }[];
    dependencies: { ref: string; dependsOn?: string[] }[];
  };

  test('names every library with its checksum and licence, and nothing else but the data', () => {
    const libraries = bill.components.filter((component) => component.hashes !== undefined);
    expect(libraries.map((component) => component['bom-ref'])).toEqual(
      packages.map(({ name, version }) => `pkg:npm/${name.replace('@', '%40')}@${version}`),
    );
    for (const { hashes = [], licenses } of libraries) {
      expect(hashes[0]?.content).toMatch(/^[0-9a-f]{128}$/);
      expect(licenses).toHaveLength(1);
    }
    expect(bill.components).toHaveLength(packages.length + 1);
  });

  test('its references all lead somewhere', () => {
    const known = new Set(['pkg:npm/ouncewise@9.9.9', ...bill.components.map((each) => each['bom-ref'])]);
    for (const { ref, dependsOn = [] } of bill.dependencies) {
      for (const reference of [ref, ...dependsOn]) expect(known).toContain(reference);
    }
  });

  test('the same contents, the same number; other contents, another', () => {
    expect(billOfMaterials(product, packages, provenance, bundledLibraries)).toBe(text);
    expect(bill.serialNumber).toMatch(
      /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
    );
    const other = billOfMaterials({ ...product, version: '9.9.8' }, packages, provenance, bundledLibraries);
    expect(other).not.toContain(bill.serialNumber);
  });
});
