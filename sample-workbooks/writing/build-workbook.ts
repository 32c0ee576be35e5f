import { recalculateSample } from './cached-values.ts';
import type { WorkbookRecipe } from './recipe.ts';
import type { Target } from './spelling.ts';
import { writeWorkbook } from './write.ts';

/** Writes a recipe and fills in the values that its formulas give, so that the file reads well before anyone recalculates. */
export async function buildWorkbook(recipe: WorkbookRecipe, target: Target): Promise<Uint8Array> {
  const written = await writeWorkbook(recipe, target);
  return recalculateSample(written).bytes;
}
