import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { catalogue } from '../catalogue/index.ts';
import { emitGuide } from '../handbook/function-guide/emit.ts';
import { cautions } from '../handbook/cautions.ts';
import { installPages } from '../handbook/install/index.ts';
import { html } from '../handbook/markup.ts';
import { styleSheet } from '../handbook/style.ts';
import { frame } from '../handbook/guides/frame.ts';
import type { Kit } from './kits.ts';
import type { ReleaseFile } from './zip.ts';
import { textFile } from './zip.ts';

type Files = Record<string, ReleaseFile>;

/** Papers that go along everywhere: the licence, what others have given, and their licences. */
const papers = {
  LICENSE: 'LICENSE',
  'NOTICES.md': 'NOTICES.md',
  'THIRD-PARTY.txt': 'dist/THIRD-PARTY.txt',
  'CHANGELOG.md': 'CHANGELOG.md',
};

/** Every file of one zip by its path inside. */
export function kitFiles(root: string, kit: Kit, version: string): Files {
  const files: Files = { 'INSTALL.html': textFile(installText(kit, version)) };
  for (const [name, path] of Object.entries(papers)) files[name] = read(root, path);
  for (const [from, to] of kit.contents) Object.assign(files, copy(root, from, to));
  if (kit.workbooks !== undefined) Object.assign(files, workbooks(root, kit.workbooks));
  if (kit.withGuides) Object.assign(files, copy(root, 'dist/guides', 'guides'));
  if (kit.withFunctionGuide) {
    const pages = Object.entries(emitGuide(catalogue.all(), version));
    // Beside the page, where the page's own link to it leads.
    const folder = kit.name === 'page' ? 'page/guide' : 'guide';
    for (const [name, text] of pages) files[`${folder}/${name}`] = textFile(text);
  }
  if (kit.name === 'command-line') Object.assign(files, packageFiles(root), launchers);
  return files;
}

/** The paths that npm packs, asked of npm itself. */
export function packedPaths(root: string): readonly string[] {
  const answer = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [packed] = JSON.parse(answer) as [{ files: readonly { path: string }[] }];
  return packed.files.map(({ path }) => path);
}

function packageFiles(root: string): Files {
  // INSTALL.html and the guides as pages stand in for what is written for readers of the source.
  const instead = /^(README\.md$|manifest\/guides\/)/;
  const paths = packedPaths(root).filter((path) => !instead.test(path) && !(path in papers));
  return Object.fromEntries(paths.map((path) => [path, read(root, path)]));
}

const launchers: Files = {
  ouncewise: {
    ...textFile('#!/bin/sh\nexec node "$(dirname "$0")/dist/command-line/ouncewise.js" "$@"\n'),
    isProgram: true,
  },
  'ouncewise.cmd': textFile('@node "%~dp0dist\\command-line\\ouncewise.js" %*\r\n'),
};

function installText(kit: Kit, version: string): string {
  const steps = 'page' in kit.install ? installPages[kit.install.page]?.body : kit.install.steps;
  if (steps === undefined) throw new Error(`no install page for ${kit.name}`);
  const body = html`<h1>${kit.title}</h1>
    ${steps}
    <h2>Cautions</h2>
    <ol class="cautions">
      ${cautions.map((caution) => html`<li>${caution}</li>`)}
    </ol>
    ${
      kit.withGuides
        ? html`<p>
            Step by step, with pictures: <a href="guides/technician.html">technician</a>,
            <a href="guides/office.html">office</a>, <a href="guides/estimator.html">estimator</a>.
          </p>`
        : ''
    }`;
  return frame({ title: kit.title, body: body.html, version, style: { text: styleSheet } });
}

function workbooks(root: string, which: 'for LibreOffice' | 'for Excel' | 'all'): Files {
  const names = readdirSync(join(root, 'sample-workbooks'))
    .filter((name) => /^[^~.].*\.xlsx$/.test(name))
    .filter((name) => which === 'all' || name.endsWith('-excel.xlsx') === (which === 'for Excel'));
  return Object.fromEntries(
    names.map((name) => [`workbooks/${name}`, read(root, `sample-workbooks/${name}`)]),
  );
}

function copy(root: string, from: string, to: string): Files {
  const source = join(root, from);
  if (statSync(source).isFile()) return { [to]: read(root, from) };
  const entries = readdirSync(source, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(source.length + 1))
    .map((path) => path.split(sep).join('/'));
  const inFolder = to === '.' ? '' : `${to}/`;
  return Object.fromEntries(entries.map((path) => [`${inFolder}${path}`, read(root, `${from}/${path}`)]));
}

function read(root: string, path: string): ReleaseFile {
  return { content: readFileSync(join(root, path)) };
}
