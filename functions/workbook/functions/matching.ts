import type { Place } from '../formula/compiled-formula.ts';
import { asReference } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, valueError } from '../model/values.ts';
import type { Criterion } from '../lookup/criteria.ts';
import { jointKeys, rangeKey } from '../lookup/lookup-caches.ts';
import { valueAt } from '../lookup/ordered-index.ts';
import type { NumberBound, OrderedIndex } from '../lookup/ordered-index.ts';

/** A range and what its cells must meet. */
export interface Condition {
  readonly range: Reference;
  readonly criterion: Criterion;
}

/**
 * Range without the rows below everything in use: they hold nothing to sum, and counting adds them again. Columns stay,
 * unless the range has all of them: positions are counted row by row, in ranges side by side alike.
 */
export function inUse(range: Reference, place: Place): Reference {
  const { sheet, top, left, right, bottom } = range.inUse(place.workbook);
  const last = Math.max(top, Math.min(bottom, place.workbook.rowCount - 1));
  if (last === range.bottom && right === range.right) return range;
  return new Reference(sheet, top, left, last, right);
}

/** Conditions from alternating ranges and criteria; the ranges must be equally large. */
export function readConditions(place: Place, pairs: readonly Operand[]): Condition[] | CellError {
  const { caches, dateSystem } = place.workbook;
  const conditions: Condition[] = [];
  for (let index = 0; index + 1 < pairs.length; index += 2) {
    const operand = pairs[index];
    const range = asReference(operand);
    if (range === undefined) return operand instanceof CellError ? operand : valueError;
    const [first] = conditions;
    if (first !== undefined && (first.range.height !== range.height || first.range.width !== range.width)) {
      return valueError;
    }
    conditions.push({ range, criterion: caches.criterion(pairs[index + 1] as CellValue, dateSystem) });
  }
  return conditions;
}

/** The positions at which conditions hold, and where known the index they came from. */
export interface Matches {
  /** The same text for the same ranges and the same keys; undefined when other tests took part. */
  readonly name: string | undefined;
  readonly count: () => number;
  readonly positions: () => readonly number[];
  /** Sum of a range over the positions by way of running sums, where that is possible. */
  readonly quickSum: (values: Reference) => CellValue | undefined;
}

/**
 * Finds the positions at which all conditions hold: plain equalities through an index, bounds on one range of numbers by
 * halving an ordered list, everything else one by one.
 */
export function findMatches(place: Place, conditions: readonly Condition[]): Matches {
  const used = conditions.map(({ range, criterion }) => ({ range: inUse(range, place), criterion }));
  const equalities = used.filter(({ criterion }) => criterion.keys !== undefined);
  const tests = used.filter(({ criterion }) => criterion.keys === undefined);
  const ranges = equalities.map(({ range }) => range);
  const keys = jointKeys(equalities.map(({ criterion }) => criterion.keys ?? []));
  const name = `${ranges.map(rangeKey).join('|')}|${keys.join('\u0002')}`;
  const [first] = used;
  const all = (): Iterable<number> => {
    if (equalities.length === 0) return everyPosition(first?.range);
    const index = place.workbook.caches.jointPositions(ranges);
    const [only = ''] = keys;
    return keys.length === 1 ? (index.get(only) ?? []) : keys.flatMap((key) => index.get(key) ?? []);
  };
  const bounded = boundsOnOneRange(tests);
  if (bounded !== undefined) {
    const index = place.workbook.caches.ordered(`${name}|${rangeKey(bounded.range)}`, bounded.range, all);
    return windowMatches(index, bounded.bounds);
  }
  const positions = (): readonly number[] => {
    const found: number[] = [];
    for (const position of all()) if (holds(tests, position)) found.push(position);
    return found;
  };
  return {
    name: tests.length === 0 && equalities.length > 0 ? name : undefined,
    count: () => positions().length,
    positions,
    quickSum: () => undefined,
  };
}

function windowMatches(index: OrderedIndex, bounds: readonly NumberBound[]): Matches {
  const { start, end } = index.window(bounds);
  return {
    name: undefined,
    count: () => end - start,
    positions: () => index.positions(start, end),
    quickSum: (values) => index.sum(values, rangeKey(values), start, end),
  };
}

/** The bounds when all tests bound the numbers of one and the same range. */
function boundsOnOneRange(
  tests: readonly Condition[],
): { range: Reference; bounds: NumberBound[] } | undefined {
  const [first] = tests;
  if (first === undefined) return undefined;
  const bounds: NumberBound[] = [];
  for (const { range, criterion } of tests) {
    if (criterion.bound === undefined || rangeKey(range) !== rangeKey(first.range)) return undefined;
    bounds.push(criterion.bound);
  }
  return { range: first.range, bounds };
}

function* everyPosition(range: Reference | undefined): Generator<number> {
  const count = range === undefined ? 0 : range.height * range.width;
  for (let position = 0; position < count; position++) yield position;
}

function holds(conditions: readonly Condition[], position: number): boolean {
  for (const { range, criterion } of conditions) {
    if (!criterion.matches(valueAt(range, position))) return false;
  }
  return true;
}
