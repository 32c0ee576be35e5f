import type { CellValue } from '../model/values.ts';
import { divisionByZero, numberError } from '../model/values.ts';
import { nearlyEqual } from '../model/compare.ts';
import { pure } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/**
 * Moves the decimal point by way of the shortest decimal spelling, so that 2.675 becomes 267.5 and not the
 * 267.49999999999997 that binary multiplication gives.
 */
function shift(value: number, digits: number): number {
  const [mantissa = '0', exponent = '0'] = String(value).split('e');
  return Number(`${mantissa}e${Number(exponent) + digits}`);
}

function scaled(value: number, digits: number, round: (value: number) => number): number {
  const places = Math.trunc(digits);
  if (value === 0 || places > 308) return value;
  if (places < -308) return round(0);
  const moved = shift(Math.abs(value), places);
  if (!Number.isFinite(moved) || moved >= 2 ** 53) return value;
  const result = shift(round(steady(moved)), -places);
  return value < 0 && result !== 0 ? -result : result;
}

/** A number a hair beside a whole number or a half counts as that: sums of decimals land there. */
function steady(value: number): number {
  const doubled = Math.round(value * 2);
  return doubled !== 0 && nearlyEqual(value * 2, doubled) ? doubled / 2 : value;
}

/** Half away from zero, as worksheets round. */
export function roundHalfUp(value: number, digits: number): number {
  return scaled(value, digits, (positive) => Math.floor(positive + 0.5));
}

function roundDown(value: number, digits: number): number {
  return scaled(value, digits, Math.floor);
}

function roundUp(value: number, digits: number): number {
  return scaled(value, digits, Math.ceil);
}

function toMultiple(value: number, step: number, round: (ratio: number) => number): number {
  const ratio = value / step;
  const nearest = Math.round(ratio);
  const steps = nearlyEqual(ratio, nearest) ? nearest : round(ratio);
  // Multiplying decimals brings noise back; the step's own decimals say how many the result can have.
  const decimals = (String(step).split('.')[1] ?? '').length;
  const result = steps * step;
  return decimals > 0 && decimals < 15 ? Number(result.toFixed(decimals)) : result;
}

function floorTo(value: number, step: number): CellValue {
  if (value === 0) return 0;
  if (step === 0) return divisionByZero;
  if (value > 0 && step < 0) return numberError;
  return toMultiple(value, step, Math.floor);
}

function ceilingTo(value: number, step: number): CellValue {
  if (value === 0 || step === 0) return 0;
  if (value > 0 && step < 0) return numberError;
  return toMultiple(value, step, Math.ceil);
}

function multiple(value: number, step: number): CellValue {
  if (step === 0) return 0;
  if (value * step < 0) return numberError;
  return toMultiple(value, step, (ratio) => Math.sign(ratio) * Math.floor(Math.abs(ratio) + 0.5));
}

function wholeDown(value: number): number {
  const nearest = Math.round(value);
  return nearlyEqual(value, nearest) ? nearest : Math.floor(value);
}

function even(value: number): number {
  const size = Math.ceil(Math.abs(value) / 2) * 2;
  return value < 0 && size > 0 ? -size : size;
}

function odd(value: number): number {
  const size = Math.ceil((Math.abs(value) - 1) / 2) * 2 + 1;
  return value < 0 ? -Math.max(1, size) : Math.max(1, size);
}

/** CEILING.MATH and FLOOR.MATH: `mode` other than 0 turns the direction round for negative numbers. */
function directed(isUp: boolean): FunctionTable[string] {
  return pure(['number', 'number?', 'number?'], (value, step, mode) => {
    const size = Math.abs(step ?? 1);
    if (value === 0 || size === 0) return 0;
    const isTurned = value < 0 && mode !== undefined && mode !== 0;
    return toMultiple(value, size, isUp === isTurned ? Math.floor : Math.ceil);
  });
}

/** The same with no choice of direction. */
function precise(isUp: boolean): FunctionTable[string] {
  return pure(['number', 'number?'], (value, step) => {
    const size = Math.abs(step ?? 1);
    return value === 0 || size === 0 ? 0 : toMultiple(value, size, isUp ? Math.ceil : Math.floor);
  });
}

/** Rounding to digits, to whole numbers and to multiples. */
export const roundingFunctions: FunctionTable = {
  ROUND: pure(['number', 'number?'], (value, digits) => roundHalfUp(value, digits ?? 0)),
  ROUNDUP: pure(['number', 'number?'], (value, digits) => roundUp(value, digits ?? 0)),
  ROUNDDOWN: pure(['number', 'number?'], (value, digits) => roundDown(value, digits ?? 0)),
  TRUNC: pure(['number', 'number?'], (value, digits) => roundDown(value, digits ?? 0)),
  INT: pure(['number'], wholeDown),
  EVEN: pure(['number'], even),
  ODD: pure(['number'], odd),
  MROUND: pure(['number', 'number'], multiple),
  FLOOR: pure(['number', 'number'], floorTo),
  CEILING: pure(['number', 'number'], ceilingTo),
  'FLOOR.MATH': directed(false),
  'CEILING.MATH': directed(true),
  'FLOOR.PRECISE': precise(false),
  'CEILING.PRECISE': precise(true),
  'ISO.CEILING': precise(true),
};
