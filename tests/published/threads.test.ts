import { describe, expect, test } from 'vitest';
import { pitchFromThreadsPerInch, threadById } from '#valvetrain';

/** Inches to millimetres, exact by definition. */
const INCH = 25.4;

describe('thread pitches', () => {
  // ISO 261, coarse series, read in secondary tables.
  test.each([
    ['M6x1', 1],
    ['M8x1.25', 1.25],
    ['M10x1.5', 1.5],
    ['M12x1.75', 1.75],
  ])('%s advances %f mm a turn', (id, pitchMm) => {
    expect(threadById(id)?.pitchMm).toBe(pitchMm);
  });

  // ASME B1.1, UNC and UNF, read in secondary tables.
  test.each([
    ['1/4-20', 20, 'UNC'],
    ['1/4-28', 28, 'UNF'],
    ['5/16-18', 18, 'UNC'],
    ['5/16-24', 24, 'UNF'],
    ['3/8-16', 16, 'UNC'],
    ['3/8-24', 24, 'UNF'],
    ['7/16-14', 14, 'UNC'],
    ['7/16-20', 20, 'UNF'],
    ['1/2-13', 13, 'UNC'],
    ['1/2-20', 20, 'UNF'],
  ])('%s has %d threads an inch, %s', (id, tpi, series) => {
    expect(threadById(id)?.name).toBe(`${id} ${series}`);
    expect(threadById(id)?.pitchMm).toBeCloseTo(INCH / tpi, 12);
  });

  // Derived: 20 threads an inch advance 0.050 in a turn.
  test('20 threads an inch are 1.27 mm', () => {
    expect(pitchFromThreadsPerInch(20)).toBeCloseTo(1.27, 12);
  });
});
