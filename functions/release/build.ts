import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { provenance } from '../../src/data/provenance.ts';
import { html, table } from '../handbook/markup.ts';
import { styleSheet } from '../handbook/style.ts';
import { frame } from '../handbook/guides/frame.ts';
import { kitFiles } from './contents.ts';
import { kits } from './kits.ts';
import { provenanceText } from './provenance.ts';
import { billOfMaterials } from './sbom.ts';
import { bundledLibraries, notPermissive, shippedPackages } from '../bundling/shipped-packages.js';
import { zipFolder } from './zip.ts';

/** `npm run release`: dist/release out of what `npm run build` has made. Equal sources give equal bytes. */
const root = join(import.meta.dirname, '../..');
const folder = join(root, 'dist/release');
const product = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  name: string;
  version: string;
  description: string;
};
const { name, version } = product;

const packages = shippedPackages(root);
const refused = notPermissive(packages).map((each) => `${each.name} (${each.licence})`);
if (refused.length > 0) throw new Error(`may not be shipped: ${refused.join(', ')}`);

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const put = (file: string, content: string | Uint8Array): void => writeFileSync(join(folder, file), content);

for (const kit of kits) {
  const stem = `${name}-${version}-${kit.name}`;
  put(`${stem}.zip`, zipFolder(stem, kitFiles(root, kit, version)));
}
// For projects with npm. What it holds was built already.
execFileSync('npm', ['pack', '--silent', '--ignore-scripts', '--pack-destination', folder], { cwd: root });
put('sbom.cdx.json', billOfMaterials(product, packages, provenance, bundledLibraries));
put('PROVENANCE.csv', provenanceText(root));
for (const paper of ['LICENSE', 'NOTICES.md', 'CHANGELOG.md']) put(paper, readFileSync(join(root, paper)));
put('THIRD-PARTY.txt', readFileSync(join(root, 'dist/THIRD-PARTY.txt')));
put('START-HERE.html', startHere());

const files = readdirSync(folder).sort();
const sums = files.map((file) => `${sha256(readFileSync(join(folder, file)))}  ${file}\n`).join('');
put('SHA256SUMS', sums);
for (const file of files) console.log(`${kilobytes(file).padStart(9)}  ${file}`);
console.log(`dist/release: SHA-256 of all of it ${sha256(sums)}`);

function startHere(): string {
  const rows = kits.map((kit) => {
    const file = `${name}-${version}-${kit.name}.zip`;
    return [html`<a href="${file}">${file}</a>`, kit.what, kilobytes(file)];
  });
  const body = html`<h1>Ouncewise ${version}</h1>
    <p>Take the zip for the program you work in, unpack it and open <code>INSTALL.html</code> in it.</p>
    ${table(['zip', 'what it is', 'size'], rows)}
    <p>
      For projects with npm: <a href="${`${name}-${version}.tgz`}">${`${name}-${version}.tgz`}</a>. What is
      inside and where it comes from: <a href="sbom.cdx.json">sbom.cdx.json</a> (libraries),
      <a href="PROVENANCE.csv">PROVENANCE.csv</a> (figures), <a href="NOTICES.md">NOTICES.md</a>,
      <a href="THIRD-PARTY.txt">THIRD-PARTY.txt</a> (licences).
    </p>
    <p>
      To see that a file arrived whole, run <code>sha256sum -c SHA256SUMS</code> (on a Mac
      <code>shasum -a 256 -c SHA256SUMS</code>, on Windows <code>certutil -hashfile FILE SHA256</code>).
    </p>`;
  return frame({ title: 'Start here', body: body.html, version, style: { text: styleSheet } });
}

function kilobytes(file: string): string {
  return `${Math.ceil(readFileSync(join(folder, file)).length / 1024).toLocaleString('en-US')} KB`;
}

function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
