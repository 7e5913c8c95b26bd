import { describe, expect, test } from 'vitest';
import {
  allowed,
  engineSummary,
  figuresNow,
  nextStage,
  nextStop,
  pushrodAnswer,
  type SetUp,
  stageOf,
  standingReading,
  valvesLeft,
} from '#counting';
import { valveKey } from '#valvetrain';
import { given, type Job, opened, outcomes, ready, type Step, when } from './given';
import { allValves, countNow, eightCylinders, engineOf, exhaust, intake } from './samples';
import {
  advance,
  call,
  carryOn,
  cautionsHeard,
  changeSetUp,
  crankThere,
  goTo,
  handsClear,
  hold,
  land,
  loosening,
  nameReading,
  next,
  nextCylinder,
  press,
  pushrodsLoose,
  repeat,
  say,
  seat,
  skip,
  takeBack,
  wrongCylinder,
  zero,
} from './steps';

const read = [zero, call(2), call(4), seat, land('nothing')];
const four: SetUp = {
  ...eightCylinders,
  engine: engineOf(1, 3, 4, 2),
  scope: [1, 2, 3, 4].flatMap((cylinder) => [intake(cylinder), exhaust(cylinder)]),
};
const withHelper: SetUp = { ...four, hands: 'with helper' };

const stage = ({ state }: Job) => stageOf(state);
const open = ({ state }: Job) => (state.open?.valve ? valveKey(state.open.valve) : null);

describe('C8, a whole job by one pedal alone', () => {
  test('holding goes through every stage, tapping counts', () => {
    let job = opened(four);
    const stages: string[] = [];
    for (let step = 0; step < 100 && nextStage(job.state) !== null; step += 1) {
      if (stages.at(-1) !== stage(job)) stages.push(stage(job));
      job =
        stage(job) === 'counting' ? when(job, press, press, press, advance) : when(job, advance);
    }
    expect(stage(job)).toBe('all read');
    expect(engineSummary(job.state)).toMatchObject({ wanted: 8, read: 8, left: [], unnamed: 0 });
    expect(new Set(stages)).toEqual(
      new Set(['cautions', 'turning', 'to start', 'counting', 'landing', 'pushrods loose']),
    );
    expect(job.state.readings.map(({ valve }) => valve && valveKey(valve))).toEqual(
      [1, 3, 4, 2].flatMap((cylinder) => [`${cylinder} exhaust`, `${cylinder} intake`]),
    );
  });

  test('with a helper hands clear is a stage of every turn', () => {
    let job = opened(withHelper);
    let asked = 0;
    for (let step = 0; step < 100 && nextStage(job.state) !== null; step += 1) {
      if (stage(job) === 'hands clear') asked += 1;
      job = when(job, advance);
    }
    expect(stage(job)).toBe('all read');
    expect(asked).toBe(4);
  });

  test('while held it carries on, and counting off it leaves the stand, then ends at first play', () => {
    const held = given(ready(four), [hold]);
    expect(nextStage(held.state)).toBe('carryOn');
    const off = when(given(ready(four), [loosening]), advance, press, advance);
    expect(outcomes(off)).toEqual(['seated', 'counted', 'zeroTouched']);
    expect(off.state.readings[0]).toMatchObject({ kind: 'counted', direction: 'off', count48: 12 });
  });

  test('with all read nothing is next', () => {
    const job = given(ready({ ...four, scope: [exhaust(1)] }), [...read, next]);
    expect(outcomes(when(job, advance))).toEqual(['refused: not now']);
  });
});

describe('parts of an engine', () => {
  test('one cylinder, two valves: the walk stops once and the summary says so', () => {
    const job = given(ready({ ...four, scope: [intake(3), exhaust(3)] }), [
      ...read,
      next,
      ...read,
      next,
    ]);
    expect(stage(job)).toBe('all read');
    expect(engineSummary(job.state)).toMatchObject({ wanted: 2, read: 2 });
    expect(job.state.crank.at?.cylinder).toBe(3);
    expect(pushrodAnswer(job.state)?.taken).toMatchObject({ of: 2 });
  });

  test('a valve that is not in the job, or a cylinder the engine has not got, is refused', () => {
    const job = ready({ ...four, scope: [intake(3), exhaust(3)] });
    expect(outcomes(when(job, goTo(4, 'intake')))).toEqual(['refused: not in this job']);
    expect(outcomes(when(job, goTo(9)))).toEqual(['refused: no such cylinder']);
  });

  test("'go to cylinder' takes the valve that is in the job", () => {
    const job = when(ready({ ...four, scope: [intake(3), exhaust(3), intake(4)] }), goTo(4));
    expect(job.state.crank.headingValve).toEqual(intake(4));
  });
});

describe('count now, with nothing set up', () => {
  const begun = ready(countNow);

  test('valves without a name are read one after another', () => {
    const job = given(begun, [...read, next, zero, call(2), seat, land('half'), next]);
    expect(job.state.readings.map(({ valve }) => valve)).toEqual([null, null]);
    expect(engineSummary(job.state)).toMatchObject({ unnamed: 2, wanted: 0 });
    expect(stage(job)).toBe('to start');
  });

  test('a reading is named later and its valve with it', () => {
    const job = given(begun, read);
    const id = job.state.readings[0]?.id ?? 0;
    const named = when(job, nameReading(id, 5, 'intake'));
    expect(named.state.readings[0]).toMatchObject({ valve: intake(5), count48: 48 });
    expect(named.state.open?.valve).toEqual(intake(5));
    expect(
      outcomes(when(named, nameReading(id, 5, 'intake'), nameReading(99, 5, 'intake'))),
    ).toEqual(['valveNamed', 'refused: already that valve', 'refused: unknown reading']);
  });

  test('an engine set up later gives the named reading its figures', () => {
    const job = given(begun, read);
    const id = job.state.readings[0]?.id ?? 0;
    const later = given(job, [
      nameReading(id, 1, 'exhaust'),
      changeSetUp('an engine', {}, 'all', four),
      next,
    ]);
    expect(standingReading(later.state, exhaust(1))).toMatchObject({ id, count48: 48 });
    expect(valvesLeft(later.state)).toHaveLength(7);
    expect(stage(later)).toBe('pushrods loose');
  });

  test('counts are kept though there are no figures, and a repeat is of the unnamed one', () => {
    const job = given(begun, [...read, repeat, zero, press, seat, land('nothing')]);
    expect(job.state.readings.at(-1)).toMatchObject({ repeatOf: job.state.readings[0]?.id });
  });

  test('a cylinder without its valve is asked for', () => {
    expect(outcomes(when(begun, goTo(2)))).toEqual(['refused: say which valve']);
    expect(open(when(begun, goTo(2, 'intake')))).toBe('2 intake');
  });
});

describe('going from valve to valve', () => {
  test('a skipped valve comes back at the end', () => {
    let job = given(ready(four), [skip]);
    expect(open(job)).toBe('1 intake');
    job = given(job, [...read, next, pushrodsLoose]);
    expect(nextStop(job.state)?.position.cylinder).toBe(3);
    for (const _ of [3, 4, 2]) {
      job = given(job, [crankThere, ...read, next, ...read, next, pushrodsLoose]);
    }
    expect(valvesLeft(job.state)).toEqual([exhaust(1)]);
    expect(nextStop(job.state)).toMatchObject({ position: { cylinder: 1 }, turnDeg: 180 });
    job = given(job, [crankThere, ...read, next]);
    expect(stage(job)).toBe('all read');
  });

  test('when only skipped valves are left, skipping goes round among them', () => {
    let job = given(ready({ ...four, scope: [exhaust(1), exhaust(4)] }), [skip]);
    expect(nextStop(job.state)?.position.cylinder).toBe(4);
    job = given(job, [crankThere, skip]);
    expect(nextStop(job.state)?.position.cylinder).toBe(1);
    job = given(job, [crankThere, skip]);
    expect(nextStop(job.state)?.position.cylinder).toBe(4);
  });

  test('the valve to come can be skipped before the crank is there', () => {
    const job = when(
      given(ready(four), [...read, next, ...read, next, pushrodsLoose]),
      skip,
      crankThere,
    );
    expect(outcomes(job)).toEqual(['valveLeft', 'positionReached']);
    expect(open(job)).toBe('3 intake');
  });

  test('a valve skipped in the middle of a count leaves its lifter pressed in', () => {
    const job = given(ready({ ...four, scope: [exhaust(1), exhaust(3)] }), [zero, press, skip]);
    expect(stage(job)).toBe('pushrods loose');
  });

  test("'skip' on a repeat leaves the earlier reading and marks nothing", () => {
    const job = given(ready(four), [...read, repeat, skip]);
    expect(job.state.skipped).toEqual([]);
    expect(open(job)).toBe('1 intake');
  });

  test("'next valve' before zero passes it over, 'next cylinder' sends the crank on", () => {
    expect(given(ready(four), [next]).state.skipped).toEqual([exhaust(1)]);
    const on = when(given(ready(four), [...read]), nextCylinder);
    expect(outcomes(on)).toEqual(['valveChosen']);
    expect(on.state.crank.headingValve).toEqual(exhaust(3));
    expect(stage(on)).toBe('pushrods loose');
  });

  test('a valve at another crank position waits for the pushrods, the hands and the crank', () => {
    let job = given(ready(withHelper), [...read, goTo(4, 'intake')]);
    expect(stage(job)).toBe('pushrods loose');
    expect(outcomes(when(job, crankThere))).toEqual(['refused: not now']);
    job = given(job, [pushrodsLoose]);
    expect(stage(job)).toBe('hands clear');
    job = given(job, [handsClear]);
    expect(stage(job)).toBe('turning');
    job = given(job, [crankThere]);
    expect(open(job)).toBe('4 intake');
    expect(job.state.crank).toMatchObject({ handsClear: false, loaded: false, heading: null });
  });

  test('an answer to hands clear does not outlive another valve chosen, or a pause', () => {
    const clear = given(ready(withHelper), [...read, goTo(4), pushrodsLoose, handsClear]);
    expect(stage(given(clear, [goTo(2)]))).toBe('hands clear');
    expect(stage(given(clear, [hold, carryOn]))).toBe('hands clear');
    expect(stage(given(clear, [takeBack]))).toBe('read');
  });

  test('a repeat after the crank has moved on sends it back', () => {
    const job = when(
      given(ready({ ...four, scope: [exhaust(1), exhaust(3)] }), [...read, next, pushrodsLoose]),
      goTo(3),
      crankThere,
      skip,
      repeat,
    );
    expect(outcomes(job).at(-1)).toBe('valveChosen');
    expect(job.state.crank.headingValve).toEqual(exhaust(1));
    expect(given(job, [crankThere]).state.open).toMatchObject({
      repeatOf: job.state.readings[0]?.id,
    });
  });

  test('loosening between valves takes up the next one, counting off', () => {
    const helped = given(ready(four), [...read, next, takeBack]);
    expect(open(given(helped, [next, loosening]))).toBe('1 intake');
    expect(given(helped, [next, loosening]).state.open?.direction).toBe('off');
  });

  test('with nothing left, choosing the next is refused', () => {
    const job = given(ready({ ...four, scope: [exhaust(1)] }), [...read, next]);
    const choose = say('next', { type: 'chooseValve' });
    expect(outcomes(when(job, choose))).toEqual(['refused: nothing left here']);
  });

  test('the open valve moves by its cylinder, keeping its count', () => {
    const job = given(ready(four), [zero, press, wrongCylinder(3)]);
    expect(job.state.open).toMatchObject({ valve: exhaust(3), count48: 12 });
    expect(outcomes(when(job, wrongCylinder(3)))).toEqual(['refused: already that valve']);
  });
});

describe('what the bench remembers', () => {
  const loaded = (...steps: readonly Step[]) => given(ready(four), steps).state.crank.loaded;
  const off = [loosening, seat, press, zero];

  test('a lifter is pressed in by a count down, not by one off, and no other count frees it', () => {
    expect(loaded(zero)).toBe(false);
    expect(loaded(zero, press, takeBack)).toBe(true);
    expect(loaded(...off)).toBe(false);
    expect(loaded(...read, next, ...off)).toBe(true);
    expect(loaded(...read, pushrodsLoose)).toBe(false);
  });

  test('a reading repeats one of its own round only', () => {
    const round = say('round', { type: 'startRound', purpose: 'final check' });
    const job = given(ready(four), [...read, round, goTo(1, 'exhaust'), ...read]);
    expect(job.state.readings.at(-1)).toMatchObject({ round: 2, repeatOf: null });
  });

  test('a valve skipped twice stands once, after the others', () => {
    const job = given(ready({ ...four, scope: [exhaust(1), exhaust(4)] }), [skip, skip, skip]);
    expect(job.state.skipped).toEqual([exhaust(4), exhaust(1)]);
  });

  test('skipping the valve the crank was sent to forgets where it was sent', () => {
    const job = given(ready(four), [goTo(4), skip]);
    expect(job.state.crank).toMatchObject({ heading: null, headingValve: null });
  });

  test('a valve at this position is taken up at once; a cylinder that is done is left', () => {
    expect(open(given(ready(four), [goTo(1, 'intake')]))).toBe('1 intake');
    const done = given(ready(four), [...read, next, ...read]);
    expect(outcomes(when(done, nextCylinder))).toEqual(['valveLeft']);
  });

  test('before the start there are no figures', () => {
    expect(figuresNow(ready(four).state)).toBeNull();
    expect(figuresNow(given(ready(four), [zero]).state)).toMatchObject({ preloadMm: 0 });
  });
});

describe('a changed set-up', () => {
  test('readings remember the set-up they were first figured on', () => {
    const change = changeSetUp('again', { name: 'again' }, 'all', four);
    const job = given(ready(four), [...read, change, change]);
    expect(job.state.readings[0]).toMatchObject({ takenOn: 1, setUp: job.state.seq });
  });

  test('another engine forgets where the crank stands', () => {
    const job = given(ready(four), [
      changeSetUp('another order', { engine: engineOf(1, 2, 4, 3) }, 'all', four),
    ]);
    expect(job.state.crank.at?.cylinder).toBe(1);
    const other = given(
      given(ready(four), [...read, next, ...read, next, pushrodsLoose, crankThere]),
      [changeSetUp('another order', { engine: engineOf(1, 2, 4, 3) }, 'all', four)],
    );
    expect(other.state.crank.at).toBeNull();
  });

  test('a heading that is no longer in the job is forgotten', () => {
    const job = given(ready(four), [
      goTo(4),
      changeSetUp('part', { scope: [exhaust(1), exhaust(3)] }, 'all', four),
    ]);
    expect(job.state.crank).toMatchObject({ heading: null, headingValve: null });
    expect(job.state.crank.at).toMatchObject({ cylinder: 1, valves: [exhaust(1)] });
  });

  test('a pushrod fitted since stays, unless the set-up names another', () => {
    const fit = say('test rod', {
      type: 'fitPushrod',
      length: { mm: 207, convention: 'tip to tip' },
    });
    const job = given(ready(four), [fit, changeSetUp('a name', { name: 'renamed' }, 'all', four)]);
    expect(job.state.pushrod?.mm).toBe(207);
    const other = { testPushrod: { mm: 210, convention: 'tip to tip' } } as const;
    expect(given(job, [changeSetUp('a rod', other, 'all', four)]).state.pushrod?.mm).toBe(210);
  });

  test('windows may come after the count', () => {
    const bare = { ...four, groups: [] };
    const job = given(ready(bare), [
      ...read,
      changeSetUp('windows', { groups: [allValves] }, 'all', bare),
    ]);
    expect(engineSummary(job.state).verdicts).toEqual([
      { verdict: 'fits, light side', valves: [exhaust(1)] },
    ]);
  });
});

describe('the rest of a job', () => {
  test('held, only what makes sense is allowed, and it resumes where it was', () => {
    const held = given(ready(four), [zero, press, hold]);
    expect(outcomes(when(held, press, seat))).toEqual(['refused: not now', 'refused: not now']);
    expect(given(held, [carryOn]).state.open).toMatchObject({ count48: 12, phase: 'counting' });
  });

  test('discarded, a job takes only its restoring', () => {
    const gone = given(ready(four), [say('discard', { type: 'discard' })]);
    expect(allowed(gone.state)).toEqual(['restore']);
    expect(outcomes(when(gone, press, takeBack))).toEqual(['refused: not now', 'refused: not now']);
    expect(stage(given(gone, [say('restore', { type: 'restore' })]))).toBe('to start');
  });

  test('a round begins with every valve to be read again', () => {
    const job = given(ready(four), [
      ...read,
      say('round', { type: 'startRound', purpose: 'final check' }),
    ]);
    expect(job.state).toMatchObject({ round: { number: 2, purpose: 'final check' }, open: null });
    expect(valvesLeft(job.state)).toHaveLength(8);
    expect(standingReading(job.state, exhaust(1))).toBeUndefined();
    expect(standingReading(job.state, exhaust(1), 1)).toBeDefined();
  });

  test('cautions come first', () => {
    expect(outcomes(when(opened(four), crankThere, cautionsHeard))).toEqual([
      'refused: not now',
      'cautionsHeard',
    ]);
  });
});
