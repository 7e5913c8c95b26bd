import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    appUrl: string;
  }
}

/** Builds the app once, as it ships, and serves it on a free port while the browser tests run. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  const mode = 'production';
  await build({ mode, logLevel: 'warn' });
  const server = await preview({
    mode,
    logLevel: 'warn',
    preview: { port: 0, host: '127.0.0.1', strictPort: false },
  });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || !address) throw new Error('the preview server has no port');
  project.provide('appUrl', `http://127.0.0.1:${address.port}/`);
  return () => server.close();
}
