import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '../../..');

/** Builds one host with the project's own webpack configuration, beside `dist/` so that nobody's build is disturbed. */
export function built(host: string, file: string): string {
  const folder = join(root, '.cache/built', `${host}-${String(process.pid)}`);
  mkdirSync(folder, { recursive: true });
  execFileSync(
    process.execPath,
    [join(root, 'node_modules/webpack/bin/webpack.js'), '--config-name', host, '--output-path', folder],
    { cwd: root, stdio: 'pipe' },
  );
  return readFileSync(join(folder, file), 'utf8');
}
