import { programFault } from '../../runtime/program-fault.ts';
import type { CustomArgument } from '../model/custom-functions.ts';
import { isError } from '../model/operand.ts';
import type { Contents, Operand } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import { OutOfTime } from '../model/time-allowance.ts';
import { CellError } from '../model/values.ts';
import type { CellValue, Matrix } from '../model/values.ts';
import type { Argument, Compiler } from './compilation.ts';
import type { Evaluate, Place } from '../formula/compiled-formula.ts';
import { readOperand } from '../formula/read-reference.ts';
import { isStackExhausted } from '../formula/stack-exhausted.ts';

/**
 * A call of a custom function. Ranges arrive whole, also in ordinary cells, and operators between them work on whole
 * ranges; what comes back is a value or rows of values.
 */
export function compileCustomCall(compiler: Compiler, id: string, args: readonly Argument[]): Evaluate {
  const { workbook } = compiler.compilation;
  const provider = workbook.customFunctions;
  const evaluators = args.map((argument) => compiler.operand(argument, true));
  if (provider.isVolatile?.(id) === true) compiler.compilation.isVolatile = true;
  const takesErrors = provider.takesErrors?.(id) === true;
  const count = evaluators.length;
  return (place) => {
    const values = new Array<CustomArgument>(count);
    for (let index = 0; index < count; index++) {
      const value = readArgument((evaluators[index] as Evaluate)(place), place);
      if (!takesErrors && isError(value)) return value;
      values[index] = value;
    }
    return checkedAnswer(id, () => provider.call(id, values));
  };
}

/** Large ranges arrive as one and the same object in all calls of a run, so that a ledger is not copied for every row. */
function readArgument(operand: Operand, place: Place): Contents | undefined {
  if (!(operand instanceof Reference) || operand.isSingle) return readOperand(operand, place, true);
  return place.workbook.caches.matrix(operand, place.workbook);
}

function checkedAnswer(id: string, ask: () => unknown): Operand {
  let answer: unknown;
  try {
    answer = ask();
  } catch (problem) {
    if (problem instanceof OutOfTime || isStackExhausted(problem)) throw problem;
    return new CellError('#VALUE!', programFault(problem).message);
  }
  if (!Array.isArray(answer)) return checkedValue(id, answer as CellValue | undefined);
  const rows = answer as unknown[];
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  if (width === 0 || rows.some((row) => !Array.isArray(row) || row.length !== width)) {
    return new CellError('#VALUE!', `${id} answered with rows of different lengths or with nothing`);
  }
  return (rows as Matrix).map((row) => row.map((value) => checkedValue(id, value)));
}

/** A blank answer shows as empty text: no host can hand a blank on, and 0 would be a reading. */
function checkedValue(id: string, value: CellValue | undefined): CellValue {
  if (value === null || value === undefined) return '';
  return typeof value === 'number' ? checkedNumber(id, value) : value;
}

function checkedNumber(id: string, value: number): number | CellError {
  return Number.isFinite(value) ? value : new CellError('#NUM!', `${id} answered with a number that is none`);
}
