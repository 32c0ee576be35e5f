import * as library from '@formulajs/formulajs';
import type { Operand } from '../model/operand.ts';
import { isMatrix } from '../model/operand.ts';
import { readOperand } from '../formula/read-reference.ts';
import { Reference } from '../model/reference.ts';
import type { CellValue } from '../model/values.ts';
import {
  CellError,
  divisionByZero,
  errorFromText,
  notAvailable,
  numberError,
  valueError,
} from '../model/values.ts';
import { repeated } from './standard-function.ts';
import type { FunctionTable, StandardFunction } from './standard-function.ts';

type LibraryFunction = (...args: unknown[]) => unknown;

/** Functions of single numbers that the library gives right; compared with LibreOffice in the host tests. */
const ofNumbers = [
  'ACOTH BITAND BITLSHIFT BITOR BITRSHIFT BITXOR COMBINA COT COTH CSC CSCH',
  'DELTA EFFECT ERF ERFC FACTDOUBLE FISHER FISHERINV FV GAMMALN GAUSS GESTEP IPMT ISPMT NOMINAL NPER',
  'PDURATION PERMUTATIONA PHI PMT PPMT PV RRI SEC SECH SLN STANDARDIZE SYD DB DDB CUMIPMT CUMPRINC',
  'DOLLARDE DOLLARFR NORMSINV NORMINV NORMDIST',
]
  .join(' ')
  .split(' ');

const isShare = ([share = 0]: readonly number[]): boolean => share > 0 && share < 1;

/** What the library answers beyond the limits of a function, where the function has no answer. */
const limits: Readonly<Record<string, (args: readonly number[]) => boolean>> = {
  CUMIPMT: ([, periods = 0, , first = 0, last = 0]) => first >= 1 && last <= periods,
  CUMPRINC: ([, periods = 0, , first = 0, last = 0]) => first >= 1 && last <= periods,
  IPMT: ([, period = 0, periods = 0]) => period >= 1 && period <= periods,
  PPMT: ([, period = 0, periods = 0]) => period >= 1 && period <= periods,
  NORMINV: isShare,
  'NORM.INV': isShare,
  NORMSINV: isShare,
};

/** Functions of text or numbers, one value each. */
const ofValues =
  'DECIMAL ROMAN BIN2DEC BIN2OCT DEC2BIN DEC2OCT HEX2BIN HEX2DEC HEX2OCT OCT2BIN OCT2DEC'.split(' ');

/** The same where the library spells hexadecimal digits small and worksheets in capitals. */
const ofValuesInCapitals = ['BASE', 'BIN2HEX', 'DEC2HEX', 'OCT2HEX'];

/** Functions that take ranges whole, of which only the numbers count; and which of their arguments are single figures. */
const ofRanges: Readonly<Record<string, readonly number[]>> = {
  KURT: [],
  MULTINOMIAL: [],
  NPV: [0],
  SERIESSUM: [0, 1, 2],
  SKEW: [],
};

/** Functions of two ranges side by side, of which only places with a number in both count. */
const ofPairs = 'CORREL COVAR FORECAST INTERCEPT PEARSON RSQ SLOPE STEYX XIRR XNPV'.split(' ');

/** Functions with a dot in the name, by where the library keeps them. */
const dotted: Readonly<Record<string, readonly [group: string, member: string]>> = {
  'BETA.DIST': ['BETA', 'DIST'],
  'BINOM.DIST': ['BINOM', 'DIST'],
  'CHISQ.DIST': ['CHISQ', 'DIST'],
  'CHISQ.INV': ['CHISQ', 'INV'],
  'CONFIDENCE.NORM': ['CONFIDENCE', 'NORM'],
  'EXPON.DIST': ['EXPON', 'DIST'],
  'NORM.DIST': ['NORM', 'DIST'],
  'NORM.INV': ['NORM', 'INV'],
  'POISSON.DIST': ['POISSON', 'DIST'],
  'WEIBULL.DIST': ['WEIBULL', 'DIST'],
};

/** Calls the library and turns what it answers into a cell's value. */
function ask(call: LibraryFunction, args: readonly unknown[]): CellValue {
  let answer: unknown;
  try {
    answer = call(...args);
  } catch (problem) {
    return problem instanceof Error ? errorFromText(problem.message) : valueError;
  }
  if (answer instanceof Error) return errorFromText(answer.message);
  if (typeof answer === 'number') return Number.isFinite(answer) ? answer : numberError;
  if (typeof answer === 'string' || typeof answer === 'boolean') return answer;
  return valueError;
}

function wrap(taking: 'number' | 'value', call: LibraryFunction): StandardFunction {
  return repeated([], taking, (_place, _first, args) => ask(call, args));
}

function wrapRanges(call: LibraryFunction, single: readonly number[]): StandardFunction {
  return repeated([], 'operand', (place, _first, operands) => {
    const args: unknown[] = [];
    for (const [index, operand] of operands.entries()) {
      const contents = readOperand(operand, place, true);
      const failure = firstFailure(contents);
      if (failure !== undefined) return failure;
      if (isMatrix(contents)) args.push(contents.flat().filter(isNumber));
      // A range of one cell is a range all the same.
      else if (operand instanceof Reference && !single.includes(index)) {
        args.push(typeof contents === 'number' ? [contents] : []);
      } else args.push(contents);
    }
    return ask(call, args);
  });
}

function wrapPairs(call: LibraryFunction): StandardFunction {
  return repeated([], 'operand', (place, _first, operands) => {
    const args = operands.map((operand) => readOperand(operand, place, true) ?? null);
    const failure = args.map(firstFailure).find((found) => found !== undefined);
    if (failure !== undefined) return failure;
    const lists = args.map((contents) => (isMatrix(contents) ? contents.flat() : undefined));
    const [one, other] = lists.filter((list) => list !== undefined);
    if (one === undefined || other === undefined) return ask(call, args);
    if (one.length !== other.length) return notAvailable;
    const isPair = one.map((value, index) => isNumber(value) && isNumber(other[index] ?? null));
    const answer = ask(
      call,
      args.map((contents, index) => lists[index]?.filter((_value, at) => isPair[at]) ?? contents),
    );
    // Too few pairs, or all alike: nothing to divide by.
    return answer === numberError ? divisionByZero : answer;
  });
}

function isNumber(value: CellValue): value is number {
  return typeof value === 'number';
}

function firstFailure(contents: Operand): CellError | undefined {
  if (contents instanceof CellError) return contents;
  if (!isMatrix(contents)) return undefined;
  return contents.flat().find((value) => value instanceof CellError);
}

function member(name: string, inside?: string): LibraryFunction | undefined {
  const found = (library as unknown as Record<string, unknown>)[name];
  const target = inside === undefined ? found : (found as Record<string, unknown> | undefined)?.[inside];
  return typeof target === 'function' ? (target as LibraryFunction) : undefined;
}

/** The library's function, with no answer beyond the limits that are listed for it. */
function within(name: string, call: LibraryFunction): LibraryFunction {
  const isInside = limits[name];
  if (isInside === undefined) return call;
  return (...args) => (isInside(args as number[]) ? call(...args) : Number.NaN);
}

function table(): FunctionTable {
  const functions: Record<string, StandardFunction> = {};
  const add = (
    name: string,
    call: LibraryFunction | undefined,
    make: (call: LibraryFunction) => StandardFunction,
  ): void => {
    if (call === undefined) throw new Error(`the library has no ${name}`);
    functions[name] = make(call);
  };
  for (const name of ofNumbers) add(name, member(name), (call) => wrap('number', within(name, call)));
  add('ARABIC', member('ARABIC'), (call) =>
    wrap('value', (text) => call(typeof text === 'string' ? text.toUpperCase() : text)),
  );
  for (const name of ofValues) add(name, member(name), (call) => wrap('value', call));
  for (const name of ofValuesInCapitals) {
    add(name, member(name), (call) =>
      wrap('value', (...args) => {
        const answer = call(...args);
        return typeof answer === 'string' ? answer.toUpperCase() : answer;
      }),
    );
  }
  for (const [name, single] of Object.entries(ofRanges)) {
    add(name, member(name), (call) => wrapRanges(call, single));
  }
  for (const name of ofPairs) add(name, member(name), wrapPairs);
  for (const [name, [group, inside]] of Object.entries(dotted)) {
    add(name, member(group, inside), (call) => wrap('value', within(name, call)));
  }
  const normal = member('NORM', 'DIST');
  add('NORM.S.DIST', normal, (call) =>
    wrap('value', (value, isCumulative) => call(value, 0, 1, isCumulative)),
  );
  add('NORMSDIST', normal, (call) => wrap('value', (value) => call(value, 0, 1, true)));
  add('NORM.S.INV', member('NORMSINV'), (call) => wrap('number', within('NORMSINV', call)));
  return functions;
}

/** The long tail of finance, engineering and statistics, from a library. */
export const libraryFunctions: FunctionTable = table();
