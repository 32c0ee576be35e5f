/**
 * Plants changes of limits, comparisons and words in the formulas of the visit sheet, one at a time, and counts how many the
 * comparison with the functions notices.
 *
 *   npx tsx tests/sample-workbooks/visit-sheet/planted-changes.ts [how many, 50] [seed, 1]
 *
 * A change that nobody can notice changes nothing anybody reads: slack of a billionth, a working line of an unlisted case.
 */
import { visitSheetRecipe } from '../../../sample-workbooks/visit-sheet/recipe.ts';
import { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';
import type { CellRecipe, SheetRecipe, WorkbookRecipe } from '../../../sample-workbooks/writing/recipe.ts';
import { compareVisit, emptyComparison } from './compare.ts';
import { badCellVisits, limitVisits, sparseVisits } from './edge-visits.ts';
import { RandomVisits } from './random-visits.ts';
import { SheetInHand } from './sheet-in-hand.ts';

const [howMany = '50', seed = '1'] = process.argv.slice(2);
const recipe = visitSheetRecipe('US');

/** A piece of a formula that can be changed, and what it becomes. */
const pieces =
  /"[^"]*"|>=|<=|<>|[<>]|(?<=[\w)\]])[+*](?=[\w([])|\b(?:AND|OR|MIN|MAX)(?=\()|(?<![\w$.!])\d+(?:\.\d+)?(?![\w.:!])/g;
const swapped: Readonly<Record<string, string>> = {
  '>=': '<',
  '<=': '>',
  '<>': '=',
  '<': '>=',
  '>': '<=',
  '+': '-',
  '*': '/',
  AND: 'OR',
  OR: 'AND',
  MIN: 'MAX',
  MAX: 'MIN',
};

function changed(piece: string): string | undefined {
  if (piece.startsWith('"')) return piece === '""' ? undefined : `"${piece.slice(1, -1)}?"`;
  if (swapped[piece] !== undefined) return swapped[piece];
  const value = Number(piece);
  // Slack for the last digits of a conversion, and places of columns.
  if (value < 1e-4 && value > 0) return undefined;
  return String(value === 0 ? 1 : Number((value * 1.1).toPrecision(8)));
}

interface Planted {
  readonly recipe: WorkbookRecipe;
  readonly told: string;
}

/** Sheets whose formulas decide something, with the columns that say the same thing for another set. */
const decisive = ['Visit', 'Working', 'Checks', 'Tables'];

function plant(random: () => number): Planted {
  for (;;) {
    const sheet = pick(
      recipe.sheets.filter(({ name }) => decisive.includes(name)),
      random,
    );
    const cell = pick(
      sheet.cells.filter(({ content }) => typeof content === 'object'),
      random,
    );
    const row = /\d+$/.exec(cell.at)?.[0] ?? '';
    const text = formulaOf(cell);
    const places = [...text.matchAll(pieces)];
    if (places.length === 0 || (sheet.name === 'Visit' && Number(row) < 5)) continue;
    const index = Math.floor(random() * places.length);
    const from = places[index]?.[0] ?? '';
    const to = changed(from);
    if (to === undefined) continue;
    const alike = (other: CellRecipe): boolean =>
      sheet.name === 'Tables'
        ? other.at === cell.at
        : other.at.replace(/^[A-Z]+/, '') === row && formulaOf(other) !== '';
    const cells = sheet.cells.map((other) =>
      alike(other) ? { ...other, content: { formula: replaced(formulaOf(other), index, from, to) } } : other,
    );
    const sheets = recipe.sheets.map((other): SheetRecipe => (other === sheet ? { ...other, cells } : other));
    const near = text.slice(Math.max(0, (places[index]?.index ?? 0) - 40), (places[index]?.index ?? 0) + 30);
    const label = sheet.cells.find(({ at }) => at === `A${row}`)?.content;
    return {
      recipe: { ...recipe, sheets },
      told: `${sheet.name} ${row} (${typeof label === 'string' ? label : ''}): ${from} -> ${to} in …${near}…`,
    };
  }
}

function formulaOf({ content }: CellRecipe): string {
  return typeof content === 'object' ? content.formula : '';
}

function replaced(text: string, index: number, from: string, to: string): string {
  let count = -1;
  return text.replace(pieces, (piece) => {
    count += 1;
    return count === index && piece === from ? to : piece;
  });
}

function pick<T>(list: readonly T[], random: () => number): T {
  const one = list[Math.floor(random() * list.length)];
  if (one === undefined) throw new Error('nothing to pick from');
  return one;
}

const random = new RandomVisits(new SheetUnits('US'), Number(seed));
const visitsOf = new RandomVisits(new SheetUnits('US'), 20_261_129);
const untouched = await SheetInHand.open('US');
// Those of the tests: every limit, every bad cell, and what the seed gives.
const visits: readonly TypedVisit[] = [
  ...sparseVisits(),
  ...limitVisits(),
  ...(['anything', 'short of gas', 'opened', 'clearly short'] as const).flatMap((mood) =>
    Array.from({ length: 20 }, (_, number) => visitsOf.visit(mood, number)),
  ),
  ...badCellVisits(untouched.placed),
];

let noticed = 0;
for (let number = 1; number <= Number(howMany); number += 1) {
  const { recipe: other, told } = plant(() => random.random());
  const found = emptyComparison();
  try {
    const sheet = await SheetInHand.open('US', other);
    for (const visit of visits) {
      compareVisit(sheet, visit, found);
      if (found.differences.length > 0) break;
    }
  } catch (error) {
    found.differences.push(String(error));
  }
  if (found.differences.length > 0) noticed += 1;
  else console.log(`not noticed: ${told}`);
}
console.log(`${String(noticed)} of ${howMany} planted changes noticed (seed ${seed})`);
