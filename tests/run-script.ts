import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Runs a script of ours with words behind it, in this terminal; ends like the script. */
export function runScript(script: URL, words: readonly string[]): never {
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', fileURLToPath(script), ...words], {
    stdio: 'inherit',
  });
  process.exit(status ?? 1);
}
