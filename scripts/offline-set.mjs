import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** The service worker's file; a browser keeps it apart, by itself. */
export const WORKER = 'offline.js';

/** All that is kept on the builder's device may be this large; more is decided here, not by accident. */
export const MOST_OFFLINE_BYTES = 12_000_000;

/**
 * What no page ever asks for: the worker itself, and maps that only a browser's own tools open.
 * @param {string} path
 */
export function isNotForPages(path) {
  return path === WORKER || path.endsWith('.map');
}

/**
 * Every file below a folder, its path with slashes, in order.
 * @param {string} folder
 * @returns {string[]}
 */
export function filesIn(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}
