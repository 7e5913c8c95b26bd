import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    appUrl: string;
    /** Where the build lies. */
    appFolder: string;
  }
}

/** Builds the app once, as it ships, into a folder of this run's own, and serves it on a free port. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  const mode = 'production';
  const outDir = await mkdtemp(join(tmpdir(), 'turncaller-built-'));
  await build({ mode, logLevel: 'warn', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    mode,
    logLevel: 'warn',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1', strictPort: false },
  });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || !address) throw new Error('the preview server has no port');
  project.provide('appUrl', `http://127.0.0.1:${address.port}/`);
  project.provide('appFolder', outDir);
  return async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
}
