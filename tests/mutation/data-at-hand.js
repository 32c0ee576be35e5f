import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** Imports of every refrigerant's file in a folder of src/data, and the list of what they export. */
async function everyFile(root, folder, exported) {
  const location = join(root, 'src/data', folder);
  const files = (await readdir(location)).filter((file) => /^r-.*\.ts$/.test(file)).sort();
  const names = files.map((_, index) => `${folder}${index}`);
  return {
    imports: files.map(
      (file, index) =>
        `import { ${exported} as ${names[index]} } from ${JSON.stringify(join(location, file))};`,
    ),
    list: `[${names.join(', ')}]`,
  };
}

/**
 * The tool that reads src/data from disk does so by imports at run time, which one script cannot have. Here its reading
 * of a folder is replaced by imports known beforehand; everything else in it stays, and nothing has to be waited for.
 */
export async function loaderWithDataAtHand(root, path) {
  const folders = {
    refrigerants: await everyFile(root, 'refrigerants', 'facts'),
    blends: await everyFile(root, 'blends', 'facts'),
    equations: await everyFile(root, 'equations', 'equation'),
    saturation: await everyFile(root, 'saturation', 'table'),
  };
  const text = await readFile(path, 'utf8');
  const known = Object.entries(folders).map(([name, { list }]) => `${name}: ${list}`);
  const lookUp = `function modulesIn<T>(folder: string, _: string): T[] { return ({ ${known.join(', ')} } as any)[folder]; }\n`;
  const replaced = text.replace(/async function modulesIn[\s\S]*?\n}\n/, lookUp);
  if (replaced === text) throw new Error(`${path} no longer reads folders by modulesIn`);
  return withoutWaiting(
    Object.values(folders)
      .flatMap(({ imports }) => imports)
      .join('\n') + replaced,
  );
}

/** Test files wait for that tool while they load; a script cannot wait. */
export function withoutWaiting(text) {
  return text
    .replaceAll(/await (loadData|readableData)\(\)/g, '$1()')
    .replace('await Promise.all([', '([')
    .replace('await modulesIn<', 'modulesIn<')
    .replaceAll(
      /export async function (loadData|readableData)\(\): Promise<[\s\S]*?> \{\n/g,
      'export function $1() {\n',
    );
}
