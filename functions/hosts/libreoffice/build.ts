import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { catalogue } from '../../catalogue/index.ts';
import { shippedPackages } from '../../bundling/shipped-packages.js';
import { thirdPartyText } from '../../bundling/third-party.ts';
import { buildExtension } from './extension.ts';

/** Second half of `npm run build:libreoffice`: webpack has bundled the server, this packs dist/libreoffice/ouncewise.oxt. */
const root = join(import.meta.dirname, '../../..');
const templatesFolder = join(root, 'manifest/libreoffice');
const outputFolder = join(root, 'dist/libreoffice');

const templates: Record<string, Uint8Array> = {};
for (const entry of readdirSync(templatesFolder, { recursive: true, withFileTypes: true })) {
  const path = join(entry.parentPath, entry.name);
  // Tried out by hand, Python leaves its compiled files behind.
  if (!entry.isFile() || path.includes('__pycache__')) continue;
  templates[relative(templatesFolder, path).split(sep).join('/')] = readFileSync(path);
}
for (const name of ['LICENSE', 'NOTICES.md']) {
  if (existsSync(join(root, name))) templates[name] = readFileSync(join(root, name));
}

templates['THIRD-PARTY.txt'] = new TextEncoder().encode(thirdPartyText(root, shippedPackages(root)));

const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
const extension = buildExtension({
  functions: catalogue.all(),
  version,
  templates,
  server: readFileSync(join(outputFolder, 'server.cjs')),
});
mkdirSync(outputFolder, { recursive: true });
writeFileSync(join(outputFolder, 'ouncewise.oxt'), extension);
console.log(`dist/libreoffice/ouncewise.oxt: ${catalogue.all().length} functions, ${extension.length} bytes`);
