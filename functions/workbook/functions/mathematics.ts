import { powerOf } from '../formula/operators.ts';
import { addTo, startSum, sumOf } from '../model/kahan-sum.ts';
import type { CellValue, Matrix } from '../model/values.ts';
import { CellError, divisionByZero, numberError, valueError } from '../model/values.ts';
import { placed, pure, repeated, volatile } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

function finite(value: number): CellValue {
  return Number.isFinite(value) ? value : numberError;
}

function single(of: (value: number) => number): FunctionTable[string] {
  return pure(['number'], (value) => finite(of(value)));
}

/** Remainder with the sign of the divisor. */
function remainder(value: number, divisor: number): CellValue {
  if (divisor === 0) return divisionByZero;
  const quotient = Math.floor(value / divisor);
  if (quotient === 0) return value;
  const rest = value - divisor * quotient;
  // The quotient of, say, 0.3 and 0.1 is a hair below 3; such a rest is the divisor itself and means 0.
  return Math.abs(rest - divisor) < Math.abs(divisor) * 1e-14 || Math.abs(rest) < Math.abs(divisor) * 1e-14
    ? 0
    : rest;
}

function sumOfProducts(matrices: readonly Matrix[]): CellValue {
  const [first] = matrices;
  if (first === undefined) return valueError;
  const rows = first.length;
  const columns = first[0]?.length ?? 0;
  if (matrices.some((matrix) => matrix.length !== rows || matrix[0]?.length !== columns)) return valueError;
  const sum = startSum();
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      let product = 1;
      for (const matrix of matrices) {
        const value = matrix[row]?.[column];
        if (value instanceof CellError) return value;
        product *= typeof value === 'number' ? value : 0;
      }
      addTo(sum, product);
    }
  }
  return sumOf(sum);
}

/** Pairs of two equally large arrays in which both hold numbers, summed by a function. */
function sumOverPairs(of: (x: number, y: number) => number): FunctionTable[string] {
  return pure(['array', 'array'], (xs, ys) => {
    const left = xs.flat();
    const right = ys.flat();
    if (left.length !== right.length) return new CellError('#N/A', 'the two arrays differ in size');
    const sum = startSum();
    for (let index = 0; index < left.length; index++) {
      const x = left[index];
      const y = right[index];
      if (x instanceof CellError) return x;
      if (y instanceof CellError) return y;
      if (typeof x === 'number' && typeof y === 'number') addTo(sum, of(x, y));
    }
    return sumOf(sum);
  });
}

function factorial(value: number): CellValue {
  const whole = Math.trunc(value);
  if (whole < 0) return numberError;
  let product = 1;
  for (let factor = 2; factor <= whole && Number.isFinite(product); factor++) product *= factor;
  return finite(product);
}

function combinations(total: number, chosen: number): CellValue {
  const n = Math.trunc(total);
  const k = Math.trunc(chosen);
  if (n < 0 || k < 0 || k > n) return numberError;
  let product = 1;
  const steps = Math.min(k, n - k);
  for (let step = 1; step <= steps; step++) product = (product * (n - steps + step)) / step;
  return finite(Math.round(product));
}

function permutations(total: number, chosen: number): CellValue {
  const n = Math.trunc(total);
  const k = Math.trunc(chosen);
  if (n < 0 || k < 0 || k > n) return numberError;
  let product = 1;
  for (let step = 0; step < k && Number.isFinite(product); step++) product *= n - step;
  return finite(product);
}

function greatestDivisor(left: number, right: number): number {
  return right === 0 ? left : greatestDivisor(right, left % right);
}

/** Arithmetic, powers and logarithms, trigonometry. */
export const mathFunctions: FunctionTable = {
  ABS: single(Math.abs),
  SIGN: single(Math.sign),
  SQRT: pure(['number'], (value) => (value < 0 ? numberError : Math.sqrt(value))),
  SQRTPI: pure(['number'], (value) => (value < 0 ? numberError : Math.sqrt(value * Math.PI))),
  EXP: single(Math.exp),
  LN: pure(['number'], (value) => (value <= 0 ? numberError : Math.log(value))),
  LOG10: pure(['number'], (value) => (value <= 0 ? numberError : Math.log10(value))),
  LOG: pure(['number', 'number?'], (value, base) => {
    if (value <= 0 || (base !== undefined && base <= 0)) return numberError;
    if (base === 1) return divisionByZero;
    if (base === undefined || base === 10) return Math.log10(value);
    return base === 2 ? Math.log2(value) : Math.log(value) / Math.log(base);
  }),
  POWER: pure(['number', 'number'], powerOf),
  PI: pure([], () => Math.PI),
  SIN: single(Math.sin),
  COS: single(Math.cos),
  TAN: single(Math.tan),
  ASIN: single(Math.asin),
  ACOS: single(Math.acos),
  ATAN: single(Math.atan),
  // From 0 to pi, so that it falls without a jump.
  ACOT: single((value) => Math.PI / 2 - Math.atan(value)),
  ATAN2: pure(['number', 'number'], (x, y) => (x === 0 && y === 0 ? divisionByZero : Math.atan2(y, x))),
  SINH: single(Math.sinh),
  COSH: single(Math.cosh),
  TANH: single(Math.tanh),
  ASINH: single(Math.asinh),
  ACOSH: single(Math.acosh),
  ATANH: single(Math.atanh),
  DEGREES: single((value) => (value * 180) / Math.PI),
  RADIANS: single((value) => (value * Math.PI) / 180),
  MOD: pure(['number', 'number'], remainder),
  QUOTIENT: pure(['number', 'number'], (value, divisor) =>
    // 2 / 1e-9 is a hair below 2e9: fifteen digits are what a cell holds.
    divisor === 0 ? divisionByZero : finite(Math.trunc(Number((value / divisor).toPrecision(15)))),
  ),
  FACT: pure(['number'], factorial),
  COMBIN: pure(['number', 'number'], combinations),
  PERMUT: pure(['number', 'number'], permutations),
  GCD: repeated([], 'number', (_place, _first, numbers) =>
    numbers.some((value) => value < 0)
      ? numberError
      : numbers.reduce((divisor, value) => greatestDivisor(divisor, Math.trunc(value)), 0),
  ),
  LCM: repeated([], 'number', (_place, _first, numbers) =>
    numbers.some((value) => value < 0)
      ? numberError
      : numbers
          .map(Math.trunc)
          .reduce(
            (multiple, value) => (value === 0 ? 0 : (multiple / greatestDivisor(multiple, value)) * value),
            1,
          ),
  ),
  SUMPRODUCT: repeated([], 'array', (_place, _first, matrices) => sumOfProducts(matrices)),
  SUMX2MY2: sumOverPairs((x, y) => x * x - y * y),
  SUMX2PY2: sumOverPairs((x, y) => x * x + y * y),
  SUMXMY2: sumOverPairs((x, y) => (x - y) ** 2),
  RAND: volatile(placed([], (place) => place.workbook.random())),
  RANDBETWEEN: volatile(
    placed(['number', 'number'], (place, low, high) => {
      const from = Math.ceil(low);
      const to = Math.floor(high);
      return from > to ? numberError : from + Math.floor(place.workbook.random() * (to - from + 1));
    }),
  ),
};
