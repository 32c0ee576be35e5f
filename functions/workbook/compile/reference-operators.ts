import { areasOf, asReference, isError } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { Reference, ReferenceList } from '../model/reference.ts';
import { nullError, referenceError, valueError } from '../model/values.ts';
import type { Argument, Compiler } from './compilation.ts';
import type { Evaluate } from '../formula/compiled-formula.ts';
import { FormulaProblem } from '../formula/problem.ts';

/** The range (:), union (,) and intersection (space) operators between two references. */
export function compileRangeOperator(
  compiler: Compiler,
  operator: string,
  left: Argument,
  right: Argument,
): Evaluate {
  const first = compiler.operand(left, true);
  const second = compiler.operand(right, true);
  const join = operator === ':' ? span : operator === ',' ? union : operator === ' ' ? overlap : undefined;
  if (join === undefined) throw new FormulaProblem('unreadable', `unknown operator ${operator}`);
  // The cells between two ends that are worked out are not known beforehand.
  if (operator === ':') compiler.compilation.isVolatile = true;
  return (place) => {
    const a = first(place);
    if (isError(a)) return a;
    const b = second(place);
    if (isError(b)) return b;
    const result = join(a, b);
    if (operator === ':' && result instanceof Reference) place.workbook.requireSettled(result);
    return result;
  };
}

function span(left: Operand, right: Operand): Operand {
  const first = asReference(left);
  const second = asReference(right);
  if (first === undefined || second === undefined || first.sheet !== second.sheet) return valueError;
  return new Reference(
    first.sheet,
    Math.min(first.top, second.top),
    Math.min(first.left, second.left),
    Math.max(first.bottom, second.bottom),
    Math.max(first.right, second.right),
  );
}

function union(left: Operand, right: Operand): Operand {
  const areas = [...areasOf(left), ...areasOf(right)];
  return areas.length < 2 ? valueError : new ReferenceList(areas);
}

function overlap(left: Operand, right: Operand): Operand {
  const first = asReference(left);
  const second = asReference(right);
  if (first === undefined || second === undefined) return valueError;
  const top = Math.max(first.top, second.top);
  const bottom = Math.min(first.bottom, second.bottom);
  const leftmost = Math.max(first.left, second.left);
  const rightmost = Math.min(first.right, second.right);
  if (first.sheet !== second.sheet || top > bottom || leftmost > rightmost) return nullError;
  return new Reference(first.sheet, top, leftmost, bottom, rightmost);
}

/** The cells that a spilling formula fills, as in A1#. */
export function spilledRange(compiler: Compiler, argument: Argument): Evaluate {
  const operand = compiler.operand(argument, true);
  compiler.compilation.isVolatile = true;
  return (place) => {
    const origin = asReference(operand(place));
    if (origin?.isSingle !== true) return referenceError;
    const cell = origin.sheet.formula(origin.top, origin.left);
    if (cell?.shape !== 'spill' || cell.anchor !== undefined) return referenceError;
    return new Reference(
      origin.sheet,
      origin.top,
      origin.left,
      origin.top + cell.height - 1,
      origin.left + cell.width - 1,
    );
  };
}
