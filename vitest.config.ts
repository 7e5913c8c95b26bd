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
          exclude: ['tests/**/*.dom.test.*', 'tests/browser/**'],
        },
      },
      {
        extends: true,
        test: {
          name: 'dom',
          environment: 'happy-dom',
          include: ['tests/**/*.dom.test.{ts,tsx}'],
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
          testTimeout: 120_000,
          hookTimeout: 120_000,
          globalSetup: ['tests/browser/serve.ts'],
        },
      },
    ],
  },
});
