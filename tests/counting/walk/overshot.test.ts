import { describe, expect, test } from 'vitest';
import { type Announcement, nextStop, type SetUp, stageOf, usualWalk } from '#counting';
import { given, type Job, opened, outcomes, ready, when } from '../given';
import { eightCylinders, exhaust, intake } from '../samples';
import {
  call,
  carryOn,
  cautionsHeard,
  crankThere,
  goTo,
  handsClear,
  hold,
  land,
  next,
  pushrodsLoose,
  reload,
  say,
  seat,
  skip,
  takeBack,
  zero,
} from '../steps';

const overshot = say("'overshot'", { type: 'overshot' });
const helped: SetUp = { ...eightCylinders, hands: 'with helper' };
const counted = [zero, call(1), call(2), call(3), call(4), seat, land('nothing'), next] as const;

/** Cylinder one read, the crank on its way to eight. */
function turning(setUp: SetUp): Job {
  const clear = setUp.hands === 'alone' ? [] : [handsClear];
  return given(ready(setUp), [...counted, ...counted, pushrodsLoose, ...clear]);
}

const kinds = (told: readonly Announcement[]) => told.map(({ fact }) => fact.kind);

describe('overshot: round again, never back', () => {
  test('alone: two turns are named at once, and the place is the same', () => {
    const job = when(turning(eightCylinders), overshot);
    expect(outcomes(job)).toEqual(['overshot']);
    expect(job.told).toMatchObject([
      {
        fact: {
          kind: 'turn crank',
          turnDeg: 720,
          again: true,
          companion: 5,
          position: { cylinder: 8 },
        },
        perishable: true,
      },
    ]);
    expect(outcomes(when(given(turning(eightCylinders), [overshot]), crankThere))).toEqual([
      'positionReached',
    ]);
  });

  test('with a helper: hands clear is asked afresh, and only its answer names the turn', () => {
    const asked = when(turning(helped), overshot);
    expect(kinds(asked.told)).toEqual(['hands clear?']);
    expect(asked.told[0]?.fact).toMatchObject({ again: true });
    const named = when(given(turning(helped), [overshot]), handsClear);
    expect(named.told).toMatchObject([{ fact: { kind: 'turn crank', turnDeg: 720, again: true } }]);
    const there = given(turning(helped), [overshot, handsClear, crankThere]);
    expect(there.state.open?.valve).toEqual(exhaust(8));
    expect(nextStop({ ...there.state, open: null })).toMatchObject({ turnDeg: 0, again: false });
  });

  test('overshot twice is two turns again', () => {
    const job = when(given(turning(helped), [overshot, handsClear]), overshot, handsClear);
    expect(job.told.at(-1)?.fact).toMatchObject({ kind: 'turn crank', turnDeg: 720 });
  });

  test('noticed before anything is counted there, it is round again to the same valve', () => {
    const job = given(turning(eightCylinders), [crankThere, next, overshot]);
    expect(stageOf(job.state)).toBe('turning');
    expect(job.state.crank.headingValve).toEqual(intake(8));
    expect(nextStop(job.state)).toMatchObject({ turnDeg: 720, position: { cylinder: 8 } });
  });

  test('while a valve is counted, and before hands are clear, it is refused', () => {
    expect(
      outcomes(when(given(turning(eightCylinders), [crankThere, zero, call(1)]), overshot)),
    ).toEqual(['refused: not now']);
    const asking = given(ready(helped), [...counted, ...counted, pushrodsLoose]);
    expect(outcomes(when(asking, overshot))).toEqual(['refused: not now']);
  });

  test('another place may be gone to instead; the one overshot comes last', () => {
    const job = given(turning(eightCylinders), [overshot, goTo(4)]);
    expect(nextStop(job.state)).toMatchObject({
      turnDeg: 90,
      position: { cylinder: 4 },
      again: false,
    });
    const skipped = given(turning(eightCylinders), [overshot, skip, skip]);
    expect(nextStop(skipped.state)?.position.cylinder).toBe(4);
  });

  test('after a hold or a reload the turn is not named, with a helper nor alone', () => {
    for (const setUp of [eightCylinders, helped]) {
      const held = when(given(turning(setUp), [overshot, hold]), carryOn);
      expect(kinds(held.told)).toEqual(['back at']);
      const again = given(turning(setUp), [overshot, reload]);
      expect(stageOf(again.state)).toBe(setUp.hands === 'alone' ? 'turning' : 'hands clear');
    }
  });

  test('it can be taken back, and the reply says to check the crank', () => {
    const job = when(given(turning(helped), [overshot]), takeBack);
    expect(job.told[0]?.fact).toMatchObject({
      kind: 'taken back',
      undone: 'overshot',
      checkCrank: true,
    });
    expect(stageOf(job.state)).toBe('hands clear');
    expect(nextStop(job.state)).toMatchObject({ turnDeg: 90, again: false });
  });

  test('the first position of a job can be overshot too', () => {
    const job = when(given(opened(eightCylinders), [cautionsHeard]), overshot);
    expect(job.told[0]?.fact).toMatchObject({ kind: 'turn crank', turnDeg: 720, companion: 6 });
  });

  test('a position of many valves: all of them wait for the way round', () => {
    const two = { ...eightCylinders, walk: { ...usualWalk, method: 'fewest stops' as const } };
    const job = given(ready(two), [overshot, crankThere]);
    expect(job.state.open?.valve).toEqual(exhaust(1));
    expect(job.state.crank.overshot).toBe(false);
  });
});
