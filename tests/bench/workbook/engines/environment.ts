import { execFileSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { benchFolder } from '../kept-file.ts';

/** General spreadsheet engines with a permissive licence that read .xlsx; fetched from PyPI on first use. */
export const otherEngines = [
  {
    id: 'formualizer',
    name: 'Formualizer',
    version: '0.13.0',
    licence: 'MIT or Apache-2.0',
    takesFunctions: true,
  },
  { id: 'ironcalc', name: 'IronCalc', version: '0.9.1', licence: 'MIT or Apache-2.0', takesFunctions: false },
] as const;

export type OtherEngine = (typeof otherEngines)[number];

/** A private Python with the engines under .cache/; they are no dependencies of the package. */
export function pythonWithEngines(): string {
  const folder = join(benchFolder, `engines-${otherEngines.map(({ version }) => version).join('-')}`);
  const python = join(folder, 'bin/python');
  const ready = join(folder, 'ready');
  if (!existsSync(ready)) {
    const wanted = otherEngines.map(({ id, version }) => `${id}==${version}`);
    execFileSync('python3', ['-m', 'venv', '--clear', folder], { stdio: 'inherit' });
    execFileSync(python, ['-m', 'pip', 'install', '-q', '--only-binary=:all:', ...wanted], {
      stdio: 'inherit',
    });
    writeFileSync(ready, '');
  }
  return python;
}
