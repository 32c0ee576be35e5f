import { compareValues } from './compare-values.ts';
import type { CellArea } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import { CellError } from '../../../workbook/model/values.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import type { Workbook } from '../../../workbook/run/workbook.ts';
import type { ConditionalRule } from '../../../workbook/file/sheet-layout.ts';
import { asideValue } from './evaluate.ts';

export function contains({ top, left, bottom, right }: CellArea, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** Numbers of the looks that the rules of a sheet put over a cell, the strongest first. */
export function overlaysOf(
  workbook: Workbook,
  sheet: Sheet,
  rules: readonly ConditionalRule[],
  row: number,
  column: number,
): number[] {
  const overlays: number[] = [];
  for (const rule of rules) {
    if (!rule.areas.some((area) => contains(area, row, column))) continue;
    if (!applies(workbook, sheet, rule, row, column)) continue;
    if (rule.overlay !== undefined) overlays.push(rule.overlay);
    if (rule.stops) break;
  }
  return overlays;
}

function applies(
  workbook: Workbook,
  sheet: Sheet,
  rule: ConditionalRule,
  row: number,
  column: number,
): boolean {
  const first = rule.areas[0];
  if (first === undefined) return false;
  const value = sheet.value(row, column);
  const place = { sheet, baseRow: first.top, baseColumn: first.left, row, column };
  const operand = (index: number): CellValue => {
    const formula = rule.formulas[index];
    return formula === undefined ? null : asideValue(workbook, formula, place);
  };
  switch (rule.type) {
    case 'expression':
    case 'containsText':
    case 'notContainsText':
    case 'beginsWith':
    case 'endsWith':
    case 'containsBlanks':
    case 'notContainsBlanks':
    case 'containsErrors':
    case 'notContainsErrors': {
      // Every one of them carries a formula that says the same.
      const truth = operand(0);
      return truth === true || (typeof truth === 'number' && truth !== 0);
    }
    case 'cellIs':
      if (value === null || value instanceof CellError) return false;
      return compareValues(value, rule.operator, operand(0), operand(1));
    default:
      return false;
  }
}
