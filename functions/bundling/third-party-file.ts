import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { shippedPackages } from './shipped-packages.js';
import { thirdPartyText } from './third-party.ts';

/** Writes dist/THIRD-PARTY.txt, which stands in everything that is handed out. */
const root = join(import.meta.dirname, '../..');
mkdirSync(join(root, 'dist'), { recursive: true });
const packages = shippedPackages(root);
writeFileSync(join(root, 'dist/THIRD-PARTY.txt'), thirdPartyText(root, packages));
console.log(`dist/THIRD-PARTY.txt: ${packages.length} libraries`);
