import { appendFile, cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type PreviewServer, preview } from 'vite';
import { afterEach, inject } from 'vitest';

/** The app on a server of its own, in a folder of its own, that can be stopped and deployed anew. */
export interface Deployment {
  /** Its address, the same after every stop and start. */
  readonly url: string;
  /** What was asked of the server, by path. */
  readonly asked: string[];
  /** Puts another version in place of the one that is there; its old files are gone. */
  deploy(version: string): Promise<void>;
  /** Changes a file of what is deployed, as a deployment cut short would. */
  spoil(path: string): Promise<void>;
  stop(): Promise<void>;
  start(): Promise<void>;
}

const running = new Set<Deployment>();
const folders: string[] = [];

afterEach(async () => {
  await Promise.all([...running].map((one) => one.stop()));
  await Promise.all(
    folders.splice(0).map((folder) => rm(folder, { recursive: true, force: true })),
  );
});

async function newFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'turncaller-deployed-'));
  folders.push(folder);
  return folder;
}

/** The build the browser tests have made, on a server of its own; below `base` where that is given. */
export async function deployed(base = '/'): Promise<Deployment> {
  const folder = await newFolder();
  await cp(inject('appFolder'), folder, { recursive: true });
  let server: PreviewServer | null = null;
  let port = 0;
  const asked: string[] = [];

  async function start(): Promise<void> {
    server = await preview({
      base,
      logLevel: 'silent',
      build: { outDir: folder },
      preview: { port, host: '127.0.0.1', strictPort: port !== 0 },
    });
    server.httpServer.prependListener('request', ({ url }) => asked.push(String(url)));
    const address = server.httpServer.address();
    if (typeof address !== 'object' || !address) throw new Error('the server has no port');
    port = address.port;
    running.add(deployment);
  }

  const deployment: Deployment = {
    get url() {
      return `http://127.0.0.1:${port}${base}`;
    },
    asked,
    async deploy(version) {
      const built = await newFolder();
      await build({
        mode: 'production',
        logLevel: 'silent',
        define: { __APP_VERSION__: JSON.stringify(version) },
        build: { outDir: built, emptyOutDir: true },
      });
      for (const name of await readdir(folder)) {
        await rm(join(folder, name), { recursive: true });
      }
      await cp(built, folder, { recursive: true });
    },
    spoil: (path) => appendFile(join(folder, path), ' '),
    async stop() {
      running.delete(deployment);
      await server?.close();
      server = null;
    },
    start,
  };
  await start();
  return deployment;
}
