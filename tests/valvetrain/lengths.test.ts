import { describe, expect, test } from 'vitest';
import {
  ballFlatMm,
  checkingPreload,
  checkingPushrodLengthMm,
  inConvention,
  type PushrodEnds,
  turn48,
} from '#valvetrain';
import { asked } from './uncertainty/readings';

const ends: PushrodEnds = [
  { ballMm: 7.9375, holeMm: 2.54 },
  { ballMm: 9.525, holeMm: 3 },
];

describe('length conventions', () => {
  test('each end by its own ball and hole; there and back is the same', () => {
    const tips = { mm: 200, convention: 'tip to tip' } as const;
    const full = inConvention(tips, 'full ball', ends);
    expect(full.convention).toBe('full ball');
    expect(full.mm).toBeCloseTo(200 + ballFlatMm(ends[0]) + ballFlatMm(ends[1]), 12);
    expect(inConvention(full, 'tip to tip', ends).mm).toBeCloseTo(200, 12);
  });

  test('stated so already it stays as it is', () => {
    const tips = { mm: 200, convention: 'tip to tip' } as const;
    expect(inConvention(tips, 'tip to tip', ends)).toBe(tips);
  });

  test('no hole cuts nothing off', () => {
    expect(ballFlatMm({ ballMm: 8, holeMm: 0 })).toBe(0);
  });

  test.each([
    [8, 8],
    [0, 0],
    [8, -1],
    [Number.NaN, 1],
    [8, Number.NaN],
  ])('a ball of %d with a hole of %d is none', (ballMm, holeMm) => {
    expect(() => ballFlatMm({ ballMm, holeMm })).toThrow(RangeError);
  });
});

describe('checking pushrod', () => {
  const rod = { closedMm: 170, perTurnMm: 1.27 };

  test('counted to 40 turns and no further', () => {
    expect(checkingPushrodLengthMm(rod, turn48(40 * 48))).toBeCloseTo(170 + 40 * 1.27, 9);
    expect(() => checkingPushrodLengthMm(rod, turn48(40 * 48 + 1))).toThrow(RangeError);
  });

  test('is at zero preload, as sure as its counts and nothing in common', () => {
    const p = checkingPreload(rod, [asked]);
    expect(p).toMatchObject({ preloadMm: 0, commonMm: 0 });
    expect(p.ownMm).toBeCloseTo((1.27 / 4) * Math.sqrt(0.25 / 12 + 0.15 ** 2 / 3), 12);
  });

  test.each([
    [0, 1.27],
    [170, 0],
    [Number.NaN, 1.27],
  ])('%d mm with %d mm a turn is none', (closedMm, perTurnMm) => {
    expect(() => checkingPushrodLengthMm({ closedMm, perTurnMm }, turn48(0))).toThrow(RangeError);
  });
});
