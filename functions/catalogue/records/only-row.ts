import { CalcError } from '../../../src/errors.ts';
import type { Cells } from './read-table.ts';

/** The one row of a range. @throws CalcError invalid-argument for more rows */
export function onlyRow(parameter: string, range: readonly Cells[]): Cells {
  if (range.length === 1 && range[0]) return range[0];
  throw new CalcError(`${parameter} must be one row of cells`, {
    code: 'invalid-argument',
    parameter,
    received: `${String(range.length)} rows`,
    limit: 'one row',
  });
}
