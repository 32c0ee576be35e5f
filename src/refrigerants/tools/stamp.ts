import { createHash } from 'node:crypto';
import { derivationVersion } from './derive-table.ts';
import type { Source } from './source-of.ts';

/** Stamp of a table: a hash of the published data it comes from and of the version of the derivation. */
export function stampOf(source: Source): string {
  const text = JSON.stringify({ derivationVersion, method: source.method, input: source.input });
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}
