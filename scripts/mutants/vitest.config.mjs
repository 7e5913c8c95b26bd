import { defineConfig } from 'vitest/config';

/** The tests that faults planted in valvetrain and counting are run against. */
export default defineConfig({
  test: {
    environment: 'node',
    include: [
      'tests/valvetrain/**/*.test.ts',
      'tests/counting/**/*.test.ts',
      'tests/published/**/*.test.ts',
    ],
    // Ten seconds and more of engines whose answers the other tests hold as well.
    exclude: ['tests/published/crankStops.test.ts', 'tests/published/monteCarlo.test.ts'],
    // Long tests are run again for almost every fault: a share of their runs, always the same ones.
    env: { RUNS_PERCENT: '8', SEED: '10' },
    testTimeout: 60_000,
  },
});
