import { describe, expect, test } from 'vitest';
import {
  cylinderSummaries,
  engineSummary,
  LENGTH_GRID_MM,
  pushrodAnswer,
  readingsOf,
  reminders,
  valveLine,
} from '#counting';
import { given, ready } from './given';
import { countNow, eightCylinders, exhaust, intake, THOU } from './samples';
import {
  call,
  changeSetUp,
  land,
  next,
  nextCylinder,
  overlap,
  press,
  repeat,
  seat,
  skip,
  torqued,
  wait,
  zero,
} from './steps';

const read = (quarters: number) => [zero, call(2), call(quarters), seat, land('nothing')];
const two = { ...eightCylinders, scope: [exhaust(1), intake(1)] };
const bothRead = given(ready(two), [...read(4), next, ...read(3), next]);

describe('summaries', () => {
  test('a line has its newest reading, the mean of all and how many times it was read', () => {
    const job = given(ready(two), [...read(4), repeat, ...read(3)]);
    const line = valveLine(job.state, exhaust(1));
    expect(line).toMatchObject({ readings: 2, skipped: false, earlier: null });
    expect(line.reading).toMatchObject({ count48: 36 });
    expect((line.figures?.preloadMm ?? 0) / THOU).toBeCloseTo(3.5 * 19.54, 1);
    expect(line.figures?.verdict).toBe('light');
    expect(readingsOf(job.state, exhaust(1))).toHaveLength(2);
  });

  test('after a set-up applied to all, the figures it was taken on stand beside the new', () => {
    const adjuster = { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.5, leanDeg: 0 } as const;
    const line = valveLine(
      given(bothRead, [changeSetUp('ratio', { adjuster }, 'all', two)]).state,
      exhaust(1),
    );
    expect((line.figures?.preloadMm ?? 0) / THOU).toBeCloseTo(82.0, 1);
    expect((line.earlier?.preloadMm ?? 0) / THOU).toBeCloseTo(78.2, 1);
  });

  test('cylinders come in firing order, done when both valves are read', () => {
    const job = given(ready(), [...read(4), next, ...read(4)]);
    const cylinders = cylinderSummaries(job.state);
    expect(cylinders.map(({ cylinder }) => cylinder)).toEqual([1, 8, 4, 3, 6, 5, 7, 2]);
    expect(cylinders.filter(({ done }) => done).map(({ cylinder }) => cylinder)).toEqual([1]);
  });

  test('the engine counts what is read, what is left and every verdict', () => {
    expect(engineSummary(bothRead.state)).toEqual({
      wanted: 2,
      read: 2,
      left: [],
      unproven: [exhaust(1)],
      unnamed: 0,
      verdicts: [
        { verdict: 'fits, light side', valves: [exhaust(1)] },
        { verdict: 'light', valves: [intake(1)] },
      ],
    });
  });

  test('one length for all is worked out from the readings and their test pushrod', () => {
    // 78.2 and 58.6 thou on 8.000 in; 8.025 puts them at 103.2 and 83.6, both usable.
    const one = pushrodAnswer(bothRead.state)?.taken;
    expect(one).toMatchObject({ scheme: 'one for all', of: 2 });
    expect((one?.lengths[0]?.lengthMm ?? 0) / 25.4).toBeCloseTo(8.025, 6);
    expect(LENGTH_GRID_MM).toBeCloseTo(25 * THOU, 9);
  });

  test('no length where rockers are adjusted, or nothing was fitted', () => {
    const turned = { ...two, rockers: 'adjustable' } as const;
    expect(pushrodAnswer(given(ready(turned), read(4)).state)).toBeNull();
    expect(pushrodAnswer(given(ready({ ...two, testPushrod: null }), read(4)).state)).toBeNull();
  });
});

describe('reminders', () => {
  const kinds = (job: ReturnType<typeof ready>, at?: number) =>
    reminders(job.state, at).map(({ kind }) => kind);

  test('nothing to be reminded of at the start', () => {
    expect(kinds(ready(two))).toEqual([]);
  });

  test('an open question, a doubt and pressed-in lifters, most pressing first', () => {
    const job = given(ready(two), [zero, press, overlap, call(9)]);
    expect(kinds(job)).toEqual(['question open', 'count doubtful', 'lifters pressed in']);
    expect(kinds(job, given(job, [wait(11)]).at)).not.toContain('question open');
  });

  test('skipped valves until they are read', () => {
    expect(reminders(given(ready(two), [skip]).state)).toEqual([
      { kind: 'skipped valves', valves: [exhaust(1)] },
    ]);
  });

  test('valves still to be torqued once all are read: the standing reading only', () => {
    expect(reminders(bothRead.state)).toContainEqual({ kind: 'not torqued', count: 2 });
    const job = given(ready(two), [
      ...read(4),
      torqued,
      next,
      ...read(4),
      repeat,
      ...read(4),
      torqued,
      next,
    ]);
    expect(kinds(job)).toEqual(['lifters pressed in']);
    expect(kinds(given(ready(), [...read(4), nextCylinder]))).not.toContain('not torqued');
  });

  test('readings without a name', () => {
    const job = given(ready(countNow), read(4));
    expect(reminders(job.state)).toContainEqual({ kind: 'unnamed readings', count: 1 });
  });
});
