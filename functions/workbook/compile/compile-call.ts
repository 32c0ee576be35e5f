import type { CallExpression } from '@borgar/fx/xlsx';
import { specialForms } from './special-forms.ts';
import { standardFunctions } from '../functions/standard-functions.ts';
import { isError, LambdaValue } from '../model/operand.ts';
import { nameError, valueError } from '../model/values.ts';
import type { Compiler } from './compilation.ts';
import type { Evaluate } from '../formula/compiled-formula.ts';
import { compileCustomCall } from './compile-custom-call.ts';
import { compileStandardCall } from './compile-standard-call.ts';
import { FormulaProblem } from '../formula/problem.ts';

/** A call: of a special form, a standard function, a custom function, or a LAMBDA by its name or in place. */
export function compileCall(compiler: Compiler, node: CallExpression, whole: boolean): Evaluate {
  // The parser's types promise an identifier, but any expression may be called.
  const callee = node.callee as { type: string; name: string };
  if (callee.type !== 'Identifier') {
    return compileLambdaCall(compiler, compiler.operand(node.callee as never, whole), node, whole);
  }
  const name = callee.name.toUpperCase();
  if (compiler.compilation.names.has(name.toLowerCase())) {
    return compileLambdaCall(compiler, namedOperand(compiler, callee.name), node, whole);
  }
  const form = specialForms.get(name);
  if (form !== undefined) return form(compiler, node.arguments, whole);
  const standard = standardFunctions.get(name);
  if (standard !== undefined) return compileStandardCall(compiler, name, standard, node.arguments, whole);
  const { workbook, sheet } = compiler.compilation;
  const id = workbook.customFunctions.resolve(callee.name);
  if (id !== undefined) return compileCustomCall(compiler, id, node.arguments);
  if (workbook.compiledName(callee.name, sheet) !== undefined) {
    return compileLambdaCall(compiler, namedOperand(compiler, callee.name), node, whole);
  }
  throw new FormulaProblem('unknown-function', `this host does not know the function ${callee.name}`);
}

function namedOperand(compiler: Compiler, name: string): Evaluate {
  return compiler.operand({ type: 'ReferenceIdentifier', kind: 'name', value: name }, true);
}

function compileLambdaCall(
  compiler: Compiler,
  callee: Evaluate,
  node: CallExpression,
  whole: boolean,
): Evaluate {
  const args = node.arguments.map((argument) => compiler.operand(argument, whole));
  return (place) => {
    const target = callee(place);
    if (isError(target)) return target;
    if (!(target instanceof LambdaValue)) return target === undefined ? nameError : valueError;
    return target.call(args.map((argument) => argument(place)));
  };
}
