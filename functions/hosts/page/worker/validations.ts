import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import type { Workbook } from '../../../workbook/run/workbook.ts';
import type { Validation } from '../../../workbook/file/sheet-layout.ts';
import { compareValues } from './compare-values.ts';
import { contains } from './conditional-formats.ts';
import { asideValue, evaluateAside } from './evaluate.ts';

/** Longest list offered; longer ones are still checked. */
const longestList = 500;

export function validationOf(
  validations: readonly Validation[],
  row: number,
  column: number,
): Validation | undefined {
  return validations.find(({ areas }) => areas.some((area) => contains(area, row, column)));
}

export interface CheckedPlace {
  readonly workbook: Workbook;
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
}

/** What a cell may hold, when its check is a list. */
export function choicesOf(validation: Validation, at: CheckedPlace): CellValue[] {
  const [formula = ''] = validation.formulas;
  if (validation.type !== 'list') return [];
  const literal = /^"(.*)"$/s.exec(formula.trim())?.[1];
  if (literal !== undefined) return literal.split(',').map((word) => word.trim());
  const answer = evaluateAside(at.workbook, formula, placeOf(validation, at));
  if (answer === undefined) return [];
  if ('list' in answer) return answer.list.slice(0, longestList);
  if ('value' in answer) return [answer.value];
  const choices: CellValue[] = [];
  answer.reference.visitFilled((value) => {
    if (value !== '') choices.push(value);
    return choices.length >= longestList;
  });
  return choices;
}

/** Why a value breaks a cell's check; undefined when it keeps it. */
export function complaintOf(validation: Validation, at: CheckedPlace, value: CellValue): string | undefined {
  if (!validation.showsError || value === null || value === '') return undefined;
  const complaint = validation.error === '' ? 'This cell does not take that.' : validation.error;
  return keeps(validation, at, value) ? undefined : complaint;
}

function keeps(validation: Validation, at: CheckedPlace, value: CellValue): boolean {
  const place = placeOf(validation, at);
  const operand = (index: number): CellValue => {
    const formula = validation.formulas[index];
    return formula === undefined ? null : asideValue(at.workbook, formula, place);
  };
  switch (validation.type) {
    case 'list': {
      const choices = choicesOf(validation, at);
      // A list that could not be read forbids nothing.
      if (choices.length === 0 || choices.length >= longestList) return true;
      return choices.some((choice) => String(choice).toLowerCase() === String(value).toLowerCase());
    }
    case 'whole':
      return (
        typeof value === 'number' &&
        Number.isInteger(value) &&
        compareValues(value, validation.operator, operand(0), operand(1))
      );
    case 'decimal':
    case 'date':
    case 'time':
      return typeof value === 'number' && compareValues(value, validation.operator, operand(0), operand(1));
    case 'textLength':
      return compareValues(String(value).length, validation.operator, operand(0), operand(1));
    case 'custom': {
      const truth = operand(0);
      return truth !== false && truth !== 0;
    }
    default:
      return true;
  }
}

function placeOf(
  validation: Validation,
  { sheet, row, column }: CheckedPlace,
): Parameters<typeof asideValue>[2] {
  const first = validation.areas[0];
  return { sheet, baseRow: first?.top ?? row, baseColumn: first?.left ?? column, row, column };
}
