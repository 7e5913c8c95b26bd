import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { appCommit, appVersion } from '#platform';

test('the version is the one in package.json', () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(appVersion).toBe(version);
});

test('the commit is the checked-out one, or unknown without git', () => {
  let expected = 'unknown';
  try {
    expected = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim();
  } catch {
    expected = 'unknown';
  }
  expect(appCommit).toBe(expected);
});
