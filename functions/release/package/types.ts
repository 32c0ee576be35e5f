import { join } from 'node:path';
import { generateDtsBundle } from 'dts-bundle-generator';

const root = join(import.meta.dirname, '../../..');

/**
 * Every declaration that `src/index.ts` exports, and those it needs, as one text: no paths inside, so that the same text
 * serves `import` and `require` in every way TypeScript has of finding modules.
 */
export function libraryTypes(): string {
  const [types] = generateDtsBundle(
    [
      {
        filePath: join(root, 'src/index.ts'),
        // What cannot be imported must not look as if it could.
        output: { exportReferencedTypes: false, noBanner: true },
      },
    ],
    { preferredConfigPath: join(root, 'tsconfig.library.json') },
  );
  return types ?? '';
}
