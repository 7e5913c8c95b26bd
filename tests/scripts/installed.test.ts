import { describe, expect, test } from 'vitest';
import { sameTree } from '../../scripts/installed.mjs';

const locked = {
  '': {},
  'node_modules/dexie': { version: '4.4.7' },
  'node_modules/for-another-machine': { version: '1.0.0', optional: true },
};

describe('what is installed agrees with the lock file', () => {
  test('when only optional packages are missing', () => {
    expect(sameTree(locked, { 'node_modules/dexie': { version: '4.4.7' } })).toBe(true);
  });

  test('not when a version differs, a package is missing, or one is too many', () => {
    expect(sameTree(locked, { 'node_modules/dexie': { version: '4.4.6' } })).toBe(false);
    expect(sameTree(locked, {})).toBe(false);
    expect(
      sameTree(locked, {
        'node_modules/dexie': { version: '4.4.7' },
        'node_modules/left-over': { version: '1.0.0' },
      }),
    ).toBe(false);
  });
});
