import { readFileSync } from 'node:fs';

import { fileName, type Target } from '../../sample-workbooks/writing/spelling.ts';

/** A sample workbook as it is committed. */
export function committed(base: string, target: Target): Uint8Array {
  return readFileSync(new URL(`../../sample-workbooks/${fileName(base, target)}`, import.meta.url));
}
