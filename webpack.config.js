import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import webpack from 'webpack';

const { version } = JSON.parse(readFileSync(new URL('./package.json', import.meta.url), 'utf8'));
const root = fileURLToPath(new URL('.', import.meta.url));

/** What every build shares: TypeScript through one loader, no eval, one file out. */
function build({ name, entry, target, es, output, minimize = false, externals, plugins = [] }) {
  return {
    name,
    mode: 'production',
    devtool: false,
    context: root,
    entry,
    target,
    output: { path: `${root}dist/${name}`, ...output },
    resolve: { extensions: ['.ts', '.js'] },
    module: {
      rules: [
        { test: /\.ts$/, loader: 'esbuild-loader', options: { target: es, tsconfig: './tsconfig.json' } },
      ],
    },
    externals,
    plugins: [new webpack.DefinePlugin({ OUNCEWISE_VERSION: JSON.stringify(version) }), ...plugins],
    optimization: { minimize },
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
];
