import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterEach } from 'vitest';

const configuration = [
  'package.json',
  'biome.json',
  'lint',
  'tsconfig.json',
  'tsconfig.pure.json',
  '.gitignore',
];
const folders: string[] = [];

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/**
 * A folder of its own with the project's real configuration and just these files, so that a guard can
 * be watched failing without touching the tree. Removed after the test.
 */
export function plant(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'turncaller-planted-'));
  folders.push(folder);
  for (const name of configuration) cpSync(name, join(folder, name), { recursive: true });
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'), 'dir');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

export interface Ran {
  readonly status: number | null;
  readonly output: string;
}

/** Runs one of the project's tools, given by its script's path in the project, in a planted folder. */
export function runIn(folder: string, script: string, ...args: readonly string[]): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve(script), ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  return { status, output: stdout + stderr };
}

export const tsc = 'node_modules/typescript/bin/tsc';

export interface Finding {
  readonly path: string;
  readonly line: number;
  readonly category: string;
  readonly message: string;
}

export interface Linted {
  readonly status: number | null;
  readonly findings: readonly Finding[];
}

/** Lints a planted folder with the project's own configuration. */
export function lint(folder: string): Linted {
  const args = ['lint', '--error-on-warnings', '--max-diagnostics=none', '--reporter=json', '.'];
  const { status, stdout } = spawnSync(
    process.execPath,
    [resolve('node_modules/@biomejs/biome/bin/biome'), ...args],
    { cwd: folder, encoding: 'utf8' },
  );
  const { diagnostics } = JSON.parse(stdout);
  const findings = diagnostics.map(
    (found: {
      category: string;
      message: string;
      location: { path: string; start?: { line: number } };
    }) => ({
      path: found.location.path,
      line: found.location.start?.line ?? 0,
      category: found.category,
      message: found.message,
    }),
  );
  return { status, findings };
}
