import { createRequire } from 'node:module';

import type { init } from 'excelize-wasm';

export type Excelize = Awaited<ReturnType<typeof init>>;
export type Workbook = ReturnType<Excelize['NewFile']>;

const require = createRequire(import.meta.url);
let loaded: Promise<Excelize> | undefined;

/** Loads the writer once; it is a build-time tool and no part of the package. */
export function loadExcelize(): Promise<Excelize> {
  loaded ??= (require('excelize-wasm') as { init: typeof init }).init(
    require.resolve('excelize-wasm/excelize.wasm.gz'),
  );
  return loaded;
}

/** The writer answers with an error text instead of throwing. */
export function must<T extends object>(result: T, doing: string): T {
  if ('error' in result && typeof result.error === 'string' && result.error !== '')
    throw new Error(`${doing}: ${result.error}`);
  return result;
}
