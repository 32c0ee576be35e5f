import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The libraries whose code the built files contain, beside those that these bring along. A build that meets another one
 * fails: name it here, and tests/functions/bundling/licences.test.ts looks at its licence.
 */
export const bundledLibraries = [
  '@borgar/fx',
  '@formulajs/formulajs',
  'fflate',
  'mathjs',
  'numfmt',
  'psychrolib',
  'saxes',
];

/** Licences that may be shipped. */
const permissiveLicences = ['MIT', 'Apache-2.0', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD'];

/** Names, versions and checksums of everything shipped that is not ours, read from the lock file, in order of names. */
export function shippedPackages(root, libraries = bundledLibraries) {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  const found = new Map();
  const open = [...libraries];
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    if (found.has(name)) continue;
    const entry = packages[`node_modules/${name}`];
    if (entry === undefined) throw new Error(`${name} is not in package-lock.json`);
    const nested = Object.keys(packages).filter((path) => path.endsWith(`/node_modules/${name}`));
    if (nested.length > 0) throw new Error(`${name} is installed twice: ${nested.join(', ')}`);
    const { version, integrity, dependencies = {} } = entry;
    found.set(name, {
      name,
      version,
      integrity,
      licence: licenceOf(root, name),
      needs: Object.keys(dependencies),
    });
    open.push(...Object.keys(dependencies));
  }
  return [...found.values()].sort((one, other) => (one.name < other.name ? -1 : 1));
}

function licenceOf(root, name) {
  const { license, licenses } = JSON.parse(
    readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8'),
  );
  // Older packages have a list of objects.
  const words = license ?? licenses?.map(({ type }) => type).join(' OR ');
  if (typeof words !== 'string' || words === '') throw new Error(`${name} does not say its licence`);
  return words;
}

/** Packages whose licence may not be shipped: every alternative of an OR may be taken, every part of an AND binds. */
export function notPermissive(packages) {
  const isPermissive = (words) =>
    words
      .replace(/[()]/g, '')
      .split(' OR ')
      .some((choice) => choice.split(' AND ').every((part) => permissiveLicences.includes(part.trim())));
  return packages.filter(({ licence }) => !isPermissive(licence));
}

/** Webpack plugin: fails a build that takes in a library which is not on the list. */
export class KnownLibrariesOnly {
  constructor(root) {
    this.names = new Set(shippedPackages(root).map(({ name }) => name));
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap('KnownLibrariesOnly', (compilation) => {
      compilation.hooks.finishModules.tap('KnownLibrariesOnly', (modules) => {
        for (const name of librariesOf([...modules].map((module) => module.resource ?? ''))) {
          if (this.names.has(name)) continue;
          compilation.errors.push(
            new Error(`${name} would be shipped; name it in functions/bundling/shipped-packages.js`),
          );
        }
      });
    });
  }
}

/** Names of the packages that these files belong to. */
export function librariesOf(paths) {
  const names = paths.map((path) =>
    /.*[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(path)?.[1]?.replace('\\', '/'),
  );
  return [...new Set(names.filter((name) => name !== undefined))].sort();
}
