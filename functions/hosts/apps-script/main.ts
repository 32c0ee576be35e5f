import { catalogue } from '../../catalogue/index.ts';
import type { SheetCell } from './adapter.ts';
import { callFromSheet } from './adapter.ts';

/** What the functions in the sheet's script call: `Ouncewise.call('SATTEMP', arguments)`. */
export function call(id: string, given: ArrayLike<unknown>): SheetCell | SheetCell[][] {
  return callFromSheet(catalogue.get(id), given);
}
