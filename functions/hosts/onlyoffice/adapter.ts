import { CalcError } from '../../../src/errors.ts';
import { callFunction } from '../../runtime/call.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { Argument, CellInput, CellOutput } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';

export type SheetCell = number | string | boolean;

const errorText = /^#(N\/A|VALUE!|NUM!|DIV\/0!|REF!|NAME\?|NULL!|GETTING_DATA)$/;

/** A call as ONLYOFFICE makes it. Errors go back as the text of the error value: it has no way to show our message. */
export function callFromDocument(
  declaration: RegisteredFunction,
  given: ArrayLike<unknown>,
): SheetCell | SheetCell[][] {
  const values = Array.from(given).slice(0, declaration.parameterNames.length);
  const outcome = callFunction(declaration, values.map(argumentOf));
  return Array.isArray(outcome) ? outcome.map((row) => row.map(cellOf)) : cellOf(outcome);
}

/** One cell may come bare or in brackets, a row or column as rows of cells. */
function argumentOf(value: unknown): Argument {
  return Array.isArray(value)
    ? (value as unknown[]).map((row) => (Array.isArray(row) ? row.map(inputOf) : [inputOf(row)]))
    : inputOf(value);
}

function inputOf(cell: unknown): CellInput {
  return typeof cell === 'string' && errorText.test(cell) ? new HostError(cell) : (cell as CellInput);
}

function cellOf(cell: CellOutput): SheetCell {
  if (cell instanceof CalcError) return cellErrorOf[cell.code];
  if (cell instanceof HostError) return String(cell.original);
  return cell;
}
