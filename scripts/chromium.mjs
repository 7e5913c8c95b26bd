// Plain Node, no packages: this runs before any are there.
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const elsewhere = [
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const advice =
  "Install one with 'sudo apt-get install chromium' (or as your system does it), or set CHROMIUM_PATH to one.";

/** @param {string} file */
function runs(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The first of CHROMIUM_PATH, the usual names on PATH and the usual places that can be run, or undefined. */
export function findChromium() {
  const asked = process.env.CHROMIUM_PATH;
  if (asked) return runs(asked) ? asked : undefined;
  const folders = (process.env.PATH ?? '').split(delimiter).concat('/usr/bin');
  const named = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...named, ...elsewhere].find(runs);
}

/** Whether this process may install a system package by itself. */
function mayInstall() {
  return process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
}

/**
 * A Chromium to test in: found, or installed where that is possible.
 * @returns {{ path: string } | { missing: string }} its path, or a sentence with the command that installs one
 */
export function ensureChromium() {
  const found = findChromium();
  if (found) return { path: found };
  const asked = process.env.CHROMIUM_PATH;
  if (asked) {
    return { missing: `CHROMIUM_PATH is ${asked}, which is not a program that runs. ${advice}` };
  }
  if (mayInstall()) {
    console.log('Installing Chromium (apt-get) …');
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update'], { stdio: 'inherit', env });
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], {
      stdio: 'inherit',
      env,
    });
    const installed = findChromium();
    if (installed) return { path: installed };
  }
  return { missing: `The browser tests want a Chromium and found none. ${advice}` };
}
