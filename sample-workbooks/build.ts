import { writeFileSync } from 'node:fs';

import { fileName, targets } from './writing/spelling.ts';
import { buildFleetSummary } from './fleet-summary/build-fleet-summary.ts';
import { fleetTemplate } from './fleet-summary/template.ts';
import { plainRecipes, recipes } from './recipes.ts';
import { buildWorkbook } from './writing/build-workbook.ts';
import { seasonPlanRecipe } from './season-plan/recipe.ts';
import { writeWorkbook } from './writing/write.ts';

function put(name: string, file: Uint8Array): void {
  writeFileSync(new URL(name, import.meta.url), file);
  process.stdout.write(`${name}  ${String(Math.round(file.length / 1024))} KB\n`);
}

/** `npm run samples`: writes every sample workbook, for Excel and for the others, beside this file. */
for (const recipe of plainRecipes) put(`${recipe.file}.xlsx`, await buildWorkbook(recipe, 'others'));
for (const target of targets) {
  for (const recipe of recipes) put(fileName(recipe.file, target), await buildWorkbook(recipe, target));
  // The fleet is gathered into its template, as the command line does it.
  const template = await writeWorkbook(fleetTemplate, target);
  put(fileName(fleetTemplate.file, target), template);
  put(fileName('fleet-summary', target), buildFleetSummary(template));
}
// Plain formulas: one file for every program.
put(fileName(seasonPlanRecipe.file, 'others'), await buildWorkbook(seasonPlanRecipe, 'others'));
