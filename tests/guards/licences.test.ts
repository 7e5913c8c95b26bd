import { describe, expect, test } from 'vitest';
import { licenceAllowed } from '../../scripts/licence-rules.mjs';
import { plant, runIn } from './planted';

interface Locked {
  readonly license?: string;
  readonly dev?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const check = (root: object, packages: Readonly<Record<string, Locked>>) => {
  const locked = Object.entries(packages).map(([name, one]) => [
    `node_modules/${name}`,
    { version: '1.0.0', ...one },
  ]);
  const lock = { lockfileVersion: 3, packages: { '': root, ...Object.fromEntries(locked) } };
  const folder = plant({ 'package-lock.json': JSON.stringify(lock) });
  return runIn(folder, 'scripts/licences.mjs', folder);
};
const ships = { dependencies: { planted: '1.0.0' } };
const builds = { devDependencies: { planted: '1.0.0' } };

describe('the licence check', () => {
  test('passes what may be shipped', () => {
    expect(check(ships, { planted: { license: 'ISC' } })).toMatchObject({ status: 0 });
  });

  test.each([
    'GPL-3.0-only',
    'AGPL-3.0-or-later',
    'BSD-4-Clause',
    'MIT AND GPL-2.0-only',
    'SEE LICENSE',
  ])('refuses %s, shipped or not', (license) => {
    for (const root of [ships, builds]) {
      const { status, output } = check(root, { planted: { license } });
      expect(status).not.toBe(0);
      expect(output).toContain(`not allowed: planted 1.0.0`);
      expect(output).toContain(license);
    }
  });

  test('refuses a package that names no licence', () => {
    const { status, output } = check(ships, { planted: {} });
    expect(status).not.toBe(0);
    expect(output).toContain('licence unknown');
  });

  test('lets MPL-2.0 build but not ship, however deep it stands', () => {
    expect(check(builds, { planted: { license: 'MPL-2.0' } })).toMatchObject({ status: 0 });
    const { status, output } = check(ships, {
      planted: { license: 'MIT', dependencies: { below: '1.0.0' } },
      below: { license: 'MPL-2.0' },
    });
    expect(status).not.toBe(0);
    expect(output).toContain('below 1.0.0 (shipped): licence MPL-2.0');
  });
});

test('of a choice one must be allowed, of a sum all', () => {
  expect(licenceAllowed('(GPL-2.0-only OR MIT)', 'shipped')).toBe(true);
  expect(licenceAllowed('MIT AND OFL-1.1', 'shipped')).toBe(true);
  expect(licenceAllowed('MIT AND GPL-2.0-only', 'shipped')).toBe(false);
  expect(licenceAllowed('MIT OR (ISC AND GPL-2.0-only)', 'build')).toBe(true);
  expect(licenceAllowed('ISC AND (GPL-2.0-only)', 'build')).toBe(false);
  expect(licenceAllowed('', 'build')).toBe(false);
});
