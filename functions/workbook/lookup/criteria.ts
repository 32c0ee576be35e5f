import { compareText, nearlyEqual } from '../model/compare.ts';
import type { DateSystem } from '../model/serial-date.ts';
import { parseNumber } from '../model/text-number.ts';
import type { CellValue } from '../model/values.ts';
import { CellError } from '../model/values.ts';
import type { NumberBound } from './ordered-index.ts';
import { hasWildcard, wildcardTest } from './wildcard.ts';

/** Key under which equal values are found together: numbers to 15 digits, text without letter case. */
export type ValueKey = number | string | boolean;

export function valueKey(value: number | string | boolean): ValueKey {
  if (typeof value === 'string') return value.toLowerCase();
  if (typeof value === 'number' && !Number.isInteger(value)) return Number(value.toPrecision(15));
  return value;
}

/** A condition such as ">=5", "R-32" or "AC*" on the values of a range. */
export interface Criterion {
  readonly matches: (value: CellValue) => boolean;
  /** Set when the condition is plain equality, so that an index can find the matches: the values that match. */
  readonly keys: readonly ValueKey[] | undefined;
  /** Set when the condition bounds a number on one side. */
  readonly bound?: NumberBound;
  readonly matchesBlank: boolean;
}

const comparisonPattern = /^(<>|<=|>=|=|<|>)?([\s\S]*)$/;

/** Reads a criterion as SUMIFS and its relatives take it. */
export function parseCriterion(value: CellValue, system: DateSystem): Criterion {
  if (value instanceof CellError) {
    return testing((candidate) => candidate instanceof CellError && candidate.code === value.code);
  }
  if (typeof value === 'boolean') return equalTo(value);
  if (typeof value === 'number') return equalTo(value);
  if (value === null) return equalTo(0);
  const match = comparisonPattern.exec(value);
  const operator = match?.[1] ?? '';
  const right = match?.[2] ?? '';
  if (right === '') return blankCriterion(operator);
  const wanted = readValue(right, system);
  if (operator !== '' && operator !== '=' && operator !== '<>') return ordering(operator, wanted);
  const equal =
    typeof wanted !== 'string'
      ? either(equalTo(wanted), equalTo(right))
      : hasWildcard(wanted)
        ? likePattern(wanted)
        : equalTo(wanted);
  return operator === '<>' ? testing((candidate) => !equal.matches(candidate)) : equal;
}

function readValue(text: string, system: DateSystem): number | string | boolean {
  const number = parseNumber(text, system);
  if (number !== undefined) return number;
  const word = text.toUpperCase();
  return word === 'TRUE' ? true : word === 'FALSE' ? false : text;
}

function testing(matches: (value: CellValue) => boolean): Criterion {
  return { matches, keys: undefined, matchesBlank: matches(null) };
}

function equalTo(wanted: number | string | boolean): Criterion {
  const matches =
    typeof wanted === 'number'
      ? (value: CellValue): boolean => typeof value === 'number' && nearlyEqual(value, wanted)
      : typeof wanted === 'string'
        ? (value: CellValue): boolean => typeof value === 'string' && compareText(value, wanted) === 0
        : (value: CellValue): boolean => value === wanted;
  return { matches, keys: [valueKey(wanted)], matchesBlank: false };
}

/** A criterion given as text, "5" say, finds the number 5 and the text "5". */
function either(one: Criterion, other: Criterion): Criterion {
  return {
    matches: (value) => one.matches(value) || other.matches(value),
    keys: [...(one.keys ?? []), ...(other.keys ?? [])],
    matchesBlank: false,
  };
}

/** "" matches blank cells and empty text, "=" blank cells only, "<>" everything that is not blank. */
function blankCriterion(operator: string): Criterion {
  switch (operator) {
    case '':
      return testing((value) => value === null || value === '');
    case '=':
      return testing((value) => value === null);
    case '<>':
      return testing((value) => value !== null);
    default:
      return ordering(operator, '');
  }
}

function ordering(operator: string, wanted: number | string | boolean): Criterion {
  const holds = orderTest(operator);
  if (typeof wanted === 'number') {
    const accepts = (value: number): boolean => holds(nearlyEqual(value, wanted) ? 0 : value - wanted);
    return {
      ...testing((value) => typeof value === 'number' && accepts(value)),
      bound: { side: operator.startsWith('>') ? 'from below' : 'from above', accepts },
    };
  }
  if (typeof wanted === 'string') {
    return testing((value) => typeof value === 'string' && holds(compareText(value, wanted)));
  }
  return testing((value) => typeof value === 'boolean' && holds(Number(value) - Number(wanted)));
}

function orderTest(operator: string): (order: number) => boolean {
  switch (operator) {
    case '<':
      return (order) => order < 0;
    case '<=':
      return (order) => order <= 0;
    case '>':
      return (order) => order > 0;
    default:
      return (order) => order >= 0;
  }
}

function likePattern(pattern: string): Criterion {
  const fits = wildcardTest(pattern);
  return testing((value) => typeof value === 'string' && fits(value));
}
