import { expect, test } from 'vitest';
import { turn48 } from '#valvetrain';
import { type EarKind, type EarNotice, type EarWhy, sayEar, sayMissed } from '#words';

const notice = (
  state: EarNotice['state'],
  why: EarWhy,
  count48?: number,
  instead?: EarKind,
): EarNotice => ({
  state,
  why,
  count48: count48 === undefined ? null : turn48(count48),
  ...(instead === undefined ? {} : { instead }),
});

test.each([
  [notice('open', 'asked', 48), 'Ear open.'],
  [notice('shut', 'asked', 48), 'Ear shut.'],
  [notice('shut', 'too loud', 48), 'Too loud, ear shut at four. Use the pedal.'],
  [notice('shut', 'too loud'), 'Too loud, ear shut. Use the pedal.'],
  [
    notice('shut', 'notice'),
    'To be understood, your speech would leave this device. Agree to that on the screen first, or use the pedal.',
  ],
  [
    notice('dead', 'no answer', 54),
    'The speech service does not answer, no ear at four and a half. Use the pedal or the keys.',
  ],
  [notice('open', 'room louder', 48), 'Too noisy for the ear: use the pedal.'],
  [notice('open', 'room quieter'), 'Quieter: the ear hears again.'],
  [
    notice('dead', 'no answer', 48, 'offline'),
    'The speech service does not answer. The ear that needs no network takes over.',
  ],
  [
    notice('dead', 'model damaged', undefined, 'browser'),
    'The ear’s own files are damaged. The browser’s own ear takes over.',
  ],
  [notice('dead', 'denied'), 'The microphone is not allowed, no ear. Use the pedal or the keys.'],
])('%o', (told, line) => {
  expect(sayEar(told)).toBe(line);
});

test('every way an ear can die says what to use instead', () => {
  const whys: readonly EarWhy[] = [
    'not here',
    'denied',
    'no microphone',
    'service refused',
    'network',
    'no answer',
    'no results',
    'keeps ending',
    'language',
    'unknown',
  ];
  const lines = whys.map((why) => sayEar(notice('dead', why)));
  expect(new Set(lines).size).toBe(whys.length);
  for (const line of lines) expect(line).toMatch(/Use the pedal or the keys\.$/);
});

test('what was missed says what to say instead', () => {
  expect(sayMissed('rocker seated', 'near')).toBe('Not sure: say ‘rocker seated’.');
  expect(sayMissed('rocker seated', 'tie')).toBe('Not sure: say ‘rocker seated’.');
  expect(sayMissed('four five', 'two')).toBe('One thing at a time: say the last one again.');
  expect(sayMissed('count five', 'carrier')).toBe('Say ‘count five’.');
  expect(sayMissed('wrong cylinder, it’s …', 'unfinished')).toBe(
    'Say all of it: ‘wrong cylinder, it’s …’.',
  );
});
