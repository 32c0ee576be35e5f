import type { Place } from '../formula/compiled-formula.ts';
import { addTo, startSum, sumOf } from '../model/kahan-sum.ts';
import { areasOf } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, divisionByZero, notAvailable, numberError, valueError } from '../model/values.ts';
import { numbersIn, visitNumbers, visitValues } from './numbers-in.ts';
import { placed, pure, repeated } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/** A statistic of a list of numbers. */
export type Statistic = (numbers: readonly number[]) => CellValue;

function sumNumbers(numbers: readonly number[]): number {
  const sum = startSum();
  for (const value of numbers) addTo(sum, value);
  return sumOf(sum);
}

function meanOf(numbers: readonly number[]): number | CellError {
  return numbers.length === 0 ? divisionByZero : sumNumbers(numbers) / numbers.length;
}

function squaredDeviations(numbers: readonly number[]): number {
  const mean = sumNumbers(numbers) / numbers.length;
  return sumNumbers(numbers.map((value) => (value - mean) ** 2));
}

function largest(numbers: readonly number[]): number {
  let best = -Infinity;
  for (const value of numbers) if (value > best) best = value;
  return numbers.length === 0 ? 0 : best;
}

function smallest(numbers: readonly number[]): number {
  let best = Infinity;
  for (const value of numbers) if (value < best) best = value;
  return numbers.length === 0 ? 0 : best;
}

function variance(numbers: readonly number[], isSample: boolean): CellValue {
  const freedom = numbers.length - (isSample ? 1 : 0);
  return freedom <= 0 ? divisionByZero : squaredDeviations(numbers) / freedom;
}

function deviation(numbers: readonly number[], isSample: boolean): CellValue {
  const squared = variance(numbers, isSample);
  return typeof squared === 'number' ? Math.sqrt(squared) : squared;
}

function sorted(numbers: readonly number[]): number[] {
  return Float64Array.from(numbers).sort() as unknown as number[];
}

function median(numbers: readonly number[]): CellValue {
  if (numbers.length === 0) return numberError;
  const order = sorted(numbers);
  const middle = order.length >> 1;
  const upper = order[middle] as number;
  return order.length % 2 === 1 ? upper : ((order[middle - 1] as number) + upper) / 2;
}

function mode(numbers: readonly number[]): CellValue {
  const counts = new Map<number, number>();
  let best: number | undefined;
  for (const value of numbers) {
    const count = (counts.get(value) ?? 0) + 1;
    counts.set(value, count);
  }
  let most = 1;
  for (const [value, count] of counts) {
    if (count > most) {
      most = count;
      best = value;
    }
  }
  return best ?? notAvailable;
}

/** Value a share of the way through the sorted numbers, ends included (PERCENTILE.INC). */
export function percentile(numbers: readonly number[], share: number): CellValue {
  if (numbers.length === 0 || share < 0 || share > 1) return numberError;
  const order = sorted(numbers);
  return between(order, share * (order.length - 1));
}

/** The same without the ends (PERCENTILE.EXC). */
export function innerPercentile(numbers: readonly number[], share: number): CellValue {
  const rank = share * (numbers.length + 1) - 1;
  if (numbers.length === 0 || rank < 0 || rank > numbers.length - 1) return numberError;
  return between(sorted(numbers), rank);
}

function between(order: readonly number[], rank: number): number {
  const below = Math.floor(rank);
  const low = order[below] as number;
  const high = order[Math.min(below + 1, order.length - 1)] as number;
  return low + (rank - below) * (high - low);
}

export function nthLargest(numbers: readonly number[], rank: number): CellValue {
  const position = Math.ceil(rank);
  if (position < 1 || position > numbers.length) return numberError;
  return sorted(numbers)[numbers.length - position] as number;
}

export function nthSmallest(numbers: readonly number[], rank: number): CellValue {
  const position = Math.ceil(rank);
  if (position < 1 || position > numbers.length) return numberError;
  return sorted(numbers)[position - 1] as number;
}

/** Statistics by the number that SUBTOTAL and AGGREGATE give them; 2 and 3 are counts and handled apart. */
export const statisticsByNumber: Readonly<Record<number, Statistic>> = {
  1: meanOf,
  4: largest,
  5: smallest,
  6: (numbers) => (numbers.length === 0 ? 0 : numbers.reduce((product, value) => product * value, 1)),
  7: (numbers) => deviation(numbers, true),
  8: (numbers) => deviation(numbers, false),
  9: sumNumbers,
  10: (numbers) => variance(numbers, true),
  11: (numbers) => variance(numbers, false),
  12: median,
  13: mode,
};

function statistic(of: Statistic): FunctionTable[string] {
  return repeated([], 'operand', (place, _first, operands) => {
    const numbers = numbersIn(operands, place.workbook.dateSystem);
    return numbers instanceof CellError ? numbers : of(numbers);
  });
}

/** As the "A" variants count: text is 0 and booleans 0 or 1. */
function statisticOfAll(of: Statistic): FunctionTable[string] {
  return repeated([], 'operand', (place, _first, operands) => {
    const numbers: number[] = [];
    let failure: CellError | undefined;
    for (const operand of operands) {
      visitValues(operand, (value, direct) => {
        if (value instanceof CellError) failure ??= value;
        else if (typeof value === 'string' && direct) failure ??= valueError;
        else if (value !== null) numbers.push(typeof value === 'string' ? 0 : Number(value));
      });
    }
    void place;
    return failure ?? of(numbers);
  });
}

function sum(place: Place, _first: unknown, operands: readonly Operand[]): Operand {
  const total = startSum();
  const failure = visitNumbers(operands, place.workbook.dateSystem, (value) => {
    addTo(total, value);
  });
  return failure ?? sumOf(total);
}

/** Counts numbers; errors and text in ranges do not count and do not hurt. */
function countNumbers(operands: readonly Operand[], place: Place): number {
  let count = 0;
  for (const operand of operands) {
    visitValues(operand, (value, direct) => {
      if (typeof value === 'number') count++;
      else if (direct && operand !== undefined && !(value instanceof CellError)) {
        if (visitNumbers([value], place.workbook.dateSystem, () => undefined) === undefined) count++;
      }
    });
  }
  return count;
}

function countFilled(operands: readonly Operand[]): number {
  let count = 0;
  for (const operand of operands) {
    visitValues(operand, (value, direct) => {
      if (value !== null || direct) count++;
    });
  }
  return count;
}

function countBlank(operand: Operand): Operand {
  const [area] = areasOf(operand);
  if (area === undefined) return valueError;
  let filled = 0;
  area.visitFilled((value) => {
    if (value !== '') filled++;
  });
  return area.height * area.width - filled;
}

function withNumbers<Extra extends number>(
  of: (numbers: readonly number[], extra: Extra) => CellValue,
): FunctionTable[string] {
  return placed(['operand', 'number'], (place, operand, extra) => {
    const numbers = numbersIn([operand], place.workbook.dateSystem);
    return numbers instanceof CellError ? numbers : of(numbers, extra as Extra);
  });
}

/** Rank of a number in a list; `tied` is what equal numbers share: their best place or the middle of their places. */
function rank(tied: 'best' | 'middle'): FunctionTable[string] {
  return placed(['number', 'operand', 'number?'], (place, value, operand, ascending) => {
    const numbers = numbersIn([operand], place.workbook.dateSystem);
    if (numbers instanceof CellError) return numbers;
    const equal = numbers.filter((other) => other === value).length;
    if (equal === 0) return notAvailable;
    const isAscending = ascending !== undefined && ascending !== 0;
    const ahead = numbers.filter((other) => (isAscending ? other < value : other > value)).length;
    return ahead + 1 + (tied === 'middle' ? (equal - 1) / 2 : 0);
  });
}

/** Sums, counts, averages and the other statistics over arguments of any number. */
export const aggregateFunctions: FunctionTable = {
  SUM: repeated([], 'operand', sum),
  PRODUCT: statistic(statisticsByNumber[6] as Statistic),
  AVERAGE: statistic(meanOf),
  MIN: statistic(smallest),
  MAX: statistic(largest),
  MEDIAN: statistic(median),
  MODE: statistic(mode),
  'MODE.SNGL': statistic(mode),
  SUMSQ: statistic((numbers) => sumNumbers(numbers.map((value) => value * value))),
  DEVSQ: statistic((numbers) => (numbers.length === 0 ? numberError : squaredDeviations(numbers))),
  AVEDEV: statistic((numbers) => {
    const mean = meanOf(numbers);
    return typeof mean === 'number' ? meanOf(numbers.map((value) => Math.abs(value - mean))) : numberError;
  }),
  GEOMEAN: statistic((numbers) =>
    numbers.length === 0 || numbers.some((value) => value <= 0)
      ? numberError
      : Math.exp(sumNumbers(numbers.map((value) => Math.log(value))) / numbers.length),
  ),
  HARMEAN: statistic((numbers) =>
    numbers.length === 0 || numbers.some((value) => value <= 0)
      ? numberError
      : numbers.length / sumNumbers(numbers.map((value) => 1 / value)),
  ),
  STDEV: statistic((numbers) => deviation(numbers, true)),
  'STDEV.S': statistic((numbers) => deviation(numbers, true)),
  STDEVP: statistic((numbers) => deviation(numbers, false)),
  'STDEV.P': statistic((numbers) => deviation(numbers, false)),
  VAR: statistic((numbers) => variance(numbers, true)),
  'VAR.S': statistic((numbers) => variance(numbers, true)),
  VARP: statistic((numbers) => variance(numbers, false)),
  'VAR.P': statistic((numbers) => variance(numbers, false)),
  AVERAGEA: statisticOfAll(meanOf),
  MAXA: statisticOfAll(largest),
  MINA: statisticOfAll(smallest),
  STDEVA: statisticOfAll((numbers) => deviation(numbers, true)),
  STDEVPA: statisticOfAll((numbers) => deviation(numbers, false)),
  VARA: statisticOfAll((numbers) => variance(numbers, true)),
  VARPA: statisticOfAll((numbers) => variance(numbers, false)),
  COUNT: repeated([], 'operand', (place, _first, operands) => countNumbers(operands, place)),
  COUNTA: repeated([], 'operand', (_place, _first, operands) => countFilled(operands)),
  COUNTBLANK: pure(['operand'], countBlank),
  LARGE: withNumbers(nthLargest),
  SMALL: withNumbers(nthSmallest),
  PERCENTILE: withNumbers(percentile),
  'PERCENTILE.INC': withNumbers(percentile),
  'PERCENTILE.EXC': withNumbers(innerPercentile),
  QUARTILE: withNumbers((numbers, quarter) => percentile(numbers, Math.trunc(quarter) / 4)),
  'QUARTILE.INC': withNumbers((numbers, quarter) => percentile(numbers, Math.trunc(quarter) / 4)),
  'QUARTILE.EXC': withNumbers((numbers, quarter) => innerPercentile(numbers, Math.trunc(quarter) / 4)),
  TRIMMEAN: withNumbers((numbers, share) => {
    if (share < 0 || share >= 1 || numbers.length === 0) return numberError;
    const dropped = Math.floor((share * numbers.length) / 2);
    return meanOf(sorted(numbers).slice(dropped, numbers.length - dropped));
  }),
  RANK: rank('best'),
  'RANK.EQ': rank('best'),
  'RANK.AVG': rank('middle'),
};
