import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

test('every dependency has an exact version and a line in docs/dependencies.md', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
  const rows = readFileSync('docs/dependencies.md', 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .map((line) => line.split('|').map((cell) => cell.trim()));
  const described = rows.flatMap(([, names = '', ...cells]) =>
    cells.slice(0, 4).every((cell) => cell !== '') ? names.split(', ') : [],
  );
  const named = Object.keys({ ...dependencies, ...devDependencies });
  expect(described).toEqual(expect.arrayContaining(named));
  for (const version of Object.values({ ...dependencies, ...devDependencies })) {
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  }
});
