// Plain Node, no packages: this runs before any are there.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

const lockFile = join(root, 'package-lock.json');
const npmsOwnRecord = join(root, 'node_modules', '.package-lock.json');
const kept = join(root, 'node_modules', '.turncaller-installed');

/** What the installed packages depend on: the lock file and the Node version. */
function wanted() {
  return createHash('sha256').update(readFileSync(lockFile)).update(process.version).digest('hex');
}

/**
 * @typedef {Record<string, { version?: string, optional?: boolean }>} Packages
 */

/**
 * Whether npm's own record of node_modules agrees with the lock file, as it does after a plain
 * `npm install` by hand. Optional packages of other machines are in the lock file alone.
 * @param {Packages} locked
 * @param {Packages} there
 */
export function sameTree(locked, there) {
  return Object.keys({ ...locked, ...there }).every((path) => {
    if (path === '') return true;
    if (!there[path]) return locked[path]?.optional === true;
    return there[path].version === locked[path]?.version;
  });
}

/**
 * @param {string} file
 * @returns {Packages}
 */
function packagesIn(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

function lockedIsThere() {
  return existsSync(npmsOwnRecord) && sameTree(packagesIn(lockFile), packagesIn(npmsOwnRecord));
}

/** Installs the locked packages unless just these are there already. Ends the process if it can't. */
export function ensureInstalled() {
  const want = wanted();
  if (existsSync(kept) && readFileSync(kept, 'utf8') === want) return;
  if (!lockedIsThere()) installLocked();
  writeFileSync(kept, want);
}

function installLocked() {
  console.log('Installing packages (npm ci) …');
  const npm = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (npm.status === 0) return;
  console.error('npm ci failed: is this machine on line, and is there room on the disk?');
  process.exit(1);
}
