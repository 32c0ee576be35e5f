import { readFileSync, realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder of the installed package, found upwards from the program that runs. */
export function packageRoot(): string {
  let folder = dirname(realpathSync(process.argv[1] ?? '.'));
  for (;;) {
    if (isPackage(folder)) return folder;
    const parent = dirname(folder);
    if (parent === folder) throw new Error('the files of the ouncewise package were not found');
    folder = parent;
  }
}

function isPackage(folder: string): boolean {
  try {
    const { name } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { name?: unknown };
    return name === 'ouncewise';
  } catch {
    return false;
  }
}
