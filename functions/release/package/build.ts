import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { libraryTypes } from './types.ts';

/** Types of the calculation package, one file for each way of importing it: webpack has bundled the programs. */
const folder = join(import.meta.dirname, '../../../dist/library');
mkdirSync(folder, { recursive: true });
const types = libraryTypes();
for (const name of ['ouncewise.d.ts', 'ouncewise.d.cts']) writeFileSync(join(folder, name), types);
console.log(`dist/library: types of ${types.length} characters`);
