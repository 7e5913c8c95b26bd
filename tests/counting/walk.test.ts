import { describe, expect, test } from 'vitest';
import { nextStop, positionFor, samePosition, turnBetween, valvesLeft, walkOf } from '#counting';
import { given, opened, ready } from './given';
import { countNow, eightCylinders, engineOf, exhaust, intake } from './samples';
import { crankThere, goTo } from './steps';

const four = { ...eightCylinders, engine: engineOf(1, 3, 4, 2) };

describe('the walk', () => {
  test('goes in firing order, exhaust first, 720/n degrees apart', () => {
    const walk = walkOf(eightCylinders);
    expect(walk.map(({ cylinder }) => cylinder)).toEqual([1, 8, 4, 3, 6, 5, 7, 2]);
    expect(walk.map(({ angleDeg }) => angleDeg)).toEqual([0, 90, 180, 270, 360, 450, 540, 630]);
    expect(walk[1]?.valves).toEqual([exhaust(8), intake(8)]);
  });

  test('stops only at cylinders with a valve in the job', () => {
    const walk = walkOf({ ...four, scope: [intake(4), intake(3)] });
    expect(walk.map(({ cylinder, valves }) => [cylinder, valves])).toEqual([
      [3, [intake(3)]],
      [4, [intake(4)]],
    ]);
  });

  test('is empty without an engine', () => {
    expect(walkOf(countNow)).toEqual([]);
    expect(nextStop(ready(countNow).state)).toBeNull();
    expect(valvesLeft(ready(countNow).state)).toEqual([]);
  });

  test('the turn to the next stop is in the running direction, never back', () => {
    const at = (cylinder: number) => positionFor(eightCylinders, exhaust(cylinder)) ?? null;
    const to = at(1);
    if (to === null) throw new Error('Cylinder one has no stop.');
    expect(turnBetween(at(2), to)).toBe(90);
    expect(turnBetween(at(8), to)).toBe(630);
    expect(turnBetween(to, to)).toBe(0);
    expect(turnBetween(null, to)).toBeNull();
  });

  test('the first stop has no known turn, and its companion proves it', () => {
    const stop = nextStop(opened(eightCylinders).state);
    expect(stop).toMatchObject({ turnDeg: null, companion: 6, position: { cylinder: 1 } });
  });

  test('a valve asked for comes before the walk, which goes on from there', () => {
    const job = given(ready(eightCylinders), [goTo(6)]);
    expect(nextStop(job.state)).toMatchObject({ turnDeg: 360, position: { cylinder: 6 } });
    const there = given(job, [crankThere]);
    expect(samePosition(there.state.crank.at, nextStop(there.state)?.position ?? null)).toBe(true);
  });
});
