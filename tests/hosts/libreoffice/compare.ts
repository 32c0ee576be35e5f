import { calcErrorNumber } from '../../../functions/hosts/libreoffice/error-codes.ts';
import { cellErrorOf } from '../../../functions/runtime/cell-errors.ts';
import type { CellOutput } from '../../../functions/runtime/cells.ts';
import { CalcError } from '../../../src/errors.ts';
import type { CalcCell } from '../libreoffice.ts';

/** Both come from the same code; only the fifteen digits of JSON and of a cell lie between. */
const relative = 1e-9;

/** What differs between a cell of Calc and what the function gives in this process; undefined when nothing does. */
export function difference(cell: CalcCell | undefined, expected: CellOutput): string | undefined {
  const found = cell?.error !== undefined ? `error ${cell.error}` : JSON.stringify(cell?.value ?? '');
  const wanted = describe(expected);
  if (typeof expected === 'number' && typeof cell?.value === 'number') {
    const close = Math.abs(cell.value - expected) <= relative * Math.max(Math.abs(expected), 1e-12);
    return close ? undefined : `${found} instead of ${wanted}`;
  }
  return found === wanted ? undefined : `${found} instead of ${wanted}`;
}

function describe(expected: CellOutput): string {
  if (expected instanceof CalcError) return `error ${calcErrorNumber[cellErrorOf[expected.code]]}`;
  if (typeof expected === 'boolean') return expected ? '1' : '0';
  return JSON.stringify(expected);
}
