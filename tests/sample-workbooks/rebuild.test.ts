import { describe, expect, test } from 'vitest';

import { recipes } from '../../sample-workbooks/recipes.ts';
import { buildWorkbook } from '../../sample-workbooks/writing/build-workbook.ts';
import { fileName, targets } from '../../sample-workbooks/writing/spelling.ts';
import { committed } from './built.ts';

describe.each(recipes.flatMap((recipe) => targets.map((target) => ({ recipe, target }))))(
  'the sample $recipe.file for $target',
  ({ recipe, target }) => {
    test('is built anew with the very bytes that are committed', { timeout: 180_000 }, async () => {
      const rebuilt = Buffer.from(await buildWorkbook(recipe, target));
      const same = rebuilt.equals(committed(recipe.file, target));
      expect(same, `${fileName(recipe.file, target)} is stale: npm run samples`).toBe(true);
    });
  },
);
