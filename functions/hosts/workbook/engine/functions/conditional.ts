import type { Place } from '../formula/compiled-formula.ts';
import { addTo, startSum, sumOf } from '../kahan-sum.ts';
import { asReference } from '../operand.ts';
import type { Operand } from '../operand.ts';
import { Reference } from '../reference.ts';
import type { CellValue } from '../values.ts';
import { CellError, divisionByZero, valueError } from '../values.ts';
import type { Criterion } from './criteria.ts';
import { jointKeys, rangeKey } from './lookup-caches.ts';
import { paired, placed } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

interface Condition {
  readonly range: Reference;
  readonly criterion: Criterion;
}

/** Turns what was found at some positions of a range into the result. */
type Summary = (values: Reference, positions: readonly number[]) => CellValue;

function valueAt(range: Reference, position: number): CellValue {
  const width = range.right - range.left + 1;
  const down = Math.floor(position / width);
  return range.sheet.value(range.top + down, range.left + position - down * width);
}

/** Range cut down to the rows and columns in use anywhere, so that whole columns stay cheap and of one size. */
function inUse(range: Reference, place: Place): Reference {
  const { rowCount, columnCount } = place.workbook;
  const bottom = Math.max(range.top, Math.min(range.bottom, rowCount - 1));
  const right = Math.max(range.left, Math.min(range.right, columnCount - 1));
  if (bottom === range.bottom && right === range.right) return range;
  return new Reference(range.sheet, range.top, range.left, bottom, right);
}

function readConditions(place: Place, pairs: readonly Operand[]): Condition[] | CellError {
  const conditions: Condition[] = [];
  for (let index = 0; index + 1 < pairs.length; index += 2) {
    const range = asReference(pairs[index]);
    if (range === undefined)
      return pairs[index] instanceof CellError ? (pairs[index] as CellError) : valueError;
    const [first] = conditions;
    if (first !== undefined && (first.range.height !== range.height || first.range.width !== range.width)) {
      return valueError;
    }
    const criterion = place.workbook.caches.criterion(
      pairs[index + 1] as CellValue,
      place.workbook.dateSystem,
    );
    conditions.push({ range, criterion });
  }
  return conditions;
}

/** Applies a summary to the positions at which all conditions hold. Plain equalities go through an index. */
function summarize(
  place: Place,
  name: string,
  target: Reference,
  conditions: readonly Condition[],
  summary: Summary,
): CellValue {
  const { caches } = place.workbook;
  const used = conditions.map(({ range, criterion }) => ({ range: inUse(range, place), criterion }));
  const equalities = used.filter(({ criterion }) => criterion.keys !== undefined);
  const tests = used.filter(({ criterion }) => criterion.keys === undefined);
  const values = inUse(target, place);
  if (equalities.length === 0) {
    const [first] = used;
    const count = first === undefined ? 0 : first.range.height * first.range.width;
    const positions: number[] = [];
    for (let position = 0; position < count; position++) if (holds(tests, position)) positions.push(position);
    return summary(values, positions);
  }
  const ranges = equalities.map(({ range }) => range);
  const index = caches.jointPositions(ranges);
  const joint = jointKeys(equalities.map(({ criterion }) => criterion.keys ?? []));
  const found =
    joint.length === 1 ? (index.get(joint[0] ?? '') ?? []) : joint.flatMap((key) => index.get(key) ?? []);
  if (tests.length > 0) {
    return summary(
      values,
      found.filter((position) => holds(tests, position)),
    );
  }
  const resultName = `${name}|${rangeKey(values)}|${ranges.map(rangeKey).join('|')}`;
  return caches.result(resultName, joint.join('\u0002'), () => summary(values, found));
}

function holds(conditions: readonly Condition[], position: number): boolean {
  for (const { range, criterion } of conditions) {
    if (!criterion.matches(valueAt(range, position))) return false;
  }
  return true;
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

const count: Summary = (_values, positions) => positions.length;

/** Counting also has to see the blank cells beyond the rows in use. */
function countMatches(place: Place, pairs: readonly Operand[]): Operand {
  const conditions = readConditions(place, pairs);
  if (conditions instanceof CellError) return conditions;
  const [first] = conditions;
  if (first === undefined) return valueError;
  const counted = summarize(place, 'COUNT', first.range, conditions, count);
  if (typeof counted !== 'number' || !conditions.every(({ criterion }) => criterion.matchesBlank)) {
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
