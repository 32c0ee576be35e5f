import type { CellValue } from '../../../workbook/model/values.ts';
import { CellError } from '../../../workbook/model/values.ts';

/** The comparisons of colour rules and checks (ECMA-376 Part 1, 18.18.15 and 18.18.19). Texts compare without case. */
export function compareValues(
  value: CellValue,
  operator: string,
  first: CellValue,
  second: CellValue,
): boolean {
  const order = (other: CellValue): number => {
    if (value instanceof CellError || other instanceof CellError) return Number.NaN;
    const one = value ?? (typeof other === 'string' ? '' : 0);
    const two = other ?? (typeof one === 'string' ? '' : 0);
    if (typeof one === 'string' && typeof two === 'string') {
      return one.localeCompare(two, 'en', { sensitivity: 'accent' });
    }
    if (typeof one === 'string') return 1;
    if (typeof two === 'string') return -1;
    return Number(one) - Number(two);
  };
  switch (operator) {
    case 'equal':
      return order(first) === 0;
    case 'notEqual':
      return order(first) !== 0;
    case 'greaterThan':
      return order(first) > 0;
    case 'greaterThanOrEqual':
      return order(first) >= 0;
    case 'lessThan':
      return order(first) < 0;
    case 'lessThanOrEqual':
      return order(first) <= 0;
    case 'notBetween':
      return order(first) < 0 || order(second) > 0;
    default:
      return order(first) >= 0 && order(second) <= 0;
  }
}
