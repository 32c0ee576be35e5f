import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { derivationVersion } from './derive-responses.ts';
import { simulatedFile } from './simulated-sets.ts';

/** Stamp of the table: a hash of the sets it comes from and of the version of the derivation. */
export function responseStamp(): string {
  const hash = createHash('sha256').update(String(derivationVersion)).update(readFileSync(simulatedFile));
  return hash.digest('hex').slice(0, 16);
}
