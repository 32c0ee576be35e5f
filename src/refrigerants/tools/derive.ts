/**
 * Derives the saturation tables in src/data/saturation, then packs everything in src/data into src/data/packed.ts.
 *   npm run derive                 rebuilds what is missing or stale
 *   npm run derive -- --all        rebuilds everything
 *   npm run derive -- --check      writes nothing; fails when something is stale
 */
import { readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { format, resolveConfig } from 'prettier';
import type { SaturationTable } from '../../data/saturation-form.ts';
import { deriveTable } from './derive-table.ts';
import { dataFolder, fileNameOf, loadData, readableData } from './load-data.ts';
import { packedModule } from './pack.ts';
import { sourceOf } from './source-of.ts';
import { stampOf } from './stamp.ts';

const header = '// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.\n';

async function formatted(text: string): Promise<string> {
  const options = await resolveConfig(new URL('x.ts', dataFolder).pathname);
  return format(text, { ...options, parser: 'typescript' });
}

async function currentText(file: URL): Promise<string> {
  return readFile(file, 'utf8').catch(() => '');
}

function tableText(table: SaturationTable): string {
  return `${header}import type { SaturationTable } from '../saturation-form.ts';\n\nexport const table: SaturationTable = ${JSON.stringify(table)};\n`;
}

async function main(): Promise<void> {
  const check = process.argv.includes('--check');
  const all = process.argv.includes('--all');
  const { facts, data } = await loadData();
  const stale: string[] = [];
  const names = facts.map((f) => fileNameOf(f.designation)).sort();
  for (const fact of facts) {
    const source = sourceOf(fact, data);
    const stamp = stampOf(source);
    const file = new URL(`saturation/${fileNameOf(fact.designation)}.ts`, dataFolder);
    if (!all && (await currentText(file)).includes(stamp)) continue;
    stale.push(fact.designation);
    if (check) continue;
    await writeFile(file, await formatted(tableText(deriveTable(source, stamp))));
    console.log(`derived ${fact.designation}`);
  }
  const saturationFolder = new URL('saturation/', dataFolder);
  for (const file of await readdir(saturationFolder)) {
    if (names.includes(file.replace(/\.ts$/, ''))) continue;
    stale.push(`${file} (no such refrigerant)`);
    if (!check) await rm(new URL(file, saturationFolder));
  }
  // With --check on stale tables there is nothing to compare the packed form with.
  if (!check || stale.length === 0) {
    const text = header + packedModule(await readableData());
    const file = new URL('packed.ts', dataFolder);
    if ((await currentText(file)) !== text) {
      stale.push('src/data/packed.ts');
      if (!check) await writeFile(file, text);
    }
  }
  if (check && stale.length > 0) {
    console.error(`Stale, run \`npm run derive\`: ${stale.join(', ')}`);
    process.exitCode = 1;
  } else console.log(check ? 'All saturation tables are fresh.' : `${stale.length} file(s) rebuilt.`);
}

await main();
