import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lint, plant } from './planted';

const pure = ['valvetrain', 'counting', 'words'];

/** Who imports whom, written out a second time so that the lint configuration has something to be held to. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  valvetrain: [],
  counting: ['valvetrain'],
  words: ['counting', 'valvetrain'],
  hearing: ['counting', 'words'],
  pressing: ['counting'],
  speaking: ['counting', 'words'],
  keeping: ['counting'],
  bench: pure,
  shelf: pure,
  settings: pure,
  platform: [],
  screens: ['bench', 'shelf', 'settings', ...pure],
  // The composition root's own seams: what main.tsx would otherwise hold.
  joining: [
    ...pure,
    'hearing',
    'pressing',
    'speaking',
    'keeping',
    'bench',
    'shelf',
    'settings',
    'platform',
    'screens',
  ],
};
const rooms = Object.keys(mayImport);

/** One import a line; the name says where it leads. */
const importing = (specifiers: readonly string[]): string =>
  specifiers.map((from, index) => `export { name${index} } from '${from}';\n`).join('');

test('every room has a door in package.json, and every folder of src is a room', () => {
  const { imports } = JSON.parse(readFileSync('package.json', 'utf8'));
  for (const room of rooms) expect(imports[`#${room}`]).toBe(`./src/${room}/index.ts`);
  const folders = readdirSync('src', { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  expect(rooms).toEqual(expect.arrayContaining(folders.map((folder) => folder.name)));
});

test('each room may enter the rooms it is allowed, and no other', () => {
  const files = rooms.map((room) => [
    `src/${room}/planted.ts`,
    importing(rooms.map((other) => `#${other}`)),
  ]);
  const { status, findings } = lint(plant(Object.fromEntries(files)));
  const refused = findings
    .filter((finding) => finding.category === 'lint/style/noRestrictedImports')
    .map((finding) => `${finding.path}:${finding.line}`);
  const expected = rooms.flatMap((room) =>
    rooms.flatMap((other, index) =>
      mayImport[room]?.includes(other) ? [] : [`src/${room}/planted.ts:${index + 1}`],
    ),
  );
  expect(refused.sort()).toEqual(expected.sort());
  expect(expected.length).toBeGreaterThan(100);
  expect(status).not.toBe(0);
});

test('a path into another room is refused at every depth, a path within the room is not', () => {
  const { status, findings } = lint(
    plant({
      'src/outside.ts': importing(['./counting/decide', './counting', './clock']),
      'src/screens/one.ts': importing(['../counting/decide', './set-up/two']),
      'src/screens/set-up/two.ts': importing(['../../bench/store', '../bench/Dial']),
      'src/screens/set-up/rows/three.ts': importing(['../../../bench/store', '../../bench/Dial']),
    }),
  );
  const refused = findings
    .filter((finding) => finding.message.startsWith('Another room is imported by its door'))
    .map((finding) => `${finding.path}:${finding.line}`);
  expect(refused.sort()).toEqual([
    'src/outside.ts:1',
    'src/outside.ts:2',
    'src/outside.ts:3',
    'src/screens/one.ts:1',
    'src/screens/set-up/rows/three.ts:1',
    'src/screens/set-up/two.ts:1',
  ]);
  expect(status).not.toBe(0);
});

test('the ways round a plain import are refused too', () => {
  const { findings } = lint(
    plant({
      'src/bench/planted.ts': [
        "export const late = () => import('../keeping/index');",
        "export type Kept = import('#keeping').Kept;",
        "export const early = () => import('#keeping');",
        "export { readFileSync } from 'node:fs';",
      ].join('\n'),
    }),
  );
  expect(new Set(findings.map((finding) => finding.line))).toEqual(new Set([1, 2, 3, 4]));
});

describe('packages stay in their rooms', () => {
  const linesRefused = (path: string, specifiers: readonly string[]): number[] => {
    const { findings } = lint(plant({ [path]: importing(specifiers) }));
    const lines = findings
      .filter((finding) => /noRestrictedImports|plugin/.test(finding.category))
      .map((finding) => finding.line);
    return [...new Set(lines)].sort();
  };
  const packages = ['react', 'react-dom/client', 'dexie', 'zustand', 'zustand/vanilla'];

  test.each([
    ['src/screens/planted.tsx', [3]],
    ['src/keeping/planted.ts', [1, 2, 4, 5]],
    ['src/bench/planted.ts', [1, 2, 3, 4]],
    ['src/shelf/planted.ts', [1, 2, 3, 4]],
    ['src/settings/planted.ts', [1, 2, 3, 4]],
    ['src/speaking/planted.ts', [1, 2, 3, 4, 5]],
    ['src/counting/planted.ts', [1, 2, 3, 4, 5]],
  ])('%s', (path, expected) => {
    expect(linesRefused(path, packages)).toEqual(expected);
  });

  test('a pure room imports no package at all', () => {
    expect(linesRefused('src/words/planted.ts', ['fast-check', './en/said', '#counting'])).toEqual([
      1,
    ]);
  });
});

test('a cycle of imports is refused', () => {
  const { status, findings } = lint(
    plant({
      'src/counting/one.ts': "import { two } from './two';\nexport const one = () => two;\n",
      'src/counting/two.ts': "import { one } from './one';\nexport const two = () => one;\n",
    }),
  );
  expect(findings.map((finding) => finding.category)).toContain('lint/suspicious/noImportCycles');
  expect(status).not.toBe(0);
});
