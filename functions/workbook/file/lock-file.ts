import { access } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** How spreadsheet programs name the file they keep beside a document while it is open. */
const spellings: readonly ((name: string) => string)[] = [(name) => `.~lock.${name}#`, (name) => `~$${name}`];

/** Name of the lock file that says a document is open in another program; undefined when there is none. */
export async function lockFile(path: string): Promise<string | undefined> {
  for (const spell of spellings) {
    const name = spell(basename(path));
    const isThere = await access(join(dirname(path), name)).then(
      () => true,
      () => false,
    );
    if (isThere) return name;
  }
  return undefined;
}
