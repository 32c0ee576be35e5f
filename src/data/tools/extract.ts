/** `npm run extract`: reads the coefficients out of the pinned library again and writes them, formatted, into src/data. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { pythonWithLibrary } from './python-environment.ts';

const path = (name: string) => fileURLToPath(new URL(name, import.meta.url));

execFileSync(pythonWithLibrary(), [path('extract.py')], { stdio: 'inherit' });
execFileSync('npx', ['prettier', '--log-level', 'warn', '--write', path('..')], { stdio: 'inherit' });
console.log('Coefficients written; `npm run derive` rebuilds the tables that depend on what changed.');
