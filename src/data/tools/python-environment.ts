import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The property library whose data is read and against whose speed ours is measured. */
export const libraryVersion = '8.0.0';

/** A private Python with the pinned library under .cache/ (not committed); made on first use. */
export function pythonWithLibrary(): string {
  const folder = fileURLToPath(new URL(`../../../.cache/properties-${libraryVersion}`, import.meta.url));
  const python = `${folder}/bin/python`;
  if (!existsSync(`${folder}/ready`)) {
    const quiet = { stdio: 'inherit' } as const;
    execFileSync('python3', ['-m', 'venv', '--clear', folder], quiet);
    execFileSync(python, ['-m', 'pip', 'install', '-q', `CoolProp==${libraryVersion}`, 'numpy'], quiet);
    execFileSync('touch', [`${folder}/ready`]);
  }
  return python;
}
