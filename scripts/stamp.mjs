import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/** The short commit of the working tree's HEAD, or 'unknown' where git or its history is missing. */
function commit() {
  try {
    return execFileSync('git', ['rev-parse', '--short', 'HEAD'], {
      cwd: root,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }).trim();
  } catch {
    return 'unknown';
  }
}

/** What vite puts in place of the two names src/platform/version.ts reads. */
export function stamp() {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return { __APP_VERSION__: JSON.stringify(version), __APP_COMMIT__: JSON.stringify(commit()) };
}
