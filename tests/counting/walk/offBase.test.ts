import { describe, expect, test } from 'vitest';
import { offBase, offBaseNow, reminders, replay, type SetUp, usualWalk } from '#counting';
import type { CamCard } from '#valvetrain';
import { given, ready, when } from '../given';
import { eightCylinders, engineOf, exhaust } from '../samples';
import {
  call,
  changeSetUp,
  crankThere,
  goTo,
  land,
  next,
  pushrodsLoose,
  seat,
  wrongCylinder,
  zero,
} from '../steps';

const counted = [zero, call(1), call(2), call(3), call(4), seat, land('nothing')] as const;
const one = given(ready(), counted);

/** Open for 400° about a centreline of 110°: shut for 320°, so 50° clear at its firing TDC. */
const long: CamCard = {
  form: 'durations',
  lobes: {
    intakeDurationDeg: 400,
    exhaustDurationDeg: 400,
    lobeSeparationDeg: 110,
    intakeCentrelineDeg: 110,
  },
  statedAt: 'seat',
};

describe('a reading knows where it was taken', () => {
  test('at its firing TDC it is well placed, by the cautious cam and by a long one', () => {
    expect(offBaseNow(one.state)).toEqual([]);
    const on = given(ready({ ...eightCylinders, cam: long }), counted);
    expect(offBaseNow(on.state)).toEqual([]);
  });

  test('moved to a valve that was not shut there, it is flagged, and told with the move', () => {
    const job = when(one, wrongCylinder(6));
    // Six is at overlap where one fires. Its exhaust, 320° about 110° before that TDC, shuts 50° after it.
    expect(job.told[0]?.fact).toMatchObject({ kind: 'moved', offBaseDeg: -50 });
    expect(offBaseNow(job.state)).toEqual([{ valve: exhaust(6), marginDeg: -50, wantedDeg: 15 }]);
    expect(reminders(job.state)).toContainEqual({ kind: 'off base circle', valves: [exhaust(6)] });
    expect(offBaseNow(replay(job.events))).toEqual(offBaseNow(job.state));
  });

  test('moved to a valve that was shut there too, it is not', () => {
    // Three exhaust is on the published list for number one's firing TDC.
    const job = when(one, wrongCylinder(3));
    expect(job.told[0]?.fact).not.toHaveProperty('offBaseDeg');
    expect(offBaseNow(job.state)).toEqual([]);
  });

  test('counted again where the walk has it, it is well again', () => {
    const job = given(one, [
      wrongCylinder(6),
      next,
      pushrodsLoose,
      goTo(6, 'exhaust'),
      crankThere,
      ...counted,
    ]);
    expect(offBaseNow(job.state)).toEqual([]);
  });

  test('a cam card put right flags what was counted too near a ramp, once', () => {
    const margin = { ...usualWalk, marginDeg: 55 };
    const change = changeSetUp('the cam card', { cam: long, walk: margin });
    const job = when(one, change);
    expect(job.told[0]?.fact).toMatchObject({ kind: 'set-up changed', offBase: [exhaust(1)] });
    expect(offBaseNow(job.state)).toMatchObject([{ marginDeg: 50, wantedDeg: 55 }]);
    expect(when(given(one, [change]), change).told[0]?.fact).not.toHaveProperty('offBase');
    const fromHere = when(
      one,
      changeSetUp('the cam card', { cam: long, walk: margin }, 'from here'),
    );
    expect(offBaseNow(fromHere.state)).toEqual([]);
  });

  test('where nothing tells where the crank stood, nothing is flagged', () => {
    const other = engineOf(1, 5, 3, 6, 2, 4, 8, 7);
    const moved = given(one, [next, pushrodsLoose, goTo(5, 'exhaust'), crankThere, ...counted]);
    const job = given(moved, [changeSetUp('the order', { engine: other })]);
    const reading = job.state.readings.at(-1);
    expect(reading && offBase(job.state, reading)).toBeNull();
  });
});

describe('the crank stays where it is when the walk changes', () => {
  const fewest: Partial<SetUp> = { walk: { ...usualWalk, method: 'fewest stops' } };

  test('at a place the new walk has too, with the valves that walk counts there', () => {
    const job = given(one, [changeSetUp('fewest stops', fewest), next]);
    expect(job.state.crank.at).toMatchObject({ angleDeg: 0, cylinder: 1 });
    expect(job.state.open?.valve).toEqual({ cylinder: 1, valve: 'intake' });
  });

  test('and at one it has not, from where the turn is still known', () => {
    const at8 = given(one, [next, next, pushrodsLoose, crankThere]);
    const job = given(at8, [changeSetUp('fewest stops', fewest)]);
    expect(job.state.crank.at).toMatchObject({ angleDeg: 90, valves: [] });
  });
});
