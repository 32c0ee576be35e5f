import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Reader } from './render.ts';
import { readers, renderGuides } from './render.ts';

/** Writes dist/guides: a page for each reader, with the pictures. */
const root = join(import.meta.dirname, '../../..');
const source = join(root, 'manifest/guides');
const folder = join(root, 'dist/guides');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
const texts = Object.fromEntries(
  readers.map((reader) => [reader, readFileSync(join(source, `${reader}.md`), 'utf8')]),
) as Record<Reader, string>;
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const pages = Object.entries(renderGuides(texts, version));
for (const [name, text] of pages) writeFileSync(join(folder, name), text);
cpSync(join(source, 'pictures'), join(folder, 'pictures'), { recursive: true });
console.log(`dist/guides: ${pages.length} files and the pictures`);
