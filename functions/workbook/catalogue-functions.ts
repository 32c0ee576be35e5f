import { CalcError } from '../../src/errors.ts';
import { call } from '../catalogue/call.ts';
import { catalogue } from '../catalogue/index.ts';
import { cellErrorOf } from '../runtime/cell-errors.ts';
import type { Argument, CellInput, CellOutput } from '../runtime/cells.ts';
import { HostError } from '../runtime/cells.ts';
import type { CustomArgument, CustomFunctions } from './model/custom-functions.ts';
import type { CellValue } from './model/values.ts';
import { CellError } from './model/values.ts';
import { idOf } from './spell.ts';

/** The catalogue as the workbook engine calls it. A function the catalogue lacks is not ours: its cells keep their values. */
export const catalogueFunctions: CustomFunctions = {
  resolve(name) {
    const id = idOf(name);
    return id === undefined ? undefined : catalogue.find(id)?.id;
  },
  call(id, args) {
    const outcome = call(id, args.map(argumentOf));
    return Array.isArray(outcome) ? outcome.map((row) => row.map(valueOf)) : valueOf(outcome);
  },
};

function argumentOf(argument: CustomArgument): Argument {
  return Array.isArray(argument) ? rangeOf(argument) : inputOf(argument);
}

/** A range without errors is passed on as it is: functions over a long ledger remember what they read of that very range. */
function rangeOf(matrix: CellValue[][]): Argument {
  const hasError = matrix.some((row) => row.some((value) => value instanceof CellError));
  return hasError ? matrix.map((row) => row.map(inputOf)) : (matrix as CellInput[][]);
}

function inputOf(value: CellValue | undefined): CellInput {
  return value instanceof CellError ? new HostError(value) : value;
}

function valueOf(cell: CellOutput): CellValue {
  if (cell instanceof CalcError) return new CellError(cellErrorOf[cell.code], cell.message);
  if (cell instanceof HostError) return cell.original as CellError;
  return cell;
}
