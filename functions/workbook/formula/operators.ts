import { toNumber, toText } from '../model/coerce.ts';
import { compareValues, nearlyEqual } from '../model/compare.ts';
import type { DateSystem } from '../model/serial-date.ts';
import { limitedText } from '../model/text-limit.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, divisionByZero, numberError } from '../model/values.ts';

export type BinaryOperation = (left: CellValue, right: CellValue, system: DateSystem) => CellValue;

function arithmetic(operation: (left: number, right: number) => CellValue): BinaryOperation {
  return (left, right, system) => {
    if (typeof left === 'number' && typeof right === 'number') return operation(left, right);
    const first = toNumber(left, system);
    if (typeof first !== 'number') return first;
    const second = toNumber(right, system);
    if (typeof second !== 'number') return second;
    return operation(first, second);
  };
}

function finite(value: number): CellValue {
  return Number.isFinite(value) ? value : numberError;
}

/** Sum whose rounding noise is taken for zero, so that 0.1+0.2-0.3 is 0. */
function addNumbers(left: number, right: number): number {
  return left !== 0 && nearlyEqual(left, -right) ? 0 : left + right;
}

export function powerOf(base: number, exponent: number): CellValue {
  if (base === 0 && exponent === 0) return 1;
  if (base === 0 && exponent < 0) return divisionByZero;
  return finite(base ** exponent);
}

function comparison(test: (order: number) => boolean): BinaryOperation {
  return (left, right) => {
    if (left instanceof CellError) return left;
    if (right instanceof CellError) return right;
    return test(compareValues(left, right));
  };
}

export const binaryOperations: ReadonlyMap<string, BinaryOperation> = new Map([
  ['+', arithmetic((left, right) => finite(addNumbers(left, right)))],
  ['-', arithmetic((left, right) => finite(addNumbers(left, -right)))],
  ['*', arithmetic((left, right) => finite(left * right))],
  ['/', arithmetic((left, right) => (right === 0 ? divisionByZero : finite(left / right)))],
  ['^', arithmetic(powerOf)],
  [
    '&',
    (left, right) => {
      const first = toText(left);
      if (typeof first !== 'string') return first;
      const second = toText(right);
      return typeof second === 'string' ? limitedText(first + second) : second;
    },
  ],
  ['=', comparison((order) => order === 0)],
  ['<>', comparison((order) => order !== 0)],
  ['<', comparison((order) => order < 0)],
  ['<=', comparison((order) => order <= 0)],
  ['>', comparison((order) => order > 0)],
  ['>=', comparison((order) => order >= 0)],
]);

export type UnaryOperation = (value: CellValue, system: DateSystem) => CellValue;

function numeric(operation: (value: number) => number): UnaryOperation {
  return (value, system) => {
    const number = toNumber(value, system);
    return typeof number === 'number' ? operation(number) : number;
  };
}

export const unaryOperations: ReadonlyMap<string, UnaryOperation> = new Map([
  ['-', numeric((value) => (value === 0 ? 0 : -value))],
  ['%', numeric((value) => value / 100)],
  // A plus sign changes nothing, not even the kind of the value.
  ['+', (value: CellValue) => value],
]);
