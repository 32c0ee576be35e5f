import { functionGuideRecipe } from './function-guide/recipe.ts';
import { repairOrReplaceRecipe } from './repair-or-replace/recipe.ts';
import type { WorkbookRecipe } from './writing/recipe.ts';
import { visitLogRecipe } from './visit-log/recipe.ts';

/** Every sample workbook. */
export const recipes: readonly WorkbookRecipe[] = [
  visitLogRecipe,
  repairOrReplaceRecipe,
  functionGuideRecipe,
];
