/** `npm run fuzz -- PART [...]`: files, formulas or killed, with that part's own options (--help). */
import { runScript } from '../run-script.ts';

const parts: Readonly<Record<string, string>> = {
  files: 'files/run.ts',
  formulas: 'formulas/run.ts',
  killed: 'killed/run.ts',
};

const [part = '', ...words] = process.argv.slice(2);
const script = parts[part];
if (script === undefined) {
  console.error(`npm run fuzz -- PART [...]; parts: ${Object.keys(parts).join(', ')}`);
  process.exit(2);
}
runScript(new URL(script, import.meta.url), words);
