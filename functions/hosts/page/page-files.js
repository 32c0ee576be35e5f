import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import webpack from 'webpack';

/** Forms that the page fills; nobody opens them as they are. */
const forms = ['fleet-template.xlsx'];

const titles = {
  'visit-log.xlsx': 'visit log',
  'visit-sheet.xlsx': 'visit sheet for any program, nothing to install',
  'visit-sheet-si.xlsx': 'the same in SI units',
  'repair-or-replace.xlsx': 'repair or replace',
  'fleet-summary.xlsx': 'fleet summary',
  'function-guide.xlsx': 'every function, live',
};

/** Stands in the offline worker until every file is known. */
const stampPlace = 'stamp-of-build';

/** Puts the page's own files and the sample workbooks beside the built scripts, and tells the offline worker of them. */
export class PageFiles {
  constructor(root) {
    this.root = root;
    const shell = join(root, 'manifest/page');
    const samples = join(root, 'sample-workbooks');
    // Folders list their files in whatever order; the same sources must make the same bytes.
    this.files = new Map(
      readdirSync(shell)
        .sort()
        .map((name) => [name, join(shell, name)]),
    );
    const names = readdirSync(samples)
      .filter((name) => /^(?!.*-excel\.xlsx$)[^~].*\.xlsx$/.test(name))
      .sort();
    for (const name of names) this.files.set(`samples/${name}`, join(samples, name));
    this.index = JSON.stringify(
      names
        .filter((name) => !forms.includes(name))
        .map((file) => ({ file, title: titles[file] ?? file.replace(/\.xlsx$/, '').replaceAll('-', ' ') }))
        .sort((one, other) =>
          one.file === 'visit-log.xlsx'
            ? -1
            : other.file === 'visit-log.xlsx'
              ? 1
              : one.file < other.file
                ? -1
                : 1,
        ),
    );
  }

  /** For webpack's DefinePlugin. */
  get constants() {
    // What the page starts and fills must be there offline too; other samples are kept when they are opened.
    const kept = ['samples/visit-log.xlsx', 'samples/repair-or-replace.xlsx', 'samples/fleet-template.xlsx'];
    const files = ['./', ...this.files.keys(), 'page.js', 'worker.js', 'samples/index.json'].filter(
      (name) => !name.startsWith('samples/') || kept.includes(name) || name.endsWith('.json'),
    );
    return { OUNCEWISE_PAGE_FILES: JSON.stringify(files), OUNCEWISE_BUILD: JSON.stringify(stampPlace) };
  }

  apply(compiler) {
    const { RawSource } = webpack.sources;
    compiler.hooks.thisCompilation.tap('PageFiles', (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: 'PageFiles', stage }, () => {
        for (const [name, path] of this.files) compilation.emitAsset(name, new RawSource(readFileSync(path)));
        compilation.emitAsset('samples/index.json', new RawSource(this.index));
      });
      // Last of all: the same files give the same stamp, any other file another one.
      const last = webpack.Compilation.PROCESS_ASSETS_STAGE_SUMMARIZE;
      compilation.hooks.processAssets.tap({ name: 'PageFiles', stage: last }, (assets) => {
        const hash = createHash('sha256');
        for (const name of Object.keys(assets).sort()) hash.update(name).update(assets[name].buffer());
        const stamp = hash.digest('hex').slice(0, stampPlace.length);
        compilation.updateAsset(
          'offline.js',
          (source) => new RawSource(source.source().toString().replaceAll(stampPlace, stamp)),
        );
      });
    });
  }
}
