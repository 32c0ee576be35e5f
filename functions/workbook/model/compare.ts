import type { CellValue } from './values.ts';
import { CellError } from './values.ts';

const relative48 = 2 ** -48;
const relative44 = 2 ** -44;

/**
 * Whether two numbers count as equal in a worksheet: the same up to the noise of binary arithmetic (about 1 part in 2^48),
 * so that 0.1+0.2 equals 0.3. Two whole numbers must be equal exactly.
 */
export function nearlyEqual(left: number, right: number): boolean {
  if (left === right) return true;
  if (left === 0 || right === 0) return false;
  const gap = Math.abs(left - right);
  const size = Math.min(Math.abs(left), Math.abs(right));
  if (!(gap <= size * relative44)) return false;
  if (Number.isSafeInteger(left) && Number.isSafeInteger(right)) return false;
  return gap < size * relative48;
}

const collator = new Intl.Collator('en', { sensitivity: 'accent' });

/** Order of two texts, letter case ignored. */
export function compareText(left: string, right: string): number {
  if (left === right) return 0;
  return collator.compare(left, right);
}

/** Numbers come before texts, texts before booleans. */
function rank(value: number | string | boolean): number {
  return typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2;
}

/** Order of two values as the comparison operators see it; a blank takes the kind of the other side. Errors are not for here. */
export function compareValues(left: CellValue, right: CellValue): number {
  const first = left ?? blankLike(right);
  const second = right ?? blankLike(left);
  if (first instanceof CellError || second instanceof CellError) return 0;
  if (typeof first === 'number' && typeof second === 'number') {
    return nearlyEqual(first, second) ? 0 : first < second ? -1 : 1;
  }
  if (typeof first === 'string' && typeof second === 'string') return compareText(first, second);
  if (typeof first === 'boolean' && typeof second === 'boolean') return Number(first) - Number(second);
  return rank(first) - rank(second);
}

function blankLike(other: CellValue): number | string | boolean {
  return typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0;
}
