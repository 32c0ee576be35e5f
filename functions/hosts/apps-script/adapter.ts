import { CalcError } from '../../../src/errors.ts';
import { callFunction } from '../../runtime/call.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { Argument, CellInput, CellOutput } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';

export type SheetCell = number | string | boolean | Date;

/** How Google Sheets hands over a cell with an error: as this text. */
const errorText = /^#(N\/A|VALUE!|NUM!|DIV\/0!|REF!|NAME\?|NULL!|ERROR!)/;

/**
 * A call as Google Sheets makes it: blanks as "", dates as Date, ranges as rows of cells. A call for one cell that
 * cannot answer throws, which shows the message; in a block the cell begins with the error's name.
 */
export function callFromSheet(
  declaration: RegisteredFunction,
  given: ArrayLike<unknown>,
): SheetCell | SheetCell[][] {
  const values = Array.from(given).slice(0, declaration.parameterNames.length);
  const outcome = callFunction(declaration, values.map(argumentOf));
  if (Array.isArray(outcome)) return outcome.map((row) => row.map(cellInBlock));
  if (outcome instanceof CalcError) throw new Error(`${cellErrorOf[outcome.code]} ${outcome.message}`);
  if (outcome instanceof HostError) throw new Error(`${String(outcome.original)} in a value that was given`);
  return declaration.returns.kind === 'date' && typeof outcome === 'number' ? dateOf(outcome) : outcome;
}

function argumentOf(value: unknown): Argument {
  return Array.isArray(value)
    ? (value as unknown[]).map((row) => (Array.isArray(row) ? row.map(inputOf) : [inputOf(row)]))
    : inputOf(value);
}

function inputOf(cell: unknown): CellInput {
  return typeof cell === 'string' && errorText.test(cell) ? new HostError(cell) : (cell as CellInput);
}

function cellInBlock(cell: CellOutput): SheetCell {
  if (cell instanceof CalcError) return `${cellErrorOf[cell.code]} ${cell.message}`;
  if (cell instanceof HostError) return String(cell.original);
  return cell;
}

/** Serial number → the midnight that Google Sheets shows as that day. */
function dateOf(serial: number): Date {
  return new Date(1899, 11, 30 + serial);
}
