/**
 * Derives src/visit/diagnosis/response-table.ts from the readings of simulated units.
 *   npm run fit               rebuilds the table
 *   npm run fit -- --check    writes nothing; fails when it is stale
 */
import { readFile, writeFile } from 'node:fs/promises';
import { deriveResponses } from './derive-responses.ts';
import { simulatedSets } from './simulated-sets.ts';
import { responseStamp } from './stamp.ts';
import { tableText } from './table-text.ts';

const file = new URL('../response-table.ts', import.meta.url);
const text = await tableText(deriveResponses(simulatedSets(), responseStamp()), file);
const current = await readFile(file, 'utf8').catch(() => '');
if (!process.argv.includes('--check')) {
  await writeFile(file, text);
  console.log('derived the responses of faults');
} else if (current !== text) {
  console.error('Stale, run `npm run fit`: src/visit/diagnosis/response-table.ts');
  process.exitCode = 1;
} else console.log('The responses of faults are fresh.');
