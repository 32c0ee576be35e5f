import { functionGuideRecipe } from './function-guide/recipe.ts';
import type { WorkbookRecipe } from './writing/recipe.ts';
import { visitLogRecipe } from './visit-log/recipe.ts';

/** Every sample workbook. */
export const recipes: readonly WorkbookRecipe[] = [visitLogRecipe, functionGuideRecipe];
