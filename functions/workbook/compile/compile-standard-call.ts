import { toBoolean, toNumber, toText } from '../model/coerce.ts';
import type { StandardFunction, Taking } from '../functions/standard-function.ts';
import { isError, isMatrix } from '../model/operand.ts';
import type { Contents, Operand } from '../model/operand.ts';
import type { DateSystem } from '../model/serial-date.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, numberError } from '../model/values.ts';
import { buildMatrix, stretchedSize, stretchedValue } from '../formula/broadcast.ts';
import type { Argument, Compiler } from './compilation.ts';
import type { Evaluate } from '../formula/compiled-formula.ts';
import { FormulaProblem } from '../formula/problem.ts';
import { firstValue, readOperand } from '../formula/read-reference.ts';

/** The kernel around every standard function: counts, reads, converts and repeats over arrays, so that bodies stay plain. */
export function compileStandardCall(
  compiler: Compiler,
  name: string,
  standard: StandardFunction,
  args: readonly Argument[],
  whole: boolean,
): Evaluate {
  if (args.length < standard.fewest || args.length > standard.most) {
    throw new FormulaProblem('unreadable', `${name} cannot be given ${args.length} arguments`);
  }
  if (standard.isVolatile) compiler.compilation.isVolatile = true;
  const takings = args.map((_argument, index) => takingAt(standard, index));
  const evaluators = args.map((argument, index) => {
    const taking = takings[index];
    if (taking === 'operand') return compiler.operand(argument, whole);
    return compiler.contents(argument, whole || taking === 'array');
  });
  const system = compiler.compilation.workbook.dateSystem;
  const count = args.length;
  return (place) => {
    const taken = new Array<unknown>(count);
    let lifts = false;
    let failure: CellError | undefined;
    for (let index = 0; index < count; index++) {
      const raw = (evaluators[index] as Evaluate)(place);
      const taking = takings[index] as Taking;
      if (taking === 'operand') {
        taken[index] = raw;
      } else if (taking === 'array') {
        const contents = readOperand(raw, place, true) ?? null;
        taken[index] = isMatrix(contents) ? contents : [[contents]];
      } else if (isMatrix(raw)) {
        taken[index] = raw;
        lifts = true;
      } else {
        const value = convert(raw as CellValue | undefined, taking, system);
        if (taking !== 'any' && isError(value as Operand)) failure ??= value as CellError;
        taken[index] = value;
      }
    }
    if (lifts)
      return lift(taken, takings, system, (each) => realNumber(standard.run(place, each as never[])));
    return failure ?? realNumber(standard.run(place, taken as never[]));
  };
}

/** Whatever a body makes of odd arguments, no cell shows a number that is none. */
function realNumber(result: Operand): Operand {
  return typeof result === 'number' && !Number.isFinite(result) ? numberError : result;
}

function takingAt(standard: StandardFunction, index: number): Taking {
  const { takes, repeating } = standard;
  if (index < takes.length) return takes[index] as Taking;
  const start = takes.length - repeating;
  return takes[start + ((index - start) % repeating)] as Taking;
}

function convert(raw: CellValue | undefined, taking: Taking, system: DateSystem): unknown {
  const value = raw ?? null;
  switch (taking) {
    case 'number':
      return typeof value === 'number' ? value : toNumber(value, system);
    case 'text':
      return toText(value);
    case 'boolean':
      return toBoolean(value);
    default:
      return value;
  }
}

/** Runs a function once for every place of the area its array arguments span; a bad value fails alone. */
function lift(
  taken: readonly unknown[],
  takings: readonly Taking[],
  system: DateSystem,
  run: (args: unknown[]) => Operand,
): Contents {
  const isSingle = (index: number): boolean => takings[index] !== 'operand' && takings[index] !== 'array';
  const spread = taken.filter((value, index) => isSingle(index) && isMatrix(value as Operand)) as Contents[];
  const { rows, columns } = stretchedSize(spread);
  return buildMatrix(rows, columns, (row, column) => {
    const args = new Array<unknown>(taken.length);
    for (let index = 0; index < taken.length; index++) {
      const value = taken[index] as Operand;
      if (!isSingle(index) || !isMatrix(value)) {
        if (isSingle(index) && takings[index] !== 'any' && isError(value)) return value;
        args[index] = value;
        continue;
      }
      const part = convert(stretchedValue(value, row, column), takings[index] as Taking, system);
      if (takings[index] !== 'any' && part instanceof CellError) return part;
      args[index] = part;
    }
    return firstValue(run(args));
  });
}
