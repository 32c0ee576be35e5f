import { readFile } from 'node:fs/promises';
import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import { build } from 'esbuild';
import { testFunctions } from './collected-tests.js';
import { loaderWithDataAtHand, withoutWaiting } from './data-at-hand.js';

/** Tests of src/, and of the worksheet functions over it. Those that need more than these are left out. */
const testFolders = [
  'access',
  'air',
  'charge',
  'cost',
  'leak',
  'numerics',
  'records',
  'refrigerants',
  'standards',
  'units',
  'visit',
  'functions/catalogue',
];

/** Tests of equations of state tell nothing about the folders that only ask for a property. */
const solving = ['refrigerants', 'numerics'];

/** Everything asks for a property: a mutant of the equations is judged by the tests of properties alone. */
const ofProperties = /(refrigerants|numerics)\/|examples\.test|standards\/refrigerant/;

/** These solve hundreds of points, a minute for each mutant; others ask the same solvers for fewer. */
const slow = /estimated-pairs|refrigerants\/(tables|properties)/;

function testFiles(root, folders) {
  const solves = solving.some((folder) => folders.includes(folder));
  return testFolders
    .flatMap((name) => readdirSync(join(root, 'tests', name), { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.name.endsWith('.test.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .filter((file) => !slow.test(file) && (solves || !file.includes('refrigerants/')))
    .filter((file) => folders.join() !== 'refrigerants' || ofProperties.test(file))
    .sort();
}

/** Every module knows its own address, as it does outside the bundle, and has the data it would read from disk. */
const ownAddress = (root) => ({
  name: 'own-address',
  setup({ onLoad }) {
    onLoad({ filter: /(src|functions|tests)\/.*\.ts$/ }, async ({ path }) => {
      const text = path.endsWith('/tools/load-data.ts')
        ? await loaderWithDataAtHand(root, path)
        : await readFile(path, 'utf8');
      const address = JSON.stringify(pathToFileURL(path).href);
      return { contents: withoutWaiting(text).replaceAll('import.meta.url', address), loader: 'ts' };
    });
  },
});

/**
 * One script with all tests, their modules asleep until a test file is asked for. Running the script again gives modules
 * that know nothing of the run before, in a few milliseconds; libraries stay loaded.
 *
 * @param root - where src and tests are
 * @param folders - of src, whose code is changed
 * @returns a function that gives fresh loaders, one for each test file
 */
export async function bundleTests(root, folders) {
  const files = testFiles(root, folders);
  const entry = files.map(
    (file) => `${JSON.stringify(file)}: () => require(${JSON.stringify(`./${file}`)}),`,
  );
  const { outputFiles } = await build({
    stdin: { contents: `module.exports = {\n${entry.join('\n')}\n};`, resolveDir: root, loader: 'js' },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    packages: 'external',
    plugins: [ownAddress(root)],
    logLevel: 'error',
  });
  const code = `(function (require, module) {\n${outputFiles[0].text}\n})`;
  const script = new vm.Script(code, { filename: join(root, 'tests-in-one.cjs') });
  const requireHere = createRequire(join(root, 'package.json'));
  const requireFor = (name) => (name === 'vitest' ? testFunctions : requireHere(name));
  return () => {
    const module = { exports: {} };
    script.runInThisContext()(requireFor, module);
    return module.exports;
  };
}
