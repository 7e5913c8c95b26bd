import { describe, expect, test } from 'vitest';
import { planAtAngles, planByCylinder, planByValve } from '#valvetrain';
import { engine } from '../samples';
import { cam, camOf, counted } from './samples';

const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);

describe('a plan that is not safe for this cam', () => {
  test('says which valve, by how many degrees, and of how many wanted', () => {
    const long = camOf({
      intakeDurationDeg: 300,
      exhaustDurationDeg: 350,
      lobeSeparationDeg: 110,
      intakeCentrelineDeg: 106,
    });
    const plan = planAtAngles(v8, long.events, [0, 360], 30);
    expect(plan.leastMarginDeg).toBe(29);
    expect(plan.shortfalls.map(({ sentence }) => sentence)).toEqual([
      'Cylinder 3’s exhaust is only 29° off its ramp where this plan counts it, 1° short of the 30° wanted.',
      'Cylinder 2’s exhaust is only 29° off its ramp where this plan counts it, 1° short of the 30° wanted.',
    ]);
    expect(plan.shortfalls[0]).toMatchObject({
      valve: { cylinder: 3, valve: 'exhaust' },
      shortByDeg: 1,
    });
  });

  test('says so too of a valve that is open there', () => {
    const plan = planAtAngles(v8, cam(260).events, [0], 15, [{ cylinder: 6, valve: 'intake' }]);
    expect(plan.shortfalls[0]?.sentence).toBe(
      'Cylinder 6’s intake is not shut where this plan counts it: it is 20° off its base circle, 35° short of the 15° wanted.',
    );
    expect(plan.stops[0]).toMatchObject({ roomShortDeg: 0, roomPastDeg: 0, leastMarginDeg: -20 });
  });
});

test('one position a cylinder is its firing TDC, in firing order, both valves', () => {
  const plan = planByCylinder(v8, cam(280).events);
  expect(plan.stops.map(({ firing }) => firing)).toEqual(v8.firingOrder);
  expect(plan.stops.map(({ angleDeg }) => angleDeg)).toEqual([0, 90, 180, 270, 360, 450, 540, 630]);
  expect(plan.stops[1]?.valves).toEqual([
    { cylinder: 8, valve: 'exhaust' },
    { cylinder: 8, valve: 'intake' },
  ]);
  expect(plan.leastMarginDeg).toBe(110);
});

describe('exhaust opening, intake closing', () => {
  // Derived: at EO the intake is 360 − EO − IC past its closing and 180 + EO − IO before its opening.
  test('keeps every valve far off its ramps even with the longest cam', () => {
    const plan = planByValve(v8, cam(400).events);
    expect(plan.leastMarginDeg).toBe(100);
    expect(plan.shortfalls).toEqual([]);
    expect(planByValve(v8, cam(320).events).leastMarginDeg).toBe(180);
  });

  test('takes in each valve at its own cylinder’s event, in order of the crank', () => {
    const { stops } = planByValve(v8, cam(280).events);
    expect(stops).toHaveLength(16);
    const angles = stops.map(({ angleDeg }) => angleDeg);
    expect(angles).toEqual(angles.toSorted((a, b) => a - b));
    const first = stops.find((stop) => stop.description === '1’s exhaust just starts to open.');
    expect(first?.angleDeg).toBe(110);
    expect([counted(first, 'exhaust'), counted(first, 'intake')]).toEqual(['', '1']);
    const second = stops.find((stop) => stop.description === '1’s intake is nearly shut.');
    expect(second?.angleDeg).toBe(610);
    expect([counted(second, 'exhaust'), counted(second, 'intake')]).toEqual(['1', '']);
  });
});

test('a plan for no valve has no stop and no margin', () => {
  expect(planByCylinder(v8, cam(280).events, 15, [])).toEqual({
    stops: [],
    wantedDeg: 15,
    leastMarginDeg: null,
    shortfalls: [],
  });
});
