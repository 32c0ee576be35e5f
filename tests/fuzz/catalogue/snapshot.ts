import type { Argument, CellInput, CellOutput, Outcome } from '../../../functions/runtime/cells.ts';
import { isRange } from '../../../functions/runtime/broadcast.ts';
import { HostError } from '../../../functions/runtime/cells.ts';
import { CalcError } from '../../../src/errors.ts';

/** Values and outcomes as plain data that can be compared: -0 is not 0, an error is its code and message. */
export function asData(value: readonly Argument[] | Outcome): unknown {
  return Array.isArray(value)
    ? (value as readonly (Argument | CellOutput[])[]).map((each) => asData(each as Outcome))
    : cellData(value as CellInput);
}

function cellData(cell: CellInput): unknown {
  if (cell instanceof CalcError) return { code: cell.code, parameter: cell.parameter, message: cell.message };
  if (cell instanceof HostError) return { host: cell.original };
  if (cell instanceof Date) return { time: cell.getTime() };
  return Object.is(cell, -0) ? { number: '-0' } : cell;
}

/** A copy nobody can write into: an attempt is a TypeError. */
export function frozen(args: readonly Argument[]): readonly Argument[] {
  const copies = args.map((arg): Argument => {
    if (!isRange(arg)) return arg;
    const rows = arg.map((row) => [...row]);
    rows.forEach(Object.freeze);
    Object.freeze(rows);
    return rows;
  });
  Object.freeze(copies);
  return copies;
}
