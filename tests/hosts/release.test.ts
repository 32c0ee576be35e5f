import { execFile, execFileSync, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { kits } from '../../functions/release/kits.ts';

const root = join(import.meta.dirname, '../..');
const run = promisify(execFile);
const work = mkdtempSync(join(tmpdir(), 'ouncewise-release-'));
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

/** The tree as it is, somewhere else. */
function copyTo(place: string): string {
  const folder = join(work, place);
  const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '-z'], {
    cwd: root,
    encoding: 'utf8',
  });
  for (const file of files.split('\0').filter((name) => name !== '' && existsSync(join(root, name)))) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    cpSync(join(root, file), join(folder, file));
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

async function releaseIn(folder: string, environment: NodeJS.ProcessEnv = {}): Promise<string> {
  await run('npm', ['run', 'release'], {
    cwd: folder,
    env: { ...process.env, ...environment },
    maxBuffer: 1 << 24,
  });
  return join(folder, 'dist/release');
}

describe('a release', () => {
  let release: string;
  let again: string;
  beforeAll(async () => {
    // Both before the first build: whoever works on the tree meanwhile changes neither.
    const places = [copyTo('one'), copyTo('some/where/else')] as const;
    release = await releaseIn(places[0]);
    again = await releaseIn(places[1], { TZ: 'Asia/Tokyo', LANG: 'de_DE.UTF-8' });
  }, 1_800_000);
  afterAll(() => rmSync(work, { recursive: true, force: true }));

  const kit = (name: string): Record<string, Uint8Array> => {
    const stem = `ouncewise-${version}-${name}`;
    const files = unzipSync(readFileSync(join(release, `${stem}.zip`)));
    return Object.fromEntries(
      Object.entries(files).map(([path, content]) => [path.slice(stem.length + 1), content]),
    );
  };

  test('the same sources make the same bytes, in another folder and time zone', () => {
    expect(readFileSync(join(again, 'SHA256SUMS'), 'utf8')).toBe(
      readFileSync(join(release, 'SHA256SUMS'), 'utf8'),
    );
  });

  test('the checksums are those of the files, and none is missing', () => {
    const lines = readFileSync(join(release, 'SHA256SUMS'), 'utf8').trimEnd().split('\n');
    const sums = Object.fromEntries(lines.map((line) => line.split('  ').reverse() as [string, string]));
    const files = readdirSync(release).filter((name) => name !== 'SHA256SUMS');
    expect(Object.keys(sums).sort()).toEqual(files.sort());
    for (const file of files) {
      expect(
        createHash('sha256')
          .update(readFileSync(join(release, file)))
          .digest('hex'),
        file,
      ).toBe(sums[file]);
    }
  });

  test.each(kits.map(({ name }) => name))('the zip for %s tells how to install it, with licences', (name) => {
    const files = kit(name);
    for (const paper of ['INSTALL.html', 'LICENSE', 'NOTICES.md', 'THIRD-PARTY.txt']) {
      expect(files[paper]?.length, paper).toBeGreaterThan(500);
    }
    const page = new TextDecoder().decode(files['INSTALL.html']);
    expect(page).toContain('class="steps"');
    expect(page).toContain('class="cautions"');
    // What the steps lead to must be in the zip.
    for (const [, link = ''] of page.matchAll(/href="([^":#]+)"/g))
      expect(files, link).toHaveProperty([link]);
    expect(Object.keys(files).filter((path) => /(^|\/)(tests|\.cache|node_modules)\/|~$/.test(path))).toEqual(
      [],
    );
  });

  test('each zip has what its host needs', () => {
    const needed: Record<string, readonly string[]> = {
      'no-add-in': ['visit-sheet.xlsx', 'visit-sheet-si.xlsx'],
      libreoffice: ['ouncewise.oxt', 'workbooks/visit-log.xlsx', 'guides/technician.html'],
      excel: [
        'add-in/manifest.xml',
        'add-in/functions.js',
        'add-in/functions.json',
        'workbooks/visit-log-excel.xlsx',
      ],
      'google-sheets': ['ouncewise.gs', 'appsscript.json', 'guide/index.html'],
      onlyoffice: ['ouncewise-onlyoffice.js'],
      sql: ['sql/definitions-library.sql', 'sql/definitions-inline.sql', 'sql/ouncewise-library.js'],
      page: ['page/index.html', 'page/worker.js', 'page/offline.js', 'page/guide/index.html'],
      workbooks: ['workbooks/fleet-summary.xlsx', 'workbooks/fleet-summary-excel.xlsx'],
      'command-line': [
        'ouncewise',
        'ouncewise.cmd',
        'dist/command-line/ouncewise.js',
        'dist/page/index.html',
      ],
    };
    expect(Object.keys(needed).sort()).toEqual(kits.map(({ name }) => name).sort());
    for (const [name, paths] of Object.entries(needed)) {
      const files = kit(name);
      for (const path of paths) expect(files, `${name}: ${path}`).toHaveProperty([path]);
    }
    expect(Object.keys(kit('libreoffice')).filter((path) => path.endsWith('-excel.xlsx'))).toEqual([]);
  });

  test('the package stays small enough to fetch on a phone', () => {
    expect(readFileSync(join(release, `ouncewise-${version}.tgz`)).length).toBeLessThan(5e6);
  });

  describe('the package, installed in an empty folder without network or install scripts', () => {
    const folder = join(work, 'user');
    const node = async (...words: string[]): Promise<string> =>
      (await run(process.execPath, words, { cwd: folder })).stdout.trim();
    const ouncewise = (...words: string[]): Promise<string> => node('node_modules/.bin/ouncewise', ...words);

    beforeAll(async () => {
      mkdirSync(folder);
      writeFileSync(join(folder, 'package.json'), '{ "private": true }');
      const tarball = join(release, `ouncewise-${version}.tgz`);
      await run('npm', ['install', '--offline', '--ignore-scripts', '--no-audit', '--no-fund', tarball], {
        cwd: folder,
      });
    });

    test('brings nothing else along', () => {
      expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
        'ouncewise',
      ]);
    });

    test('calls a function', async () => {
      // 40 degF between dew (118.4 psig) and bubble (118.8 psig): CoolProp 8.0.0, tests/standards/refrigerants.
      expect(Number(await ouncewise('call', 'SATTEMP', 'R-410A', '118.6'))).toBeCloseTo(40, 0);
    });

    test('import and require give the same names', async () => {
      const names = "Object.keys(all).filter((name) => name !== 'default').sort().join()";
      writeFileSync(join(folder, 'a.mjs'), `import * as all from 'ouncewise';\nconsole.log(${names});\n`);
      writeFileSync(join(folder, 'b.cjs'), `const all = require('ouncewise');\nconsole.log(${names});\n`);
      const imported = await node('a.mjs');
      expect(imported).toContain('CalcError');
      expect(await node('b.cjs')).toBe(imported);
    });

    test.each([
      ['node16', 'node16', ['use.mts', 'use.cts']],
      ['nodenext', 'nodenext', ['use.mts', 'use.cts']],
      ['esnext', 'bundler', ['use.mts']],
    ])('TypeScript finds the types with module %s, resolution %s', async (module, resolution, files) => {
      writeFileSync(
        join(folder, 'use.mts'),
        "import { CalcError } from 'ouncewise';\nexport const code: 'refused' | string = new CalcError('x', { code: 'refused' }).code;\n",
      );
      writeFileSync(
        join(folder, 'use.cts'),
        "import ouncewise = require('ouncewise');\nconst error: Error = new ouncewise.CalcError('x', { code: 'refused' });\nexport = error;\n",
      );
      const options = [
        '--noEmit',
        '--strict',
        '--target',
        'es2022',
        '--module',
        module,
        '--moduleResolution',
        resolution,
      ];
      await node(join(root, 'node_modules/typescript/bin/tsc'), ...options, ...files);
      writeFileSync(join(folder, 'wrong.mts'), "import { noSuchName } from 'ouncewise';\nnoSuchName();\n");
      await expect(
        node(join(root, 'node_modules/typescript/bin/tsc'), ...options, 'wrong.mts'),
      ).rejects.toThrow();
    });

    test('ledger says what is missing where DuckDB is not installed', async () => {
      writeFileSync(join(folder, 'rows.csv'), 'unit,date,added\nU-1,2026-01-01,1\n');
      await expect(ouncewise('ledger', 'rows.csv', '-o', 'out.csv')).rejects.toThrow(
        /npm install @duckdb\/node-api/,
      );
    });

    test('start serves the worksheet page', async () => {
      const server = spawn(process.execPath, ['node_modules/.bin/ouncewise', 'start'], {
        cwd: folder,
        env: { ...process.env, CI: '', OUNCEWISE_NO_BROWSER: '' },
      });
      try {
        const address = await new Promise<string>((resolve, reject) => {
          let said = '';
          server.stdout.on('data', (data: Buffer) => {
            said += data.toString();
            const [, found] = /The worksheet page: (\S+)/.exec(said) ?? [];
            if (found !== undefined) resolve(found);
          });
          server.once('exit', () => reject(new Error(`it ended: ${said}`)));
        });
        for (const path of ['', 'worker.js', 'samples/visit-log.xlsx', 'guide/index.html']) {
          expect((await fetch(`${address}${path}`)).status, path).toBe(200);
        }
      } finally {
        server.kill('SIGINT');
      }
      // An installed package is not written into.
      expect(existsSync(join(folder, 'node_modules/ouncewise/dist/visit-log.xlsx'))).toBe(false);
    });
  });

  test('the zip for the command line runs where it is unpacked', async () => {
    const folder = join(work, 'unpacked');
    for (const [path, content] of Object.entries(kit('command-line'))) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), content);
    }
    const { stdout } = await run('sh', [join(folder, 'ouncewise'), '--version'], { cwd: tmpdir() });
    expect(stdout.trim()).toBe(version);
    const output = join(work, 'add-in');
    await run('sh', [
      join(folder, 'ouncewise'),
      'bundle',
      'office',
      '--base-url',
      'https://a.example/x',
      '-o',
      output,
    ]);
    expect(readFileSync(join(output, 'manifest.xml'), 'utf8')).toContain('https://a.example/x/functions.js');
    expect(existsSync(join(output, 'THIRD-PARTY.txt'))).toBe(true);
  });
});
