/**
 * Compares random formulas with LibreOffice and prints those on which the two differ, the shortest of each kind. Many
 * differ on purpose (tests/hosts/workbook/known-differences.ts has the reasons), so it is for reading, not a test:
 *
 * npm run fuzz -- formulas [--seed 1] [--count 8000]
 */
import { parseArgs } from 'node:util';
import { CellError } from '../../../functions/workbook/model/values.ts';
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';
import type { TestCell } from '../../functions/workbook/build-xlsx.ts';
import { shown, spelled, valuesOf } from '../../hosts/workbook/comparison.ts';
import type { Case } from '../../hosts/workbook/comparison.ts';
import { data } from '../../hosts/workbook/formulas.ts';
import { recalculateInCalc } from '../../hosts/workbook/libreoffice-recalculation.ts';
import { formulasFrom } from './random-formula.ts';

const { values: given } = parseArgs({
  options: { seed: { type: 'string', default: '1' }, count: { type: 'string', default: '8000' } },
});
const next = formulasFrom(Number(given.seed));
const cells: Record<string, TestCell> = {};
const cases = Array.from({ length: Number(given.count) }, (_, row): Case => {
  const formula = next();
  cells[`A${row + 1}`] = `=${spelled(formula)}`;
  return { family: 'random', formula, sheet: 'Formulas', row, column: 0, height: 1 };
});
const bytes = buildXlsx({
  sheets: [
    { name: 'Formulas', cells },
    { name: 'Data', cells: data },
  ],
});
const ours = valuesOf(bytes, cases, true);
const theirs = valuesOf(await recalculateInCalc(bytes), cases, false);

let same = 0;
const kinds = new Map<string, string>();
const shortestFirst = cases
  .map(({ formula }, index) => ({ formula, mine: ours[index]?.[0], other: theirs[index]?.[0] }))
  .sort((one, two) => one.formula.length - two.formula.length);
for (const { formula, mine, other } of shortestFirst) {
  const bothFail = mine instanceof CellError && other instanceof CellError;
  if (bothFail || shown(mine) === shown(other)) {
    same += 1;
    continue;
  }
  // Formulas that differ in their figures, words and places only are one kind.
  const kind = formula
    .replace(/"[^"]*"/g, 'text')
    .replace(/Data![$A-Z0-9:]+/g, 'place')
    .replace(/[\d.]+(?:E\d+|e-\d+)?/g, '#');
  if (!kinds.has(kind)) kinds.set(kind, `${formula}\n    ours ${shown(mine)}, LibreOffice ${shown(other)}`);
}
console.log([...kinds.values()].join('\n'));
console.log(`${cases.length} formulas: ${same} the same, ${cases.length - same} not, of ${kinds.size} kinds`);
