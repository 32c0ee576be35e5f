import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { catalogue } from '../../catalogue/index.ts';
import { bundleFunction, bundleLibrary, limits } from './script/bundle.ts';
import type { EmitOptions } from './script/emit.ts';
import { emitInlineDefinition, emitLibraryDefinitions, inlineBody } from './script/emit.ts';
import { spell } from './spell.ts';

/**
 * `npm run build:sql -- [--library ADDRESS] [--errors fail] [--numbers text]` → dist/sql: definitions for engines that
 * run JavaScript.
 */
const { values } = parseArgs({
  options: {
    library: { type: 'string', default: 'gs://YOUR-BUCKET/ouncewise-library.js' },
    errors: { type: 'string', default: 'null' },
    numbers: { type: 'string', default: 'number' },
  },
});
if (!['null', 'fail'].includes(values.errors)) throw new Error('--errors is null or fail');
if (!['number', 'text'].includes(values.numbers)) throw new Error('--numbers is number or text');
const options = values as { errors: EmitOptions['errors']; numbers: EmitOptions['numbers'] };

const folder = join(import.meta.dirname, '../../../dist/sql');
mkdirSync(folder, { recursive: true });
const wrong =
  options.errors === 'fail' ? 'A wrong input ends the query with the reason.' : 'A wrong input gives NULL.';
const arguments_ = `-- Give every value in order; NULL stands for one that may be left out. ${wrong}\n`;

const library = await bundleLibrary();
if (library.length > limits.library) throw new Error(`the library has ${library.length} bytes`);
writeFileSync(join(folder, 'ouncewise-library.js'), library);
writeFileSync(
  join(folder, 'definitions-library.sql'),
  `-- Ouncewise for engines that load a JavaScript library.
-- 1. Upload ouncewise-library.js to where your engine reads libraries from.
-- 2. Replace ${values.library} below by its address.
-- 3. Run this file in the data set that shall hold the functions.
${arguments_}
${emitLibraryDefinitions(catalogue.all(), values.library, options)}`,
);

const definitions: string[] = [];
const tooLarge: string[] = [];
for (const declaration of catalogue.all()) {
  const program = await bundleFunction(declaration);
  if (inlineBody(declaration, program, options).length > limits.inlineBody)
    tooLarge.push(spell(declaration.id));
  else definitions.push(emitInlineDefinition(declaration, program, options));
}
writeFileSync(
  join(folder, 'definitions-inline.sql'),
  `-- Ouncewise for engines that take JavaScript as the body of a function.
-- Run this file in the schema that shall hold the functions. Each function stands alone; take those you need.
-- Too large for a body of ${limits.inlineBody} bytes and not in here: ${tooLarge.join(', ') || 'none'}.
${arguments_}
${definitions.join('\n')}`,
);
console.log(
  `dist/sql: library ${library.length} bytes, ${definitions.length} functions with a body of their own, too large: ${tooLarge.join(', ') || 'none'}`,
);
