/// <reference types="custom-functions-runtime" />
import { CalcError } from '../../../src/errors.ts';
import { callFunction } from '../../runtime/call.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { Argument, CellInput, CellOutput } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';

/** The part of Excel's custom-functions runtime that is used: handed in, so that it can be emulated. */
export type ErrorKit = Pick<typeof CustomFunctions, 'Error' | 'ErrorCode'>;

export type OfficeCell = number | string | boolean | CustomFunctions.Error;

/**
 * A function as Excel calls it: values in declared order, null for what was left out, then one more argument that
 * is no value. Gives a block of cells, or throws Excel's own error.
 */
export function adapt(
  declaration: RegisteredFunction,
  kit: ErrorKit,
): (...given: unknown[]) => OfficeCell[][] {
  const count = declaration.parameterNames.length;
  return (...given) => {
    const outcome = callFunction(
      declaration,
      given.slice(0, count).map((value) => argumentOf(value, kit)),
    );
    if (Array.isArray(outcome)) return outcome.map((row) => row.map((cell) => cellOf(cell, kit)));
    const cell = cellOf(outcome, kit);
    if (cell instanceof kit.Error) throw cell as unknown as Error;
    return [[cell]];
  };
}

function argumentOf(value: unknown, kit: ErrorKit): Argument {
  return Array.isArray(value)
    ? (value as unknown[][]).map((row) => row.map((cell) => inputOf(cell, kit)))
    : inputOf(value, kit);
}

function inputOf(cell: unknown, kit: ErrorKit): CellInput {
  return cell instanceof kit.Error ? new HostError(cell) : (cell as CellInput);
}

function cellOf(cell: CellOutput, kit: ErrorKit): OfficeCell {
  if (cell instanceof CalcError) return errorOf(cell, kit);
  if (cell instanceof HostError) return cell.original as CustomFunctions.Error;
  return cell;
}

/** Excel shows the message beside #VALUE! and #N/A; beside #NUM! it keeps it to itself. */
function errorOf(error: CalcError, { Error: CellError, ErrorCode }: ErrorKit): CustomFunctions.Error {
  const codes = {
    '#VALUE!': ErrorCode.invalidValue,
    '#NUM!': ErrorCode.invalidNumber,
    '#N/A': ErrorCode.notAvailable,
  };
  return new CellError(codes[cellErrorOf[error.code]], error.message);
}
