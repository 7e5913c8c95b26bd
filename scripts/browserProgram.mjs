// Plain Node, no packages: this runs before any are there.
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * A browser to test in.
 * @typedef {object} BrowserProgram
 * @property {string} title as a person calls it
 * @property {string} setting the environment variable that names one
 * @property {readonly string[]} names what it is called on PATH
 * @property {readonly string[]} elsewhere where else it is found
 * @property {string} debian its Debian package
 */

/** @param {string} file */
function runs(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** @param {BrowserProgram} program */
function advice({ debian, setting }) {
  return `Install one with 'sudo apt-get install ${debian}' (or as your system does it), or set ${setting} to one.`;
}

/**
 * The first of its setting, its names on PATH and the usual places that can be run, or undefined.
 * @param {BrowserProgram} program
 */
export function findBrowser({ setting, names, elsewhere }) {
  const asked = process.env[setting];
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
 * A browser to test in: found, or installed where that is possible.
 * @param {BrowserProgram} program
 * @returns {{ path: string } | { missing: string }} its path, or a sentence with the command that installs one
 */
export function ensureBrowser(program) {
  const { title, setting, debian } = program;
  const found = findBrowser(program);
  if (found) return { path: found };
  const asked = process.env[setting];
  if (asked) {
    return {
      missing: `${setting} is ${asked}, which is not a program that runs. ${advice(program)}`,
    };
  }
  if (mayInstall()) {
    console.log(`Installing ${title} (apt-get) …`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update'], { stdio: 'inherit', env });
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', debian], {
      stdio: 'inherit',
      env,
    });
    const installed = findBrowser(program);
    if (installed) return { path: installed };
  }
  return { missing: `These tests want ${title} and found none. ${advice(program)}` };
}
