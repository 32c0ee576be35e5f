import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { catalogue } from '../../catalogue/index.ts';
import { emitScript } from './emit.ts';

/** Second half of the build: webpack has bundled core.js, this writes dist/apps-script/ouncewise.gs. */
const root = join(import.meta.dirname, '../../..');
const folder = join(root, 'dist/apps-script');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
const core = join(folder, 'core.js');
const script = emitScript({ functions: catalogue.all(), version, core: readFileSync(core, 'utf8') });
writeFileSync(join(folder, 'ouncewise.gs'), script);
// The project manifest to paste where the script is deployed by hand; core.js has served its purpose.
writeFileSync(
  join(folder, 'appsscript.json'),
  readFileSync(join(root, 'manifest/apps-script/appsscript.json')),
);
rmSync(core);
console.log(
  `dist/apps-script/ouncewise.gs: ${catalogue.all().length} functions, ${Buffer.byteLength(script)} bytes, ${gzipSync(script).length} compressed`,
);
