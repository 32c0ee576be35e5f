import { defineConfig } from 'vitest/config';

/** Everything that needs Node alone. Tests that need another program live in tests/hosts and run with `npm run test:hosts`. */
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/hosts/**', 'tests/bench/**', 'node_modules/**'],
    setupFiles: ['tests/rethrow-faults.ts', 'tests/seeded-properties.ts'],
    testTimeout: 60_000,
    // Files of one worker share the modules they load: loading them anew for each took three quarters of the time.
    isolate: false,
  },
});
