import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { EsbuildPlugin } from 'esbuild-loader';
import webpack from 'webpack';
import { PageFiles } from './functions/hosts/page/page-files.js';
import { KnownLibrariesOnly } from './functions/bundling/shipped-packages.js';

const { version } = JSON.parse(readFileSync(new URL('./package.json', import.meta.url), 'utf8'));
const root = fileURLToPath(new URL('.', import.meta.url));

const pageFiles = new PageFiles(root);
const knownLibrariesOnly = new KnownLibrariesOnly(root);

const helpTakenOut = {
  test: /functions\/(catalogue\/.*|runtime\/shared-parameters)\.ts$/,
  enforce: 'pre',
  loader: `${root}functions/bundling/without-help.js`,
};

/** What every build shares: TypeScript through one loader, no eval, one file out. */
function build({ name, entry, target, es, output, minimize = false, help = true, externals, plugins = [] }) {
  // A library's name must stay visible to what stands behind it; everything else is wrapped up.
  const inTheOpen = output.library ? { format: undefined } : {};
  return {
    name,
    mode: 'production',
    devtool: false,
    context: root,
    entry,
    target,
    output: { path: `${root}dist/${name}`, ...output },
    // Paths end in the bundles as numbers and comments: a linked node_modules must not change them.
    resolve: { extensions: ['.ts', '.js'], symlinks: false },
    module: {
      rules: [
        { test: /\.ts$/, loader: 'esbuild-loader', options: { target: es, tsconfig: './tsconfig.json' } },
        ...(help ? [] : [helpTakenOut]),
      ],
    },
    externals,
    plugins: [
      new webpack.DefinePlugin({ OUNCEWISE_VERSION: JSON.stringify(version) }),
      knownLibrariesOnly,
      ...plugins,
    ],
    // The usual minifier makes the smaller file; the second one also brings what libraries ship down to the host's own
    // JavaScript.
    optimization: {
      minimize,
      // Numbers for modules depend on where the tree stands; names from the root do not.
      moduleIds: 'named',
      minimizer: ['...', new EsbuildPlugin({ target: es, legalComments: 'none', ...inTheOpen })],
    },
    performance: { hints: false },
    stats: 'errors-warnings',
  };
}

const nodeModule = {
  filename: '[name].js',
  module: true,
  chunkFormat: 'module',
  library: { type: 'module' },
};

/** One entry per host. */
export default [
  {
    ...build({
      name: 'command-line',
      entry: { ouncewise: './functions/hosts/command-line/main.ts' },
      target: 'node20',
      es: 'node20',
      output: nodeModule,
      externals: { '@duckdb/node-api': 'node-commonjs @duckdb/node-api' },
      plugins: [new webpack.BannerPlugin({ banner: '#!/usr/bin/env node', raw: true })],
    }),
    experiments: { outputModule: true },
  },
  build({
    // The Calc add-in's Node child; functions/hosts/libreoffice/build.ts packs it.
    name: 'libreoffice',
    entry: { server: './functions/hosts/libreoffice/main.ts' },
    target: 'node20',
    es: 'node20',
    output: { filename: '[name].cjs' },
  }),
  build({
    // Runs alone in Excel's JavaScript-only runtime; functions/hosts/office/build.ts adds the other files.
    name: 'office',
    entry: { functions: './functions/hosts/office/functions.ts' },
    target: ['web', 'es2020'],
    es: 'es2020',
    output: { filename: '[name].js', globalObject: 'globalThis' },
    minimize: true,
    help: false,
  }),
  build({
    // functions/hosts/apps-script/build.ts puts the functions that a sheet calls behind it.
    name: 'apps-script',
    entry: { core: './functions/hosts/apps-script/main.ts' },
    target: ['web', 'es2019'],
    es: 'es2019',
    output: { filename: '[name].js', library: { name: 'Ouncewise', type: 'var' }, globalObject: 'this' },
    minimize: true,
    help: false,
  }),
  build({
    // functions/hosts/onlyoffice/build.ts registers its functions with the spreadsheet.
    name: 'onlyoffice',
    entry: { core: './functions/hosts/onlyoffice/main.ts' },
    target: ['web', 'es2019'],
    es: 'es2019',
    output: { filename: '[name].js', library: { name: 'Ouncewise', type: 'var' }, globalObject: 'this' },
    minimize: true,
    help: false,
  }),
  {
    // The worksheet page: static files for any server; the calculation runs in worker.js.
    ...build({
      name: 'page',
      entry: {
        page: './functions/hosts/page/ui/main.ts',
        worker: './functions/hosts/page/worker/main.ts',
        offline: './functions/hosts/page/offline.ts',
      },
      target: ['web', 'es2022'],
      es: 'es2022',
      output: { filename: '[name].js' },
      plugins: [new webpack.DefinePlugin(pageFiles.constants), pageFiles],
    }),
    // `npm start` waits for this build: one quick minifier, since the page comes from this computer.
    optimization: {
      minimize: true,
      moduleIds: 'named',
      minimizer: [new EsbuildPlugin({ target: 'es2022', legalComments: 'none' })],
    },
  },
  {
    ...build({
      name: 'library',
      entry: { ouncewise: './src/index.ts' },
      target: 'es2022',
      es: 'es2022',
      output: nodeModule,
    }),
    experiments: { outputModule: true },
  },
  build({
    // The same for programs that use `require`; functions/release/package/build.ts writes the types of both.
    name: 'library-require',
    entry: { ouncewise: './src/index.ts' },
    target: 'es2022',
    es: 'es2022',
    output: {
      path: `${root}dist/library`,
      filename: '[name].cjs',
      library: { type: 'commonjs2' },
      chunkFormat: 'commonjs',
    },
  }),
];
