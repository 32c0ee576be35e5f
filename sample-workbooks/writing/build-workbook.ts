import type { WorkbookRecipe } from './recipe.ts';
import type { Target } from './spelling.ts';
import { writeWorkbook } from './write.ts';

/** Writes a recipe and fills in the values that the formulas give. */
export async function buildWorkbook(recipe: WorkbookRecipe, target: Target): Promise<Uint8Array> {
  return writeWorkbook(recipe, target);
}
