import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { catalogue } from '../../catalogue/index.ts';
import { emitLibrary } from './emit.ts';

/** Second half of the build: webpack has bundled core.js, this writes dist/onlyoffice/ouncewise-onlyoffice.js. */
const root = join(import.meta.dirname, '../../..');
const folder = join(root, 'dist/onlyoffice');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
const core = join(folder, 'core.js');
const library = emitLibrary({ functions: catalogue.all(), version, core: readFileSync(core, 'utf8') });
writeFileSync(join(folder, 'ouncewise-onlyoffice.js'), library);
rmSync(core);
console.log(
  `dist/onlyoffice/ouncewise-onlyoffice.js: ${catalogue.all().length} functions, ${Buffer.byteLength(library)} bytes, ${gzipSync(library).length} compressed`,
);
