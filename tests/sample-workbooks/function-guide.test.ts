import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../functions/catalogue/index.ts';
import { checksOf } from '../../sample-workbooks/function-guide/checks.ts';
import { functionGuide, functionGuideRecipe } from '../../sample-workbooks/function-guide/recipe.ts';
import { buildWorkbook } from '../../sample-workbooks/writing/build-workbook.ts';
import { recalculateSample } from '../../sample-workbooks/writing/cached-values.ts';
import { fileName, targets } from '../../sample-workbooks/writing/spelling.ts';
import { writeWorkbook } from '../../sample-workbooks/writing/write.ts';

/** Checks that agree and those that do not, as the sheet's own formulas say after a recalculation. */
async function recalculated(functions: Parameters<typeof functionGuide>[0]) {
  const { loaded, kept, cycles } = recalculateSample(await writeWorkbook(functionGuide(functions), 'others'));
  const found = { agrees: 0, differs: [] as string[], kept, cycles };
  for (const { sheet } of loaded.sheets) {
    if (sheet.name === 'Guide') continue;
    for (const cell of sheet.formulaCells()) {
      if (cell.value === 'Agrees') found.agrees += 1;
      if (cell.value === 'Differs') found.differs.push(`${sheet.name} row ${String(cell.row)}`);
    }
  }
  return found;
}

describe('the function guide workbook', () => {
  it('agrees with every example of every function', async () => {
    const promised = catalogue
      .all()
      .flatMap(({ returns, examples }) => examples.flatMap((example) => checksOf(returns, example)));
    const { agrees, differs, kept, cycles } = await recalculated(catalogue.all());
    expect(differs).toEqual([]);
    expect(kept).toEqual([]);
    expect(cycles).toEqual([]);
    expect(agrees).toBe(promised.length);
    expect(agrees).toBeGreaterThan(2 * 50);
  });

  it('is built from the catalogue as it is now', async () => {
    for (const target of targets) {
      const committed = readFileSync(
        join(import.meta.dirname, '../../sample-workbooks', fileName('function-guide', target)),
      );
      const now = await buildWorkbook(functionGuideRecipe, target);
      expect(Buffer.compare(committed, now), `${target}: run npm run samples`).toBe(0);
    }
  });

  it('says so when a result is not what it promises', async () => {
    const spoiled = catalogue.all().map((declaration) => ({
      ...declaration,
      examples: declaration.examples.map((example) => ({ ...example, gives: 'something else' })),
    }));
    const { agrees, differs } = await recalculated(spoiled);
    expect(agrees).toBe(0);
    expect(differs.length).toBeGreaterThan(2 * 50);
  });
});
