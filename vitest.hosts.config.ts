import { defineConfig } from 'vitest/config';

/** Tests that need another program (LibreOffice, Java): slow, one file at a time. */
export default defineConfig({
  test: {
    include: ['tests/hosts/**/*.test.ts'],
    globalSetup: ['tests/hosts/build-first.ts'],
    testTimeout: 180_000,
    hookTimeout: 180_000,
    fileParallelism: false,
  },
});
