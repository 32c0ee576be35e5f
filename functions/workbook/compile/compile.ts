import type { AstExpression, LambdaExpression, LetExpression } from '@borgar/fx/xlsx';
import { programFault } from '../../runtime/program-fault.ts';
import type { KeptReason } from '../model/kept-reason.ts';
import type { Operand } from '../model/operand.ts';
import { LambdaValue } from '../model/operand.ts';
import type { Sheet } from '../model/sheet.ts';
import { errorFromText, nameError, valueError } from '../model/values.ts';
import type { CellValue } from '../model/values.ts';
import { combine, mapContents } from '../formula/broadcast.ts';
import type { Argument, Compilation, Compiler, Meanings } from './compilation.ts';
import { compileCall } from './compile-call.ts';
import { compileReference } from './compile-reference.ts';
import type { CompiledFormula, Evaluate } from '../formula/compiled-formula.ts';
import { binaryOperations, unaryOperations } from '../formula/operators.ts';
import { parseFormula } from '../formula/parse.ts';
import { FormulaProblem } from '../formula/problem.ts';
import { isStackExhausted } from '../formula/stack-exhausted.ts';
import { firstValue, intersect, readOperand, resolvePattern } from '../formula/read-reference.ts';
import { Reference } from '../model/reference.ts';
import { compileRangeOperator, spilledRange } from './reference-operators.ts';

/** Where a formula stands, and whether its ranges are read whole (array formula) or cut to the cell's row or column. */
export interface FormulaPlace {
  readonly workbook: Meanings;
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly whole: boolean;
}

const nothing: Evaluate = () => undefined;

/** Compiles a formula. Never throws: what cannot be worked out here comes back with a `problem`. */
export function compileFormula(formula: string, place: FormulaPlace): CompiledFormula {
  const compilation: Compilation = {
    workbook: place.workbook,
    sheet: place.sheet,
    row: place.row,
    column: place.column,
    reads: [],
    names: new Map(),
    slotCount: 0,
    isVolatile: false,
    nameSteps: 0,
  };
  try {
    const evaluate = compilerFor(compilation).operand(parseFormula(formula), place.whole);
    return {
      evaluate,
      reads: distinct(compilation.reads),
      isVolatile: compilation.isVolatile,
      nameSteps: compilation.nameSteps,
      problem: undefined,
    };
  } catch (problem) {
    return { evaluate: () => nameError, reads: [], isVolatile: false, problem: reasonOf(problem) };
  }
}

function reasonOf(problem: unknown): KeptReason {
  if (problem instanceof FormulaProblem) return problem.reason;
  // A formula nested thousands deep is no reason to fail the whole workbook.
  if (isStackExhausted(problem)) {
    return { kind: 'unreadable', message: 'the formula is nested too deeply to be read' };
  }
  return { kind: 'failure', message: programFault(problem).message };
}

function distinct<T extends object>(reads: readonly T[]): T[] {
  const seen = new Map(reads.map((pattern) => [Object.values(pattern).map(spell).join(), pattern]));
  return [...seen.values()];
}

function spell(value: unknown): string {
  return typeof value === 'object' && value !== null && 'index' in value
    ? `s${String(value.index)}`
    : String(value);
}

function compilerFor(compilation: Compilation): Compiler {
  const compiler: Compiler = {
    compilation,
    operand: (node, whole) => compileOperand(compiler, node, whole),
    contents: (node, whole) => compileContents(compiler, node, whole),
  };
  return compiler;
}

function compileContents(compiler: Compiler, node: Argument, whole: boolean): Evaluate {
  if (node === null || node === undefined) return nothing;
  const operand = compiler.operand(node, whole);
  if (node.type === 'Literal' || node.type === 'ArrayExpression') return operand;
  if (node.type === 'BinaryExpression' && binaryOperations.has(node.operator)) return operand;
  if (node.type === 'ReferenceIdentifier' && node.kind === 'range') {
    const single = singleCell(compiler, node.value);
    if (single !== undefined) return single;
  }
  return (place) => {
    const value = operand(place);
    return typeof value === 'object' || value === undefined ? readOperand(value, place, whole) : value;
  };
}

/** Shortcut for a reference to one cell of the formula's own sheet, by far the most frequent part of a formula. */
function singleCell(compiler: Compiler, text: string): Evaluate | undefined {
  if (text.includes('!')) return undefined;
  const { reads } = compiler.compilation;
  const pattern = reads[reads.length - 1];
  if (pattern === undefined || pattern.sheet !== undefined) return undefined;
  if (pattern.top !== pattern.bottom || pattern.left !== pattern.right) return undefined;
  if (pattern.topFixed !== pattern.bottomFixed || pattern.leftFixed !== pattern.rightFixed) return undefined;
  const { top, left, topFixed, leftFixed } = pattern;
  return (place) => {
    const row = topFixed ? top : top + place.row;
    const column = leftFixed ? left : left + place.column;
    if (row < 0 || column < 0) return resolvePattern(pattern, place);
    return place.sheet.value(row, column);
  };
}

function compileOperand(compiler: Compiler, node: Argument, whole: boolean): Evaluate {
  if (node === null || node === undefined) return nothing;
  switch (node.type) {
    case 'Literal': {
      const { value } = node;
      return () => value;
    }
    case 'ErrorLiteral': {
      const error = errorFromText(node.value);
      return () => error;
    }
    case 'ReferenceIdentifier':
      return compileReference(compiler, node);
    case 'UnaryExpression':
      return compileUnary(compiler, node.operator, node.arguments[0], whole);
    case 'BinaryExpression': {
      const [left, right] = node.arguments;
      const operation = binaryOperations.get(node.operator);
      if (operation === undefined) return compileRangeOperator(compiler, node.operator, left, right);
      return compileBinary(compiler, operation, left, right, whole);
    }
    case 'ArrayExpression':
      return compileArray(compiler, node.elements);
    case 'LetExpression':
      return compileLet(compiler, node, whole);
    case 'LambdaExpression':
      return compileLambda(compiler, node, whole);
    case 'CallExpression':
      return compileCall(compiler, node, whole);
  }
}

function compileBinary(
  compiler: Compiler,
  operation: NonNullable<ReturnType<typeof binaryOperations.get>>,
  left: Argument,
  right: Argument,
  whole: boolean,
): Evaluate {
  const first = compiler.contents(left, whole);
  const second = compiler.contents(right, whole);
  const system = compiler.compilation.workbook.dateSystem;
  return (place) => {
    const a = (first(place) ?? null) as CellValue;
    const b = (second(place) ?? null) as CellValue;
    if (Array.isArray(a) || Array.isArray(b)) return combine(a, b, (x, y) => operation(x, y, system));
    return operation(a, b, system);
  };
}

function compileUnary(compiler: Compiler, operator: string, argument: Argument, whole: boolean): Evaluate {
  if (operator === '#') return spilledRange(compiler, argument);
  if (operator === '@') {
    const operand = compiler.operand(argument, true);
    return (place) => {
      const value = operand(place);
      return value instanceof Reference ? intersect(value, place) : firstValue(value);
    };
  }
  const operation = unaryOperations.get(operator);
  if (operation === undefined) throw new FormulaProblem('unreadable', `unknown operator ${operator}`);
  const contents = compiler.contents(argument, whole);
  const system = compiler.compilation.workbook.dateSystem;
  return (place) => mapContents((contents(place) ?? null) as CellValue, (value) => operation(value, system));
}

function compileArray(compiler: Compiler, rows: readonly (readonly AstExpression[])[]): Evaluate {
  const elements = rows.map((row) => row.map((element) => compiler.contents(element, false)));
  const width = elements[0]?.length ?? 0;
  if (width === 0 || elements.some((row) => row.length !== width)) {
    throw new FormulaProblem('unreadable', 'the rows of an array constant have different lengths');
  }
  return (place) => elements.map((row) => row.map((element) => firstValue(element(place))));
}

function compileLet(compiler: Compiler, node: LetExpression, whole: boolean): Evaluate {
  const { compilation } = compiler;
  const outside = compilation.names;
  const steps = node.declarations.map((declaration) => {
    const evaluate = compiler.operand(declaration.init, whole);
    const slot = declareName(compilation, declaration.id.name);
    return { slot, evaluate };
  });
  const body = compiler.operand(node.body, whole);
  compilation.names = outside;
  return (place) => {
    for (const step of steps) place.variables[step.slot] = step.evaluate(place);
    return body(place);
  };
}

function compileLambda(compiler: Compiler, node: LambdaExpression, whole: boolean): Evaluate {
  const { compilation } = compiler;
  const outside = compilation.names;
  const slots = node.params.map((parameter) => declareName(compilation, parameter.name));
  const body = compiler.operand(node.body, whole);
  compilation.names = outside;
  return (place) => {
    const seen = place.variables.slice();
    return new LambdaValue(slots.length, (args: readonly Operand[]) => {
      if (args.length > slots.length) return valueError;
      const before = place.variables;
      const mine = seen.slice();
      slots.forEach((slot, index) => {
        mine[slot] = args[index];
      });
      place.variables = mine;
      const result = body(place);
      place.variables = before;
      return result;
    });
  };
}

function declareName(compilation: Compilation, name: string): number {
  const slot = compilation.slotCount++;
  compilation.names = new Map(compilation.names).set(name.toLowerCase(), slot);
  return slot;
}
