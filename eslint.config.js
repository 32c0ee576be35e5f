import js from '@eslint/js';
import importX from 'eslint-plugin-import-x';
import tseslint from 'typescript-eslint';

/** Hosts know nothing of each other; the command line serves some of them. */
const hostFolder = (host) => `functions/hosts/${host}`;

/** The floors of the house, lowest first. A floor may import from itself and from the floors below it. */
const floors = [
  ['src/errors.ts', 'src/units', 'src/phrase.ts', 'src/verdict-words.ts', 'src/numerics'],
  ['src/data'],
  ['src/refrigerants', 'src/air'],
  ['src/visit', 'src/charge', 'src/access', 'src/leak', 'src/cost'],
  ['src/records'],
  ['src/index.ts', 'functions/runtime', 'functions/bundling'],
  ['functions/catalogue'],
  ...['model', 'lookup', 'formula', 'functions', 'compile', 'run', 'file'].map((room) => [
    `functions/workbook/${room}`,
  ]),
  ['catalogue-functions', 'recalculate', 'remembered-calls', 'results-copy', 'spell'].map(
    (file) => `functions/workbook/${file}.ts`,
  ),
  ['functions/office-work'],
  ['functions/handbook'],
  ['apps-script', 'libreoffice', 'office', 'onlyoffice', 'page', 'sql'].map(hostFolder),
  ['functions/hosts/command-line'],
  ['functions/release'],
  ['sample-workbooks'],
];

/** For each floor: everything above it is out of bounds, and for a host its neighbours. */
const importDirection = floors.slice(0, -1).flatMap((floor, level) =>
  floor.map((target) => ({
    target: `./${target}`,
    from: [
      ...floors.slice(level + 1).flat(),
      ...(target.startsWith(hostFolder('')) ? floor.filter((other) => other !== target) : []),
    ].map((path) => `./${path}`),
    message: 'Imports run downwards only; see DEVELOPERS.md, "The house".',
  })),
);

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'output/', '.cache/'] },
  js.configs.recommended,
  ...tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    plugins: { 'import-x': importX },
    settings: {
      'import-x/resolver-next': [importX.createNodeResolver({ extensions: ['.ts', '.js'] })],
      // Without these two the rules look into no file of ours and find nothing.
      'import-x/extensions': ['.ts', '.js'],
      'import-x/parsers': { '@typescript-eslint/parser': ['.ts'] },
    },
    rules: {
      'import-x/no-restricted-paths': ['error', { zones: importDirection }],
      'import-x/no-cycle': ['error', { ignoreExternal: true }],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      'no-eval': 'error',
      'max-lines': ['error', { max: 400, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    // Only this module may touch the unit library: factors are cached behind it.
    files: ['src/**/*.ts', 'functions/**/*.ts'],
    ignores: ['src/units/**'],
    rules: { 'no-restricted-imports': ['error', { paths: ['mathjs'] }] },
  },
  {
    // The calculation package must run without Node, a browser or a spreadsheet.
    files: ['src/**/*.ts'],
    ignores: ['src/**/tools/**'],
    rules: {
      'no-restricted-globals': ['error', 'process', 'Buffer', 'window', 'document', 'fetch', 'console'],
    },
  },
  {
    files: ['**/*.js'],
    ...tseslint.configs.disableTypeChecked,
    languageOptions: {
      parserOptions: { projectService: false },
      globals: { URL: 'readonly', console: 'readonly', process: 'readonly' },
    },
  },
  // Generated tables of numbers are data, however long.
  { files: ['src/data/**/*.ts'], rules: { 'max-lines': 'off' } },
);
