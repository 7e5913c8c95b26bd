import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { stamp } from './scripts/stamp.mjs';

export default defineConfig({
  plugins: [react()],
  define: stamp(),
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/**/*.dom.test.ts', 'tests/browser/**'],
          // The property tests and the guards, which run the real tools, need more than the usual 5 s.
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          environment: 'happy-dom',
          include: ['tests/**/*.dom.test.{ts,tsx}'],
          // Whole forms are filled in; a busy machine takes longer than the usual 5 s for the longest.
          testTimeout: 60_000,
          setupFiles: ['tests/dom.setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          fileParallelism: false,
          testTimeout: 180_000,
          hookTimeout: 180_000,
          globalSetup: ['tests/browser/serve.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'firefox',
          environment: 'node',
          include: ['tests/browser/**/*.firefox.ts'],
          fileParallelism: false,
          testTimeout: 180_000,
          hookTimeout: 180_000,
          globalSetup: ['tests/browser/serve.ts'],
        },
      },
    ],
  },
});
