import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '../../catalogue/index.ts';
import { emitGuide } from './emit.ts';

/** Writes dist/guide. */
const root = join(import.meta.dirname, '../../..');
const folder = join(root, 'dist/guide');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const pages = Object.entries(emitGuide(catalogue.all(), version));
for (const [name, text] of pages) writeFileSync(join(folder, name), text);
console.log(
  `dist/guide: ${pages.length} files, ${pages.reduce((sum, [, text]) => sum + text.length, 0)} characters`,
);
