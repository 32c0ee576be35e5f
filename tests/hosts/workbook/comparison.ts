import { noCustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { CellError } from '../../../functions/workbook/model/values.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { loadWorkbook } from '../../../functions/workbook/file/load-workbook.ts';
import { buildXlsx, escapeXml } from '../../functions/workbook/build-xlsx.ts';
import type { TestCell } from '../../functions/workbook/build-xlsx.ts';
import { data, readFormulas } from './formulas.ts';

/** A formula and the cells that show its result. */
export interface Case {
  readonly family: string;
  readonly formula: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly height: number;
}

/** Functions that files spell with a prefix; without it LibreOffice does not know them. */
const prefixed =
  /\b(AGGREGATE|CONCAT|TEXTJOIN|IFS|SWITCH|MAXIFS|MINIFS|IFNA|XOR|FLOOR\.MATH|CEILING\.MATH|NUMBERVALUE|DAYS|ISOWEEKNUM|UNICHAR|UNICODE|BASE|DECIMAL|ARABIC|RRI|PDURATION|PERMUTATIONA|COMBINA|PHI|GAUSS|GAMMA|BIT(?:AND|OR|XOR|LSHIFT|RSHIFT)|A?COTH?|SECH?|CSCH?|PERCENTILE\.EXC|QUARTILE\.EXC|RANK\.AVG|[A-Z]+\.DIST|[A-Z]+\.INV|CONFIDENCE\.(?:NORM|T)|SHEETS?|ISFORMULA|FORMULATEXT|MODE\.SNGL|STDEV\.[SP]|VAR\.[SP])\(/g;

export function spelled(formula: string): string {
  return formula.replace(prefixed, '_xlfn.$1(');
}

/** One workbook with all formulas of the comparison. */
export function comparisonWorkbook(): { bytes: Uint8Array; cases: Case[] } {
  const cases: Case[] = [];
  const ordinary: Record<string, TestCell> = {};
  let row = 100;
  const families = readFormulas();
  for (const [family, list] of families) {
    if (family === 'arrays' || family === 'own row') continue;
    for (const formula of list) {
      ordinary[`A${row + 1}`] = `=${spelled(formula)}`;
      cases.push({ family, formula, sheet: 'Ordinary', row, column: 0, height: 1 });
      row++;
    }
  }
  const arrays: Record<string, TestCell> = {};
  families.get('arrays')?.forEach((formula, index) => {
    const top = index * 4;
    const text = escapeXml(spelled(formula));
    arrays[`B${top + 1}`] = {
      xml: `<c r="B${top + 1}"><f t="array" ref="B${top + 1}:B${top + 3}">${text}</f><v>0</v></c>`,
    };
    arrays[`B${top + 2}`] = { xml: `<c r="B${top + 2}"><v>0</v></c>` };
    arrays[`B${top + 3}`] = { xml: `<c r="B${top + 3}"><v>0</v></c>` };
    cases.push({ family: 'arrays', formula, sheet: 'Arrays', row: top, column: 1, height: 3 });
  });
  const own: Record<string, TestCell> = { ...data };
  families.get('own row')?.forEach((formula, index) => {
    const letters = String.fromCharCode(77 + index);
    for (let line = 2; line <= 4; line++) own[`${letters}${line}`] = `=${formula}`;
    cases.push({ family: 'own row', formula, sheet: 'Data', row: 1, column: 12 + index, height: 3 });
  });
  const bytes = buildXlsx({
    sheets: [
      { name: 'Ordinary', cells: ordinary },
      { name: 'Data', cells: own },
      { name: 'Arrays', cells: arrays },
    ],
  });
  return { bytes, cases };
}

/** Values of the cases in a workbook: as saved, or as our engine works them out. */
export function valuesOf(
  bytes: Uint8Array,
  cases: readonly Case[],
  isOurs: boolean,
): (CellValue[] | undefined)[] {
  const { workbook } = loadWorkbook(bytes, { customFunctions: noCustomFunctions });
  if (isOurs) workbook.recalculate({ everything: true });
  return cases.map(({ sheet, row, column, height }) => {
    const target = workbook.findSheet(sheet);
    if (target === undefined) return undefined;
    if (isOurs && target.formula(row, column)?.kept !== undefined) return undefined;
    return Array.from({ length: height }, (_, step) => target.value(row + step, column));
  });
}

/** A value as text for comparing: numbers to 11 digits, since both sides may err in the last few. */
export function shown(value: CellValue | undefined): string {
  if (value instanceof CellError) return value.code;
  if (typeof value === 'number') return String(Number(value.toPrecision(11)));
  if (value === null || value === undefined || value === '') return '(empty)';
  return typeof value === 'string' ? `"${value}"` : String(value).toUpperCase();
}
