import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { browserFeatures } from '#platform';
import { browserFeaturesDoc } from '../../src/platform/featuresDoc';

/** A page with only the named services. */
function pageWith(...services: string[]): Window {
  const page: Record<string, unknown> = { isSecureContext: services.includes('secure') };
  const navigator: Record<string, unknown> = {};
  if (services.includes('storage')) page.indexedDB = {};
  if (services.includes('audio')) page.AudioContext = class {};
  if (services.includes('voice')) page.speechSynthesis = {};
  if (services.includes('ear')) page.webkitSpeechRecognition = class {};
  if (services.includes('microphone')) navigator.mediaDevices = {};
  if (services.includes('gamepad')) navigator.getGamepads = () => [];
  if (services.includes('windows')) page.BroadcastChannel = class {};
  if (services.includes('locks')) navigator.locks = {};
  if (services.includes('wake lock')) navigator.wakeLock = {};
  if (services.includes('offline')) navigator.serviceWorker = {};
  if (services.includes('lasting storage')) navigator.storage = { persist: () => undefined };
  return Object.assign(page, { navigator }) as unknown as Window;
}

describe('features of the browser', () => {
  test.each(browserFeatures.map(({ id }) => id))(
    '%s is found where it is, and missed where it is not',
    (id) => {
      const here = browserFeatures
        .filter(({ detect }) => detect(pageWith(id)))
        .map((one) => one.id);
      expect(here).toEqual([id]);
    },
  );

  test('a bare page has none of them', () => {
    expect(browserFeatures.filter(({ detect }) => detect(pageWith()))).toEqual([]);
  });

  test('docs/browser-support.md is what the code detects by', () => {
    const doc = readFileSync(new URL('../../docs/browser-support.md', import.meta.url), 'utf8');
    expect(doc).toBe(browserFeaturesDoc());
  });
});
