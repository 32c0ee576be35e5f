import type { Argument, Compiler } from './compilation.ts';
import type { Evaluate, Place } from '../formula/compiled-formula.ts';
import { buildMatrix, combine, stretchedSize, stretchedValue } from '../formula/broadcast.ts';
import { FormulaProblem } from '../formula/problem.ts';
import { readOperand } from '../formula/read-reference.ts';
import { toBoolean, toNumber } from '../model/coerce.ts';
import { compareValues } from '../model/compare.ts';
import { isError, isMatrix } from '../model/operand.ts';
import type { Contents, Operand } from '../model/operand.ts';
import type { CellError, CellValue } from '../model/values.ts';
import { notAvailable, valueError } from '../model/values.ts';
import { spilledRange } from './reference-operators.ts';

/** A function that decides itself which of its arguments are worked out. */
export type SpecialForm = (compiler: Compiler, args: readonly Argument[], whole: boolean) => Evaluate;

function need(name: string, args: readonly Argument[], fewest: number, most: number): void {
  if (args.length < fewest || args.length > most) {
    throw new FormulaProblem('unreadable', `${name} cannot be given ${args.length} arguments`);
  }
}

/** Contents of an operand when a matrix test decides value by value. */
function contentsOf(evaluate: Evaluate | undefined, place: Place, absent: CellValue): Contents {
  if (evaluate === undefined) return absent;
  return readOperand(evaluate(place), place, true) ?? 0;
}

function compileIf(compiler: Compiler, args: readonly Argument[], whole: boolean): Evaluate {
  need('IF', args, 1, 3);
  const test = compiler.contents(args[0], whole);
  const then = args.length > 1 ? compiler.operand(args[1], whole) : undefined;
  const otherwise = args.length > 2 ? compiler.operand(args[2], whole) : undefined;
  return (place) => {
    const condition = test(place) as Contents | undefined;
    if (!isMatrix(condition)) {
      const truth = typeof condition === 'boolean' ? condition : toBoolean(condition ?? null);
      if (isError(truth)) return truth;
      const branch = truth ? then : otherwise;
      if (branch === undefined) return truth;
      const result = branch(place);
      return result === undefined ? 0 : result;
    }
    const yes = contentsOf(then, place, true);
    const no = contentsOf(otherwise, place, false);
    const { rows, columns } = stretchedSize([condition, yes, no]);
    return buildMatrix(rows, columns, (row, column) => {
      const truth = toBoolean(stretchedValue(condition, row, column));
      if (isError(truth)) return truth;
      return stretchedValue(truth ? yes : no, row, column);
    });
  };
}

function compileRescue(name: string, catches: (error: CellError) => boolean): SpecialForm {
  return (compiler, args, whole) => {
    need(name, args, 2, 2);
    const attempt = compiler.contents(args[0], whole);
    const rescue = compiler.contents(args[1], whole);
    return (place) => {
      const value = attempt(place) as Contents | undefined;
      if (!isMatrix(value)) {
        if (!isError(value) || !catches(value)) return value ?? 0;
        return rescue(place) ?? 0;
      }
      if (!value.some((line) => line.some((item) => isError(item) && catches(item)))) return value;
      const substitute = (rescue(place) ?? 0) as Contents;
      return combine(value, substitute, (item, other) => (isError(item) && catches(item) ? other : item));
    };
  };
}

/** Runs a form value by value when its deciding argument is an array. */
function decide(
  index: Contents,
  place: Place,
  choose: (value: CellValue) => Evaluate | CellError | undefined,
): Operand {
  const pick = (value: CellValue): Operand => {
    if (isError(value)) return value;
    const choice = choose(value);
    if (choice === undefined) return notAvailable;
    return typeof choice === 'function' ? (choice(place) ?? 0) : choice;
  };
  if (!isMatrix(index)) return pick(index);
  return index.map((line, row) =>
    line.map((value, column) => stretchedValue(readOperand(pick(value), place, true) ?? 0, row, column)),
  );
}

function compileChoose(compiler: Compiler, args: readonly Argument[], whole: boolean): Evaluate {
  need('CHOOSE', args, 2, 255);
  const selector = compiler.contents(args[0], whole);
  const choices = args.slice(1).map((argument) => compiler.operand(argument, whole));
  const system = compiler.compilation.workbook.dateSystem;
  return (place) =>
    decide((selector(place) ?? null) as Contents, place, (value) => {
      const number = toNumber(value, system);
      if (isError(number)) return number;
      return choices[Math.trunc(number) - 1] ?? valueError;
    });
}

function compileSwitch(compiler: Compiler, args: readonly Argument[], whole: boolean): Evaluate {
  need('SWITCH', args, 3, 254);
  const selector = compiler.contents(args[0], whole);
  const cases: { match: Evaluate; result: Evaluate }[] = [];
  for (let index = 1; index + 1 < args.length; index += 2) {
    cases.push({
      match: compiler.contents(args[index], whole),
      result: compiler.operand(args[index + 1], whole),
    });
  }
  const fallback = args.length % 2 === 0 ? compiler.operand(args[args.length - 1], whole) : undefined;
  return (place) =>
    decide((selector(place) ?? null) as Contents, place, (value) => {
      for (const { match, result } of cases) {
        const candidate = (match(place) ?? null) as Contents;
        if (isError(candidate)) return candidate;
        if (!isMatrix(candidate) && sameKind(value, candidate) && compareValues(value, candidate) === 0) {
          return result;
        }
      }
      return fallback;
    });
}

function sameKind(left: CellValue, right: CellValue): boolean {
  return left === null || right === null || typeof left === typeof right;
}

function compileIfs(compiler: Compiler, args: readonly Argument[], whole: boolean): Evaluate {
  need('IFS', args, 2, 254);
  if (args.length % 2 !== 0) throw new FormulaProblem('unreadable', 'IFS needs its arguments in pairs');
  // IFS(a,x,b,y) is IF(a,x,IF(b,y,#N/A)).
  let chain: Evaluate = () => notAvailable;
  for (let index = args.length - 2; index >= 0; index -= 2) {
    const rest = chain;
    const test = compiler.contents(args[index], whole);
    const result = compiler.operand(args[index + 1], whole);
    chain = (place) => {
      const condition = (test(place) ?? null) as Contents;
      if (!isMatrix(condition)) {
        const truth = toBoolean(condition);
        if (isError(truth)) return truth;
        return truth ? (result(place) ?? 0) : rest(place);
      }
      const yes = contentsOf(result, place, 0);
      const no = contentsOf(rest, place, notAvailable);
      const { rows, columns } = stretchedSize([condition, yes, no]);
      return buildMatrix(rows, columns, (row, column) => {
        const truth = toBoolean(stretchedValue(condition, row, column));
        return isError(truth) ? truth : stretchedValue(truth ? yes : no, row, column);
      });
    };
  }
  return chain;
}

/** The functional spelling of the @ operator in files. */
function compileSingle(compiler: Compiler, args: readonly Argument[], whole: boolean): Evaluate {
  need('SINGLE', args, 1, 1);
  return compiler.operand({ type: 'UnaryExpression', operator: '@', arguments: [args[0] as never] }, whole);
}

export const specialForms: ReadonlyMap<string, SpecialForm> = new Map<string, SpecialForm>([
  ['IF', compileIf],
  ['IFERROR', compileRescue('IFERROR', () => true)],
  ['IFNA', compileRescue('IFNA', (error) => error.code === '#N/A')],
  ['IFS', compileIfs],
  ['CHOOSE', compileChoose],
  ['SWITCH', compileSwitch],
  ['SINGLE', compileSingle],
  ['ANCHORARRAY', (compiler, args) => spilledRange(compiler, args[0])],
]);
