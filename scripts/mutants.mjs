// npm run mutants [-- --share 10 --seed 7] [-- --only src/valvetrain/crank]: how many planted faults
// in valvetrain and counting the tests find. Stryker is fetched into .mutants/ when this is first
// asked for, since its tree holds licences that the project's own packages may not have.
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { sampledLines } from './mutants/sampledLines.mjs';
import { root } from './root.mjs';

const STRYKER = '9.6.1';
const WANTED = 85;
const rooms = ['src/valvetrain', 'src/counting'];

const { values } = parseArgs({
  options: {
    share: { type: 'string', default: '100' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', multiple: true, default: rooms },
    concurrency: { type: 'string', default: '2' },
  },
});
const share = Number(values.share);
const seed = Number(values.seed);
if (!(share > 0 && share <= 100) || !Number.isInteger(seed)) {
  console.error('--share is a percentage of the lines, over 0 to 100; --seed a whole number.');
  process.exit(2);
}

const own = join(root, '.mutants');
fetchStryker();
const files = values.only.flatMap((folder) => sources(join(root, folder)));
const mutate = share === 100 ? files : files.flatMap((file) => sampled(file));
if (mutate.length === 0) {
  console.error(`No source to plant faults in under ${values.only.join(', ')}.`);
  process.exit(2);
}
console.log(
  share === 100
    ? `Every line of ${files.length} files.`
    : `Seed ${seed}: ${share} % of the lines of ${files.length} files, in ${mutate.length} places.`,
);
writeFileSync(join(own, 'stryker.json'), JSON.stringify(configuration(), null, 2));
const { status } = spawnSync(
  process.execPath,
  [
    join(own, 'node_modules/@stryker-mutator/core/bin/stryker.js'),
    'run',
    join(own, 'stryker.json'),
  ],
  { cwd: root, stdio: 'inherit' },
);
process.exitCode = status ?? 1;

function fetchStryker() {
  const packages = join(own, 'node_modules');
  if (existsSync(join(packages, '@stryker-mutator/core'))) return;
  console.log(`Fetching Stryker ${STRYKER} into .mutants/ …`);
  mkdirSync(own, { recursive: true });
  writeFileSync(join(own, 'package.json'), '{ "private": true }\n');
  const names = ['core', 'vitest-runner'].map((name) => `@stryker-mutator/${name}@${STRYKER}`);
  // Without its own Vitest: two of them in one process would not know each other's tests.
  const options = ['--no-audit', '--no-fund', '--legacy-peer-deps'];
  const { status: installed } = spawnSync(
    'npm',
    ['install', '--prefix', own, ...options, ...names],
    {
      stdio: 'inherit',
      shell: process.platform === 'win32',
    },
  );
  if (installed !== 0) {
    console.error('Stryker could not be fetched: npm run mutants needs the npm registry once.');
    process.exit(1);
  }
  symlinkSync(join(root, 'node_modules/vitest'), join(packages, 'vitest'), 'junction');
}

/**
 * The TypeScript files under a folder, doors left out: they hold no code.
 * @param {string} folder
 * @returns {string[]} from the root, with forward slashes
 */
function sources(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('index.ts'))
    .map((name) => relative(root, join(folder, name)).replaceAll('\\', '/'))
    .sort();
}

/** @param {string} file */
function sampled(file) {
  const lines = readFileSync(join(root, file), 'utf8').split('\n').length;
  return sampledLines(file, lines, share, seed).map((line) => `${file}:${line}-${line}`);
}

function configuration() {
  return {
    mutate,
    plugins: [join(own, 'node_modules/@stryker-mutator/vitest-runner/dist/src/index.js')],
    testRunner: 'vitest',
    // It would rewrite it with a compiler it does not bring; nothing here needs compiling first.
    tsconfigFile: '.mutants/none.json',
    vitest: { configFile: 'scripts/mutants/vitest.config.mjs', related: true },
    coverageAnalysis: 'perTest',
    // A constant evaluated once at loading needs every test run again for each of its mutants.
    ignoreStatic: true,
    concurrency: Number(values.concurrency),
    reporters: ['clear-text', 'json'],
    clearTextReporter: { reportTests: false, allowColor: false, logTests: false },
    jsonReporter: { fileName: '.reports/mutants.json' },
    tempDirName: '.mutants/sandboxes',
    ignorePatterns: ['dist', '.mutants', '.reports', 'docs/pictures'],
    thresholds: { high: WANTED, low: WANTED, break: WANTED },
    timeoutMS: 20_000,
  };
}
