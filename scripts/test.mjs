// npm test: every check there is, each going on after another's failure, so that all failures are
// seen at once. With --firefox, also what is told in Firefox. Leaves the runners' reports and summary.json in .reports/.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureChromium } from './chromium.mjs';
import { ensureFirefox } from './firefox.mjs';
import { ensureInstalled } from './installed.mjs';
import { root } from './root.mjs';
import { tally } from './tally.mjs';

const reports = join(root, '.reports');

/**
 * @typedef {{ name: string, passed: number, failed: number, note?: string }} Outcome
 */

/**
 * @param {string} name
 * @param {string[]} command
 * @param {Record<string, string>} env
 */
function run(name, [program = '', ...rest], env = {}) {
  console.log(`\n== ${name}`);
  const { status } = spawnSync(process.execPath, [join(root, program), ...rest], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  return status === 0;
}

/**
 * A step that is one check: its exit code says it.
 * @param {string} name
 * @param {string[]} command
 * @returns {Outcome}
 */
function check(name, command) {
  const passed = run(name, command);
  return { name, passed: passed ? 1 : 0, failed: passed ? 0 : 1 };
}

/**
 * A step that is a run of Vitest: its own report says how many.
 * @param {string} name
 * @param {string[]} args
 * @param {Record<string, string>} env
 * @returns {Outcome}
 */
function vitest(name, args, env = {}) {
  const report = join(reports, `${name}.json`);
  const command = ['node_modules/vitest/vitest.mjs', 'run', ...args];
  const outputs = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const ended = run(name, [...command, ...outputs], env);
  return { name, ...tally(report, ended) };
}

/**
 * The tests of one browser's project; without the browser one failure that says how to get it.
 * @param {string} project
 * @param {string} setting
 * @param {{ path: string } | { missing: string }} found
 * @returns {Outcome}
 */
function inBrowser(project, setting, found) {
  return 'path' in found
    ? vitest(project, [`--project=${project}`], { [setting]: found.path })
    : { name: project, passed: 0, failed: 1, note: found.missing };
}

/**
 * What of tests/ is neither published nor browser, each named, as --exclude does not reach a project
 * that has an exclude of its own.
 */
function unitTests() {
  return readdirSync(join(root, 'tests'), { withFileTypes: true })
    .filter(({ name }) => name !== 'published' && name !== 'browser')
    .map((entry) => `tests/${entry.name}${entry.isDirectory() ? '/' : ''}`);
}

ensureInstalled();
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

/** @type {Outcome[]} */
const outcomes = [
  check('types', ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.json']),
  check('pure types', ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.pure.json']),
  check('lint', ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.']),
  check('licences', ['scripts/licences.mjs']),
  vitest('unit', ['--project=node', '--project=dom', ...unitTests()]),
];
if (existsSync(join(root, 'tests/published'))) {
  outcomes.push(vitest('published', ['--project=node', 'tests/published/']));
}
outcomes.push(inBrowser('browser', 'CHROMIUM_PATH', ensureChromium()));
if (process.argv.includes('--firefox')) {
  outcomes.push(inBrowser('firefox', 'FIREFOX_PATH', ensureFirefox()));
}

const passed = outcomes.reduce((sum, outcome) => sum + outcome.passed, 0);
const failed = outcomes.reduce((sum, outcome) => sum + outcome.failed, 0);
writeFileSync(
  join(reports, 'summary.json'),
  `${JSON.stringify({ passed, failed, outcomes }, null, 2)}\n`,
);

console.log('');
for (const { name, note, ...count } of outcomes) {
  console.log(`${name.padEnd(12)}${count.passed} passed, ${count.failed} failed`);
  if (note) console.log(`            ${note}`);
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
