import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { build } from 'esbuild';
import type { RegisteredFunction } from '../../../runtime/registry.ts';
import { librariesOf, shippedPackages } from '../../../bundling/shipped-packages.js';
import withoutHelp from '../../../bundling/without-help.js';
import { unitTableModule } from './unit-table.ts';

/** Bytes that an engine takes. */
export const limits = { library: 1_000_000, inlineBody: 100_000 } as const;

const root = join(import.meta.dirname, '../../../..');
const shipped = new Set(shippedPackages(root).map(({ name }) => name));

/** The whole catalogue as one program that sets `Ouncewise`. */
export function bundleLibrary(): Promise<string> {
  return bundle(`export { answer, why } from './functions/hosts/sql/script/library.ts';`);
}

/** One function with what it needs as a program that sets `Ouncewise`, for engines that load no files. */
export function bundleFunction(declaration: RegisteredFunction): Promise<string> {
  const { id, family, parameters } = declaration;
  const name = id.toLowerCase();
  const kinds = Object.values(parameters).map((parameter) =>
    parameter.kind === 'list' ? parameter.of.kind : parameter.kind,
  );
  // Tables of records name refrigerants in a column; those of the cost family hold figures only.
  const readsRefrigerants = kinds.includes('refrigerant') || (kinds.includes('table') && family !== 'cost');
  const contents = `
import { ${name} } from './functions/catalogue/${family}/${name}.ts';
import { Registry } from './functions/runtime/registry.ts';
import * as single from './functions/hosts/sql/script/answer.ts';
const declaration = new Registry([${name}]).get('${id}');
export const answer = (args, failing) => single.answer(declaration, args, failing);
`;
  return bundle(contents, readsRefrigerants ? [] : [noRefrigerantArgument]);
}

/** One bundle a function is too many for the configuration of the other hosts, which has one entry a host. */
async function bundle(contents: string, more: readonly Plugin[] = []): Promise<string> {
  const { outputFiles, metafile } = await build({
    metafile: true,
    stdin: { contents, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    globalName: 'Ouncewise',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    target: 'es2019',
    charset: 'ascii',
    legalComments: 'none',
    define: { OUNCEWISE_VERSION: '""' },
    plugins: [unitTable, helpTakenOut, ...more],
  });
  const strangers = librariesOf(Object.keys(metafile.inputs).map((path) => join(root, path))).filter(
    (name) => !shipped.has(name),
  );
  if (strangers.length > 0) throw new Error(`${strangers.join(', ')} would be shipped without its licence`);
  return outputFiles[0]?.text ?? '';
}

const unitTable: Plugin = {
  name: 'unit-table',
  setup(plugin) {
    plugin.onLoad({ filter: /src\/units\/unit-library\.ts$/ }, () => ({
      contents: unitTableModule(),
      loader: 'js',
    }));
  },
};

/** The coercion of arguments brings the data of all refrigerants along, also where no argument names one. */
const noRefrigerantArgument: Plugin = {
  name: 'no-refrigerant-argument',
  setup(plugin) {
    plugin.onResolve({ filter: /src\/refrigerants\/index\.ts$/ }, ({ importer, path }) =>
      importer.endsWith(join('functions', 'runtime', 'coerce.ts')) ? { path, namespace: 'none' } : undefined,
    );
    plugin.onLoad({ filter: /.*/, namespace: 'none' }, () => ({
      contents: `export function findRefrigerant() { throw new Error('no refrigerants here'); }`,
    }));
  },
};

const helpTakenOut: Plugin = {
  name: 'help-taken-out',
  setup(plugin) {
    plugin.onLoad({ filter: /functions\/(catalogue\/.*|runtime\/shared-parameters)\.ts$/ }, ({ path }) => ({
      contents: withoutHelp(readFileSync(path, 'utf8')),
      loader: 'ts',
    }));
  },
};
