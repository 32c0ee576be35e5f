/**
 * Derives the saturation tables in src/data/saturation and the list of everything in src/data/catalogue.ts.
 *   npm run derive                 rebuilds what is missing or stale
 *   npm run derive -- --all        rebuilds everything
 *   npm run derive -- --check      writes nothing; fails when something is stale
 */
import { readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { format, resolveConfig } from 'prettier';
import type { SaturationTable } from '../../data/saturation-form.ts';
import { deriveTable } from './derive-table.ts';
import { dataFolder, fileNameOf, loadData } from './load-data.ts';
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

/** One module that imports every data file, so that adding a refrigerant touches no list. */
function catalogueText(files: { folder: string; name: string; kind: string }[]): string {
  const identifier = (file: { folder: string; name: string }) =>
    `${file.folder}_${file.name.replace(/\W/g, '_')}`;
  const imports = files.map(
    (f) => `import { ${f.kind} as ${identifier(f)} } from './${f.folder}/${f.name}.ts';`,
  );
  const list = (folder: string) =>
    files
      .filter((f) => f.folder === folder)
      .map(identifier)
      .join(', ');
  const record = (folder: string) =>
    files
      .filter((f) => f.folder === folder)
      .map((f) => `'${f.name}': ${identifier(f)}`)
      .join(', ');
  return `${header}import type { FluidEquation } from './equation-form.ts';
import type { BlendFacts, PureFacts } from './facts-form.ts';
import type { SaturationTable } from './saturation-form.ts';
${imports.join('\n')}

export const pureFacts: readonly PureFacts[] = [${list('refrigerants')}];
export const blendFacts: readonly BlendFacts[] = [${list('blends')}];
export const equations: readonly FluidEquation[] = [${list('equations')}];
/** By file name: the designation in lower case. */
export const saturationTables: Readonly<Record<string, SaturationTable>> = {${record('saturation')}};
`;
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
  const blends = facts.filter((f) => 'components' in f).map((f) => fileNameOf(f.designation));
  const catalogue = await formatted(
    catalogueText([
      ...names
        .filter((n) => !blends.includes(n))
        .map((name) => ({ folder: 'refrigerants', name, kind: 'facts' })),
      ...names.filter((n) => blends.includes(n)).map((name) => ({ folder: 'blends', name, kind: 'facts' })),
      ...[...data.equations.keys()]
        .map(fileNameOf)
        .sort()
        .map((name) => ({ folder: 'equations', name, kind: 'equation' })),
      ...names.map((name) => ({ folder: 'saturation', name, kind: 'table' })),
    ]),
  );
  const catalogueFile = new URL('catalogue.ts', dataFolder);
  if ((await currentText(catalogueFile)) !== catalogue) {
    stale.push('src/data/catalogue.ts');
    if (!check) await writeFile(catalogueFile, catalogue);
  }
  if (check && stale.length > 0) {
    console.error(`Stale, run \`npm run derive\`: ${stale.join(', ')}`);
    process.exitCode = 1;
  } else console.log(check ? 'All saturation tables are fresh.' : `${stale.length} file(s) rebuilt.`);
}

await main();
