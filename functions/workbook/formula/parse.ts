import { parse, tokenize, tokenTypes } from '@borgar/fx/xlsx';
import type { AstExpression } from '@borgar/fx/xlsx';
import { FormulaProblem } from './problem.ts';
import { isStackExhausted } from './stack-exhausted.ts';

/** Marks that files put before newer functions and before LET and LAMBDA names; they are no part of the name. */
const storagePrefix = /^(?:_xlfn\.|_xlws\.|_xludf\.|_xlpm\.)+/i;

/** Syntax tree of a formula, with or without its equals sign. Throws FormulaProblem when it cannot be read. */
export function parseFormula(formula: string): AstExpression {
  const text = formula.startsWith('=') ? formula : `=${formula}`;
  const tokens = tokenize(text, { withLocation: false });
  const readable = tokens.flatMap((token, index) => {
    if (token.type === tokenTypes.FUNCTION || token.type === tokenTypes.REF_NAMED) {
      token.value = token.value.replace(storagePrefix, '');
      return [token];
    }
    // "Sheet1!#REF!" stands for a deleted cell: the sheet in front says nothing any more.
    if (isContext(token.type)) {
      const after = tokens.slice(index + 1, index + 3).map((next) => next.value.toUpperCase());
      if (after[0] === '!' && after[1] === '#REF!') return [];
    }
    const before = tokens[index - 1];
    if (token.value === '!' && before !== undefined && isContext(before.type)) return [];
    return [token];
  });
  try {
    return parse(readable, { permitArrayCalls: true, permitArrayRanges: true });
  } catch (problem) {
    if (isStackExhausted(problem)) throw problem;
    const why = problem instanceof Error ? problem.message : String(problem);
    throw new FormulaProblem('unreadable', `the formula cannot be read: ${why}`);
  }
}

function isContext(type: string): boolean {
  return type === tokenTypes.CONTEXT || type === tokenTypes.CONTEXT_QUOTE;
}
