import { afterEach, expect, test, vi } from 'vitest';
import { ensureChromium, findChromium } from '../../scripts/chromium.mjs';

afterEach(() => {
  vi.unstubAllEnvs();
});

test('CHROMIUM_PATH is taken at its word', () => {
  vi.stubEnv('CHROMIUM_PATH', process.execPath);
  expect(findChromium()).toBe(process.execPath);
});

test('a CHROMIUM_PATH that does not run is refused with the command that installs one', () => {
  vi.stubEnv('CHROMIUM_PATH', '/nowhere/chromium');
  expect(ensureChromium()).toEqual({
    missing: expect.stringMatching(/\/nowhere\/chromium.*apt-get install chromium/),
  });
});
