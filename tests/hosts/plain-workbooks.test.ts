import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { columnLetters } from '../../functions/workbook/model/address.ts';
import { readValues } from '../../functions/office-work/gather/read-values.ts';
import { plainRecipes } from '../../sample-workbooks/recipes.ts';
import { SheetUnits } from '../../sample-workbooks/visit-sheet/sheet-units.ts';
import { visitSheetRecipe } from '../../sample-workbooks/visit-sheet/recipe.ts';
import { recalculateSample } from '../../sample-workbooks/writing/cached-values.ts';
import type { WorkbookRecipe } from '../../sample-workbooks/writing/recipe.ts';
import { writeWorkbook } from '../../sample-workbooks/writing/write.ts';
import { RandomVisits } from '../sample-workbooks/visit-sheet/random-visits.ts';
import { sampleVisit } from '../sample-workbooks/visit-sheet/sample-visit.ts';
import type { Worked } from './plain-workbooks/engines.ts';
import { PlainWorkbooks } from './plain-workbooks/engines.ts';

/** Filled sheets of both unit systems, and the other plain workbooks as they ship. */
const recipes: readonly WorkbookRecipe[] = [
  visitSheetRecipe('US', sampleVisit),
  ...(['US', 'SI'] as const).flatMap((system) => {
    const visits = new RandomVisits(new SheetUnits(system), 5);
    return (['anything', 'short of gas', 'opened', 'clearly short'] as const).map((mood) =>
      visitSheetRecipe(system, visits.visit(mood, 1)),
    );
  }),
  ...plainRecipes,
];
const raw = await Promise.all(recipes.map((recipe) => writeWorkbook(recipe, 'others')));
const own = raw.map((bytes) => valuesOf(recalculateSample(bytes).bytes));
const formulas = recipes.map(({ sheets }) =>
  sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ at, content }) => (typeof content === 'object' ? [`${name}!${at}`] : [])),
  ),
);
const sheetNames = recipes.map(({ sheets }) => sheets.map(({ name }) => name));
const workbooks = new PlainWorkbooks(raw);
afterAll(() => workbooks.remove());

function valuesOf(bytes: Uint8Array): Worked {
  const found: Record<string, number | string | boolean> = {};
  for (const { name, rows } of readValues('book.xlsx', bytes)) {
    rows.forEach((cells: readonly unknown[] | undefined, row) => {
      (cells ?? []).forEach((value, column) => {
        if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean')
          found[`${name}!${columnLetters(column)}${String(row + 1)}`] = value;
        else if (value !== null && value !== undefined)
          found[`${name}!${columnLetters(column)}${String(row + 1)}`] = 'error';
      });
    });
  }
  return found;
}

/** Programs add in different orders. */
const sameShare = 1e-9;

function differences(values: readonly Worked[]): {
  readonly compared: number;
  readonly different: readonly string[];
} {
  let compared = 0;
  const different: string[] = [];
  formulas.forEach((cells, book) => {
    for (const cell of cells) {
      const wanted = own[book]?.[cell] ?? '';
      const got = values[book]?.[cell] ?? '';
      compared += 1;
      const same =
        typeof wanted === 'number' && typeof got === 'number'
          ? Math.abs(wanted - got) <= sameShare * Math.max(1, Math.abs(wanted))
          : wanted === got;
      if (!same) different.push(`${String(book)} ${cell}: ours ${String(wanted)}, theirs ${String(got)}`);
    }
  });
  return { compared, different };
}

const programs: readonly (readonly [name: string, work: () => readonly Worked[]])[] = [
  [
    'LibreOffice without our extension',
    () => workbooks.byLibreOffice().map((path) => valuesOf(readFileSync(path))),
  ],
  ['Gnumeric', () => workbooks.byGnumeric().map((path) => valuesOf(readFileSync(path)))],
  ['Formualizer', () => workbooks.byEngine('formualizer', formulas, sheetNames)],
  ['IronCalc', () => workbooks.byEngine('ironcalc', formulas, sheetNames)],
];

describe('plain workbooks without saved values', () => {
  test.each(programs)('are worked out alike by %s', (name, work) => {
    const { compared, different } = differences(work());
    console.log(`${name}: ${String(compared)} cells compared, ${String(different.length)} not alike`);
    expect(different.slice(0, 20)).toEqual([]);
    expect(compared).toBeGreaterThan(20_000);
  });
});
