import { describe, expect, test } from 'vitest';
import {
  opinionOf,
  readVoicePrints,
  type VoicePrints,
} from '../../../src/hearing/offline/voicePrints';
import { wordDistance } from '../../../src/hearing/offline/wordDistance';
import { PRINT_SHAPE, type WordPrint, wordPrint } from '../../../src/hearing/offline/wordPrint';

const RATE = 16_000;

/** A sound that glides from one pitch to another, with a louder or a quieter microphone. */
function glide(fromHz: number, toHz: number, seconds = 0.5, gain = 0.2): WordPrint {
  let phase = 0;
  const samples = Float32Array.from({ length: seconds * RATE }, (_, i) => {
    phase += (2 * Math.PI * (fromHz + ((toHz - fromHz) * i) / (seconds * RATE))) / RATE;
    return gain * (Math.sin(phase) + 0.3 * Math.sin(3 * phase));
  });
  const print = wordPrint(samples);
  if (print === null) throw new Error('no print');
  return print;
}

const up = glide(300, 1500);
const down = glide(1500, 300);
const known: VoicePrints = {
  v: 1,
  db: -30,
  words: [
    { words: 'five', print: up },
    { words: 'nine', print: down },
  ],
};

describe('the print of a word', () => {
  test('is the same word louder, and nearly the same said slower', () => {
    const other = wordDistance(up, down);
    expect(wordDistance(up, glide(300, 1500, 0.5, 0.02))).toBeLessThan(other / 10);
    expect(wordDistance(up, glide(300, 1500, 0.8))).toBeLessThan(other / 2);
    expect(wordDistance(up, up)).toBe(0);
    expect(wordDistance(up, down)).toBeCloseTo(wordDistance(down, up), 6);
  });

  test('leaves the silence around a word out', () => {
    const silent = new Float32Array(RATE);
    silent.set(
      Float32Array.from({ length: RATE / 2 }, (_, i) => 0.2 * Math.sin(i / 3)),
      RATE / 4,
    );
    const frames = (wordPrint(silent)?.shape.length ?? 0) / PRINT_SHAPE;
    expect(frames).toBeGreaterThan(45);
    expect(frames).toBeLessThan(56);
  });

  test('of next to nothing is none, and of silence has no broken figure', () => {
    expect(wordPrint(new Float32Array(100))).toBeNull();
    const shape = wordPrint(new Float32Array(4000))?.shape ?? [];
    expect(shape.length).toBeGreaterThan(0);
    expect(shape.every(Number.isFinite)).toBe(true);
  });
});

describe('the second opinion', () => {
  test('agrees with the word it sounds like, disagrees with another, has none of a third', () => {
    const heard = glide(310, 1450, 0.45);
    expect(opinionOf(heard, known, 'five')).toBe('agrees');
    expect(opinionOf(heard, known, 'nine')).toBe('disagrees');
    expect(opinionOf(heard, known, 'say again')).toBe('none');
  });

  test('has none where both are as near, or nothing is comparable', () => {
    const both: VoicePrints = {
      ...known,
      words: known.words.map((one) => ({ ...one, print: up })),
    };
    expect(opinionOf(up, both, 'five')).toBe('none');
    expect(opinionOf(glide(300, 1500, 3), known, 'five')).toBe('none');
  });
});

describe('prints as they were kept', () => {
  test('are read back as they were', () => {
    expect(readVoicePrints(JSON.parse(JSON.stringify(known)))).toEqual(known);
  });

  test.each([
    [null],
    [{}],
    [{ v: 2, db: -30, words: known.words }],
    [{ v: 1, db: 'loud', words: known.words }],
    [{ v: 1, db: -30, words: [{ words: 'five', print: { shape: [1, 2, 3] } }] }],
    [{ v: 1, db: -30, words: [{ words: 'five', print: { shape: Array(12).fill('x') } }] }],
  ])('what can’t be prints is none', (kept) => {
    expect(readVoicePrints(kept)).toBeNull();
  });
});
