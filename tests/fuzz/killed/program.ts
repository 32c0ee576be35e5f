import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

const root = join(import.meta.dirname, '../../..');

/** Builds the command line into a folder inside the package, from where it finds its templates as when it is installed. */
export async function buildProgram(): Promise<{ program: string; folder: string }> {
  const folder = join(root, '.cache/built', `killed-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  const program = join(folder, 'ouncewise.js');
  await build({
    entryPoints: [join(root, 'functions/hosts/command-line/main.ts')],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    define: { OUNCEWISE_VERSION: '"tried"' },
    external: ['@duckdb/node-api'],
    outfile: program,
    logLevel: 'error',
  });
  return { program, folder };
}
