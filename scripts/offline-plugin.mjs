import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import { missingOffline } from './offline-guard.mjs';
import { filesIn, isNotForPages, MOST_OFFLINE_BYTES, WORKER } from './offline-set.mjs';
import { metaPolicy } from './serving-rules.mjs';

const PAGE = 'index.html';
const PLACEHOLDER = '__OFFLINE_FILES__';
const VERSION_HOLE = 'version of the files';

/** @param {Buffer | string} bytes */
function sha256(bytes) {
  return createHash('sha256').update(bytes);
}

/**
 * Everything in the built folder that a page may ask for, with what it must be.
 * The page names the version, so the version is taken before that is written into it.
 * @param {string} folder
 */
function offlineSet(folder) {
  const paths = filesIn(folder).filter((path) => !isNotForPages(path));
  const version = paths
    .reduce((all, path) => {
      return all.update(`${path}\n`).update(sha256(readFileSync(join(folder, path))).digest());
    }, createHash('sha256'))
    .digest('hex')
    .slice(0, 16);
  const page = join(folder, PAGE);
  writeFileSync(page, readFileSync(page, 'utf8').replace(VERSION_HOLE, version));
  const files = paths.map((path) => ({
    path,
    integrity: `sha256-${sha256(readFileSync(join(folder, path))).digest('base64')}`,
  }));
  return { version, files };
}

/**
 * The service worker in one script of its own, which is what every browser takes.
 * @param {string} root
 * @returns {Promise<string>}
 */
async function builtWorker(root) {
  const built = await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    build: {
      target: 'es2023',
      write: false,
      rolldownOptions: {
        input: join(root, 'src/platform/offline/worker.ts'),
        output: { format: 'iife' },
      },
    },
  });
  const outputs = 'output' in built ? built.output : [];
  const [only, ...more] = outputs;
  if (only?.type !== 'chunk' || more.length > 0) throw new Error(`${WORKER} must be one script.`);
  if (!only.code.includes(PLACEHOLDER)) throw new Error(`${WORKER} has no place for the list.`);
  return only.code;
}

/**
 * Builds the service worker, lists in it every file of the build, writes the policy and the version
 * into the page, and fails the build when anything a page needs is left out.
 * @returns {import('vite').Plugin}
 */
export function offline() {
  let root = '';
  let folder = '';
  return {
    name: 'offline',
    apply: 'build',
    configResolved(config) {
      root = config.root;
      folder = resolve(root, config.build.outDir);
    },
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: metaPolicy() },
        injectTo: 'head-prepend',
      },
      { tag: 'meta', attrs: { name: 'referrer', content: 'no-referrer' }, injectTo: 'head' },
      { tag: 'meta', attrs: { name: 'files', content: VERSION_HOLE }, injectTo: 'head' },
    ],
    writeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        const worker = await builtWorker(root);
        const list = JSON.stringify(offlineSet(folder));
        writeFileSync(
          join(folder, WORKER),
          worker.replace(PLACEHOLDER, () => list),
        );
      },
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      handler() {
        const missing = missingOffline(folder, MOST_OFFLINE_BYTES);
        if (missing.length > 0)
          this.error(`The app would not work offline:\n${missing.join('\n')}`);
      },
    },
  };
}
