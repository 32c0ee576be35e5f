import { catalogue } from '../../catalogue/index.ts';
import type { SheetCell } from './adapter.ts';
import { callFromDocument } from './adapter.ts';

/** What the registered functions call: `Ouncewise.call('SATTEMP', arguments)`. */
export function call(id: string, given: ArrayLike<unknown>): SheetCell | SheetCell[][] {
  return callFromDocument(catalogue.get(id), given);
}
