import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { ensureChromium } from '../chromium.mjs';

/**
 * The app as it ships, built and served on a free port, with a way to open it on a fresh device.
 * @typedef {{
 *   url: string,
 *   version: string,
 *   device: (options?: { viewport?: { width: number, height: number }, more?: readonly string[] }) => Promise<Device>,
 *   close: () => Promise<void>,
 * }} App
 * @typedef {{ page: import('playwright-core').Page, close: () => Promise<void> }} Device
 */

const args = ['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run'];

/** @returns {Promise<App>} */
export async function servedApp() {
  const chosen = ensureChromium();
  if (!('path' in chosen)) throw new Error(chosen.missing);
  // A folder of its own: another build may be under way in dist/.
  const outDir = await mkdtemp(join(tmpdir(), 'turncaller-build-'));
  await build({ mode: 'production', logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    mode: 'production',
    logLevel: 'warn',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1', strictPort: false },
  });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || !address) throw new Error('the preview server has no port');
  const browser = await chromium.launch({ executablePath: chosen.path, args });
  const version = browser.version();
  await browser.close();
  return {
    url: `http://127.0.0.1:${address.port}/`,
    version,
    async close() {
      await server.close();
      await rm(outDir, { recursive: true, force: true });
    },
    async device({ viewport = { width: 1024, height: 768 }, more = [] } = {}) {
      const profile = await mkdtemp(join(tmpdir(), 'turncaller-device-'));
      const context = await chromium.launchPersistentContext(profile, {
        executablePath: chosen.path,
        headless: false,
        args: [...args, ...more],
        viewport,
      });
      const page = context.pages()[0] ?? (await context.newPage());
      return {
        page,
        async close() {
          await context.close();
          await rm(profile, { recursive: true, force: true, maxRetries: 5 });
        },
      };
    },
  };
}
