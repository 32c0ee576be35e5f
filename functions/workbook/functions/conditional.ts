import type { Place } from '../formula/compiled-formula.ts';
import { addTo, startSum, sumOf } from '../model/kahan-sum.ts';
import { asReference } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, divisionByZero, valueError } from '../model/values.ts';
import { rangeKey } from '../lookup/lookup-caches.ts';
import { findMatches, inUse, readConditions } from './matching.ts';
import type { Condition } from './matching.ts';
import { valueAt } from '../lookup/ordered-index.ts';
import { paired, placed } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

/** Turns what was found at some positions of a range into the result. */
type Summary = (values: Reference, positions: readonly number[]) => CellValue;

/** Applies a summary to the positions at which all conditions hold. */
function summarize(
  place: Place,
  name: string,
  target: Reference,
  conditions: readonly Condition[],
  summary: Summary,
): CellValue {
  const values = inUse(target, place);
  const matches = findMatches(place, conditions);
  const quick = name === 'SUM' ? matches.quickSum(values) : undefined;
  if (quick !== undefined) return quick;
  if (matches.name === undefined) return summary(values, matches.positions());
  return place.workbook.caches.result(`${name}|${rangeKey(values)}`, matches.name, () =>
    summary(values, matches.positions()),
  );
}

const sumUp: Summary = (values, positions) => {
  const sum = startSum();
  for (const position of positions) {
    const value = valueAt(values, position);
    if (typeof value === 'number') addTo(sum, value);
    else if (value instanceof CellError) return value;
  }
  return sumOf(sum);
};

const average: Summary = (values, positions) => {
  const sum = startSum();
  let count = 0;
  for (const position of positions) {
    const value = valueAt(values, position);
    if (value instanceof CellError) return value;
    if (typeof value !== 'number') continue;
    addTo(sum, value);
    count++;
  }
  return count === 0 ? divisionByZero : sumOf(sum) / count;
};

function extreme(better: (candidate: number, best: number) => boolean): Summary {
  return (values, positions) => {
    let best: number | undefined;
    for (const position of positions) {
      const value = valueAt(values, position);
      if (value instanceof CellError) return value;
      if (typeof value === 'number' && (best === undefined || better(value, best))) best = value;
    }
    return best ?? 0;
  };
}

function overTarget(name: string, summary: Summary): FunctionTable[string] {
  return paired(['operand'], ['operand', 'any'], (place, [targetOperand], pairs) => {
    const target = asReference(targetOperand);
    const conditions = readConditions(place, pairs);
    if (conditions instanceof CellError) return conditions;
    const [first] = conditions;
    if (target === undefined || first === undefined) return valueError;
    if (target.height !== first.range.height || target.width !== first.range.width) return valueError;
    return summarize(place, name, target, conditions, summary);
  });
}

/** SUMIF and AVERAGEIF: one condition; the target starts where it is given and takes the size of the range. */
function overOne(name: string, summary: Summary): FunctionTable[string] {
  return placed(['operand', 'any', 'operand?'], (place, rangeOperand, criterion, targetOperand) => {
    const conditions = readConditions(place, [rangeOperand, criterion]);
    if (conditions instanceof CellError) return conditions;
    const [only] = conditions;
    if (only === undefined) return valueError;
    const { range } = only;
    const corner = targetOperand === undefined ? range : asReference(targetOperand);
    if (corner === undefined) return valueError;
    const { sheet, top, left } = corner;
    const target = new Reference(sheet, top, left, top + range.height - 1, left + range.width - 1);
    return summarize(place, name, target, conditions, summary);
  });
}

/** Counting also has to see the blank cells beyond the rows in use. */
function countMatches(place: Place, pairs: readonly Operand[]): Operand {
  const conditions = readConditions(place, pairs);
  if (conditions instanceof CellError) return conditions;
  const [first] = conditions;
  if (first === undefined) return valueError;
  const matches = findMatches(place, conditions);
  const counted =
    matches.name === undefined
      ? matches.count()
      : Number(place.workbook.caches.result('COUNT', matches.name, matches.count));
  if (!conditions.every(({ criterion }) => criterion.matchesBlank)) {
    return counted;
  }
  const used = inUse(first.range, place);
  return counted + first.range.height * first.range.width - used.height * used.width;
}

/** Sums, counts and averages over the cells that meet conditions. */
export const conditionalFunctions: FunctionTable = {
  SUMIF: overOne('SUM', sumUp),
  AVERAGEIF: overOne('AVERAGE', average),
  COUNTIF: placed(['operand', 'any'], (place, range, criterion) => countMatches(place, [range, criterion])),
  SUMIFS: overTarget('SUM', sumUp),
  AVERAGEIFS: overTarget('AVERAGE', average),
  MAXIFS: overTarget(
    'MAX',
    extreme((candidate, best) => candidate > best),
  ),
  MINIFS: overTarget(
    'MIN',
    extreme((candidate, best) => candidate < best),
  ),
  COUNTIFS: paired([], ['operand', 'any'], (place, _first, pairs) => countMatches(place, pairs)),
};
