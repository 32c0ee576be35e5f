import { compareValues } from '../model/compare.ts';
import type { Place } from '../formula/compiled-formula.ts';
import type { CellValue } from '../model/values.ts';
import { CellError } from '../model/values.ts';
import { valueKey } from '../lookup/criteria.ts';
import { hasWildcard, wildcardTest } from '../lookup/wildcard.ts';
import type { Vector } from './vector.ts';

/** Ranges shorter than this are searched one by one. */
const worthAnIndex = 24;

function sameKind(left: CellValue, right: CellValue): boolean {
  return typeof left === typeof right;
}

/** Position of the first value equal to the wanted one, letter case ignored; -1 when there is none. */
export function findExact(vector: Vector, wanted: CellValue, place: Place): number {
  if (wanted instanceof CellError) return -1;
  const sought = wanted ?? 0;
  if (vector.reference !== undefined && vector.length >= worthAnIndex) {
    return place.workbook.caches.positions(vector.reference).get(valueKey(sought))?.[0] ?? -1;
  }
  for (let index = 0; index < vector.length; index++) if (equals(vector.at(index), sought)) return index;
  return -1;
}

/** The same from the end. */
export function findLast(vector: Vector, wanted: CellValue, place: Place): number {
  if (wanted instanceof CellError) return -1;
  const sought = wanted ?? 0;
  if (vector.reference !== undefined && vector.length >= worthAnIndex) {
    return place.workbook.caches.positions(vector.reference).get(valueKey(sought))?.at(-1) ?? -1;
  }
  for (let index = vector.length - 1; index >= 0; index--) if (equals(vector.at(index), sought)) return index;
  return -1;
}

function equals(value: CellValue, wanted: CellValue): boolean {
  return value !== null && sameKind(value, wanted) && compareValues(value, wanted) === 0;
}

/** Position of the first text that a pattern with * and ? fits, or of an equal value when there is no pattern in it. */
export function findPattern(vector: Vector, wanted: CellValue, place: Place): number {
  if (typeof wanted !== 'string' || !hasWildcard(wanted)) return findExact(vector, wanted, place);
  const fits = wildcardTest(wanted);
  for (let index = 0; index < vector.length; index++) {
    const value = vector.at(index);
    if (typeof value === 'string' && fits(value)) return index;
  }
  return -1;
}

/**
 * Position of the last value not above the wanted one in an ascending vector, by halving; values of another kind are
 * stepped over. -1 when all are above.
 */
export function findAscending(vector: Vector, wanted: CellValue): number {
  const sought = wanted ?? 0;
  if (sought instanceof CellError) return -1;
  let low = 0;
  let high = vector.length - 1;
  let found = -1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    let probe = middle;
    while (probe <= high && !sameKind(vector.at(probe), sought)) probe++;
    if (probe > high) {
      high = middle - 1;
      continue;
    }
    if (compareValues(vector.at(probe), sought) <= 0) {
      found = probe;
      low = probe + 1;
    } else {
      high = middle - 1;
    }
  }
  return found;
}

/** Position of the last value not below the wanted one in a descending vector; -1 when all are below. */
export function findDescending(vector: Vector, wanted: CellValue): number {
  const sought = wanted ?? 0;
  let found = -1;
  for (let index = 0; index < vector.length; index++) {
    const value = vector.at(index);
    if (!sameKind(value, sought)) continue;
    const order = compareValues(value, sought);
    if (order < 0) break;
    found = index;
    if (order === 0) break;
  }
  return found;
}

/** Position of the nearest value on one side of the wanted one, in any order of the vector; exact matches win. */
export function findNearest(
  vector: Vector,
  wanted: CellValue,
  side: 'below' | 'above',
  fromEnd: boolean,
): number {
  const sought = wanted ?? 0;
  let best = -1;
  let bestValue: CellValue = null;
  for (let step = 0; step < vector.length; step++) {
    const index = fromEnd ? vector.length - 1 - step : step;
    const value = vector.at(index);
    if (value === null || !sameKind(value, sought)) continue;
    const order = compareValues(value, sought);
    if (order === 0) return index;
    if (side === 'below' ? order > 0 : order < 0) continue;
    const closer = bestValue === null ? 1 : compareValues(value, bestValue) * (side === 'below' ? 1 : -1);
    if (closer > 0) {
      best = index;
      bestValue = value;
    }
  }
  return best;
}
