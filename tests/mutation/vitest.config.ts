import { defineConfig } from 'vitest/config';

/** What Stryker runs against every mutant: one file in one process, over at the first test that fails. */
export default defineConfig({
  test: {
    root: '.',
    include: ['tests/mutation/selection.test.ts'],
    environment: 'node',
    pool: 'threads',
    isolate: false,
    fileParallelism: false,
    bail: 1,
    testTimeout: 60_000,
    reporters: ['default'],
    // The mutants all stand in the same text and are switched on by a variable: it is transformed once.
    experimental: { fsModuleCache: true, fsModuleCachePath: '.stryker/transformed' },
  },
});
