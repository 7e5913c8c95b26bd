import { expect, test } from 'vitest';
import { lengthNeededMm, preloadAtLengthMm, pushrodCall, verdictWords } from '#valvetrain';

test('each verdict calls for a length', () => {
  expect(verdictWords.map(pushrodCall)).toEqual([
    'longer',
    'longer',
    'keep',
    'keep',
    'keep',
    'shorter',
    'shorter',
  ]);
});

test('the length needed brings the preload to the target', () => {
  const needed = lengthNeededMm(2.1, 190, 2.5);
  expect(needed).toBeCloseTo(190.4, 9);
  expect(preloadAtLengthMm(2.1, 190, needed)).toBeCloseTo(2.5, 9);
});
