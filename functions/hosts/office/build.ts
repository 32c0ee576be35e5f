import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '../../catalogue/index.ts';
import { bundleOffice } from './bundle.ts';

/** Second half of the build: webpack has bundled functions.js, this adds the other files for trying them on one computer. */
const root = join(import.meta.dirname, '../../..');
const outDir = join(root, 'dist/office');
rmSync(join(outDir, 'guide'), { recursive: true, force: true });
const files = bundleOffice({
  functions: catalogue.all(),
  baseUrl: 'https://localhost:3443',
  outDir,
  packageRoot: root,
});
console.log(`dist/office: ${files.length} files for https://localhost:3443`);
