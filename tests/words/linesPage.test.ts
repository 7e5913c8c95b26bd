import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { linesPage } from './linesPage';

test('docs/spoken-lines.md is up to date; npm run docs:lines makes it so', () => {
  expect(readFileSync('docs/spoken-lines.md', 'utf8')).toBe(linesPage());
});
