import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '../../..');

/** Where benches keep what takes long to make or to fetch; not in git. */
export const benchFolder = join(root, '.cache/bench');

/** A file a bench makes from a sample workbook, kept until the sample is another. */
export function keptFile(name: string, sample: string, make: () => Uint8Array): Uint8Array {
  const stamp = createHash('sha256').update(readFileSync(join(root, 'sample-workbooks', sample)));
  const path = join(benchFolder, `${stamp.digest('hex').slice(0, 12)}-${name}`);
  if (!existsSync(path)) {
    mkdirSync(benchFolder, { recursive: true });
    writeFileSync(`${path}.part`, make());
    renameSync(`${path}.part`, path);
  }
  return new Uint8Array(readFileSync(path));
}
