import { createHash } from 'node:crypto';
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn, isNotForPages, WORKER } from './offline-set.mjs';

/**
 * The list as it stands in the built worker.
 * @param {string} folder
 * @returns {{ path: string, integrity: string }[]}
 */
function listed(folder) {
  const text = readFileSync(join(folder, WORKER), 'utf8');
  const found = /\{"version":"[0-9a-f]+","files":(\[.*?\])\}/.exec(text)?.[1];
  return found === undefined ? [] : JSON.parse(found);
}

/**
 * Files named in the text of a page, script or style: whatever is quoted there, or in url(), and ends
 * like a file.
 * @param {string} text
 */
function named(text) {
  const quoted = text.matchAll(/["'`(]((?:\.{0,2}\/)?[\w@+~/.-]+\.[a-z0-9]{2,5})["'`)?#]/g);
  return [...quoted].map(([, name = '']) => name);
}

/**
 * What the built folder has or needs and the offline set lacks, a sentence each. It is judged by the
 * files on disk and by what they name, not by how the set was made.
 * @param {string} folder
 * @param {number} mostBytes
 * @returns {string[]}
 */
export function missingOffline(folder, mostBytes) {
  const set = listed(folder);
  const inSet = new Set(set.map(({ path }) => path));
  const onDisk = filesIn(folder);
  const byName = new Map(onDisk.map((path) => [path.replace(/^.*\//, ''), path]));
  const problems = [];
  if (set.length === 0) problems.push(`${WORKER} lists no files.`);
  for (const path of onDisk) {
    if (!isNotForPages(path) && !inSet.has(path)) problems.push(`${path} is not kept.`);
  }
  let bytes = 0;
  for (const { path, integrity } of set) {
    if (!onDisk.includes(path)) {
      problems.push(`${path} is listed but not there.`);
      continue;
    }
    bytes += statSync(join(folder, path)).size;
    const hash = createHash('sha256')
      .update(readFileSync(join(folder, path)))
      .digest('base64');
    if (`sha256-${hash}` !== integrity) problems.push(`${path} was changed after it was listed.`);
    if (!/\.(html|js|css|json|webmanifest)$/.test(path)) continue;
    for (const name of named(readFileSync(join(folder, path), 'utf8'))) {
      const needed = byName.get(name.replace(/^.*\//, ''));
      if (needed !== undefined && needed !== WORKER && !inSet.has(needed)) {
        problems.push(`${needed} is not kept, and ${path} needs it.`);
      }
    }
  }
  if (bytes > mostBytes) problems.push(`${bytes} bytes are more than the ${mostBytes} allowed.`);
  return problems;
}
