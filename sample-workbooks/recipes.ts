import { functionGuideRecipe } from './function-guide/recipe.ts';
import { repairOrReplaceRecipe } from './repair-or-replace/recipe.ts';
import type { WorkbookRecipe } from './writing/recipe.ts';
import { visitSheetRecipe } from './visit-sheet/recipe.ts';
import { visitLogRecipe } from './visit-log/recipe.ts';

/** Every sample workbook that calls the functions: a file for Excel and one for the others. */
export const recipes: readonly WorkbookRecipe[] = [
  visitLogRecipe,
  repairOrReplaceRecipe,
  functionGuideRecipe,
];

/** Workbooks of plain formulas: one file opens in every program, with nothing installed. */
export const plainRecipes: readonly WorkbookRecipe[] = [visitSheetRecipe('US'), visitSheetRecipe('SI')];
