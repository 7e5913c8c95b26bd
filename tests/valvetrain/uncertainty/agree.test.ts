import { describe, expect, test } from 'vitest';
import { agree, dialPreload } from '#valvetrain';
import { THOU } from '../samples';
import { counted, travel } from './readings';

describe('two readings of one valve', () => {
  test('need not be equal, only within 1.96 u of their difference', () => {
    const near = agree(counted(4.5), counted(4.75));
    expect(near).toMatchObject({ agrees: true });
    expect(near.differenceMm).toBeCloseTo(5 * THOU, 9);
    expect(agree(counted(4), counted(5)).agrees).toBe(false);
  });

  test('the travel’s share is common: only what is left of it counts', () => {
    const own = counted(4.5).ownMm;
    const same = agree(counted(4.5), counted(4.5));
    expect(same.allowedMm).toBeCloseTo(1.96 * own * Math.SQRT2, 12);
    const apart = agree(counted(2), counted(5));
    expect(apart.allowedMm).toBeCloseTo(1.96 * Math.hypot(own, own, 3 * travel.uMm), 12);
  });

  test('a dial reading contradicts a count only beyond what the travel may be off too', () => {
    const p = counted(4.5);
    const dial = dialPreload(p.preloadMm + 6 * THOU);
    const alone = 1.96 * Math.hypot(p.ownMm, dial.ownMm);
    expect(agree(p, dial).allowedMm).toBeGreaterThan(alone);
    expect(agree(p, dial).agrees).toBe(true);
    expect(agree(p, dialPreload(p.preloadMm + 40 * THOU)).agrees).toBe(false);
  });

  test('on a longer test pushrod more preload is no disagreement', () => {
    expect(agree(counted(3), counted(5.5)).agrees).toBe(false);
    expect(agree(counted(3), counted(5.5), 50 * THOU).agrees).toBe(true);
  });
});
