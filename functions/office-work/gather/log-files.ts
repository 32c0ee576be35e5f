import { readdir, realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { FileError } from '../../workbook/file/file-error.ts';

const logNames = /\.(xlsx|ods|csv|tsv)$/i;

/** Lock files of open documents, and what is hidden. */
const leftAlone = /^(\.|~\$)/;

export interface FoundFiles {
  readonly files: readonly string[];
  readonly problems: readonly { readonly file: string; readonly reason: string }[];
}

/**
 * The logs that are named, and those in the folders that are named, each once and in one order whatever the order of the disk.
 * `outputs` are what earlier runs wrote into one of the folders: they are no logs.
 */
export async function findLogFiles(
  paths: readonly string[],
  outputs: readonly string[] = [],
): Promise<FoundFiles> {
  const files: string[] = [];
  const problems: { file: string; reason: string }[] = [];
  for (const path of paths) {
    try {
      if ((await stat(path)).isDirectory()) {
        const found = await logsIn(path);
        if (found.length === 0)
          problems.push({ file: path, reason: 'the folder holds no .xlsx, .ods or .csv' });
        files.push(...found);
      } else files.push(path);
    } catch (problem) {
      problems.push({ file: path, reason: reasonOf(path, problem) });
    }
  }
  return { files: await distinct([...files].sort(byName), outputs), problems };
}

/** Files without those that are another one by another way. */
async function distinct(files: readonly string[], outputs: readonly string[]): Promise<string[]> {
  const seen = new Set<string>();
  for (const output of outputs) seen.add(await placeOf(output));
  const kept: string[] = [];
  for (const file of files) {
    const place = await placeOf(file);
    if (!seen.has(place)) kept.push(file);
    seen.add(place);
  }
  return kept;
}

function placeOf(path: string): Promise<string> {
  return realpath(path).catch(() => path);
}

async function logsIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const found: string[] = [];
  for (const entry of entries) {
    if (leftAlone.test(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) found.push(...(await logsIn(path)));
    else if (logNames.test(entry.name)) found.push(path);
  }
  return found;
}

function byName(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

function reasonOf(path: string, problem: unknown): string {
  const code = (problem as NodeJS.ErrnoException).code;
  if (code === 'ENOENT' || code === 'ENOTDIR') return `there is no file ${path}`;
  if (code === 'EACCES' || code === 'EPERM') return 'it may not be read';
  if (problem instanceof FileError) return problem.message;
  return `it cannot be read (${code ?? String(problem)})`;
}
