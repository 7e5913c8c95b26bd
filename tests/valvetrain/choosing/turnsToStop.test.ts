import { describe, expect, test } from 'vitest';
import { turn48, turnsToStop } from '#valvetrain';
import { THOU, windowInThou } from '../samples';
import { asked, travel } from '../uncertainty/readings';
import { exactTravel } from './bench';

const at = (target: number) => windowInThou({ preferredMin: target - 5, preferredMax: target + 5 });

describe('turns to stop at', () => {
  test('the stop nearest the target: 90 thou at 20 a quarter is four and a half quarters', () => {
    const stop = turnsToStop(at(90), travel, asked);
    expect(stop).toMatchObject({ count48: 54, zone: 'proven in', verdict: { word: 'fits' } });
    expect(stop.preload.preloadMm).toBeCloseTo(90 * THOU, 9);
  });

  test.each([
    [91, 3, 54],
    [92.6, 3, 57],
    [92.5, 3, 54],
    [92.5, 1, 55],
    [93, 12, 60],
    [89, 12, 48],
  ])('%f thou in steps of %d/48: %d/48', (target, step, count48) => {
    const stop = turnsToStop(at(target), exactTravel, asked, turn48(step));
    expect(stop.count48).toBe(count48);
  });
});
