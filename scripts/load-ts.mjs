import { resolve } from 'node:path';
import { runnerImport } from 'vite';
import { root } from './root.mjs';

/**
 * Loads a TypeScript module of the project in plain Node, doors (#room) and extensionless paths included.
 * @param {string} path relative to the project's folder, or absolute
 * @returns {Promise<any>} what the module exports
 */
export async function loadTs(path) {
  const { module } = await runnerImport(resolve(root, path), {
    root,
    configFile: false,
    logLevel: 'error',
  });
  return module;
}
