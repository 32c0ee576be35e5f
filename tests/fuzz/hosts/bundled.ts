import { join } from 'node:path';
import { build } from 'esbuild';

const root = join(import.meta.dirname, '../../..');

/** A host's program as one script for an old JavaScript; the shipped bundle has its own tests, and takes longer to build. */
export async function bundled(entry: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(root, entry)],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'Ouncewise',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    target: 'es2019',
    charset: 'ascii',
    define: { OUNCEWISE_VERSION: '""' },
  });
  return outputFiles[0]?.text ?? '';
}
