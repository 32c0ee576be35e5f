import { writeFileSync } from 'node:fs';

import { fileName, targets } from './writing/spelling.ts';
import { recipes } from './recipes.ts';
import { buildWorkbook } from './writing/build-workbook.ts';

/** `npm run samples`: writes every sample workbook, for Excel and for the others, beside this file. */
for (const recipe of recipes) {
  for (const target of targets) {
    const name = fileName(recipe.file, target);
    const file = await buildWorkbook(recipe, target);
    writeFileSync(new URL(name, import.meta.url), file);
    process.stdout.write(`${name}  ${String(Math.round(file.length / 1024))} KB\n`);
  }
}
