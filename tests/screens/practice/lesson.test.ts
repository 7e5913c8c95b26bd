import { expect, test } from 'vitest';
import type { CommandBody, JobState } from '#counting';
import { turn48 } from '#valvetrain';
import { bolts, judged } from '../../../src/screens/practice/bolts';
import { lessonStep } from '../../../src/screens/practice/lesson';
import { afterAll, openedJob } from '../../fakes/countedJob';
import { v8SetUp } from '../../fakes/setUps';

/** A run without an engine, at its first bolt, after commands. */
function run(...commands: readonly CommandBody[]): JobState {
  const job = openedJob(v8SetUp({ engine: null, scope: [] }));
  return afterAll(job, { type: 'cautionsHeard' }, { type: 'chooseValve' }, ...commands).state;
}

const call = (count48: number): CommandBody => ({
  type: 'call',
  to48: turn48(count48),
  form: 'turns',
});
const seat: CommandBody = { type: 'seat', loose: false };
const on: CommandBody = { type: 'next', cylinder: false };
const zero: CommandBody = { type: 'zero' };
const first: readonly CommandBody[] = [zero, call(36), seat];

test('each step follows from the job alone', () => {
  expect(lessonStep(run(), true)).toBe('wake');
  expect(lessonStep(run(), false)).toBe('zero');
  expect(lessonStep(run(zero), false)).toBe('turn');
  expect(lessonStep(run(zero, call(24)), false)).toBe('turn');
  expect(lessonStep(run(zero, call(36)), false)).toBe('seat');
  expect(lessonStep(run(zero, call(42)), false)).toBe('seat');
  expect(lessonStep(run(zero, call(48)), false)).toBe('too far');
  expect(lessonStep(run(zero, call(48), { type: 'takeBack' }), false)).toBe('turn');
  expect(lessonStep(run(...first), false)).toBe('how far');
  expect(lessonStep(run(...first, { type: 'land', word: 'half' }), false)).toBe('accept');
  expect(lessonStep(run(...first, { type: 'land', word: 'nothing' }), false)).toBe('mend');
  expect(lessonStep(run({ type: 'hold' }), false)).toBe('carry on');
  expect(lessonStep(run({ type: 'loosening' }), false)).toBe('elsewhere');
  const second = run(...first, { type: 'land', word: 'half' }, on, zero);
  expect(lessonStep(second, false)).toBe('number');
});

test('taps at ‘how far?’ stay open until they are right', () => {
  const tap: CommandBody = { type: 'step', size: 'step' };
  const wrong = run(zero, call(24), seat, tap);
  expect(lessonStep(wrong, false)).toBe('how far');
  expect(lessonStep(run(...first, tap), false)).toBe('accept');
  expect(lessonStep(run(...first, tap, tap), false)).toBe('accept');
});

test('a reading is right within a quarter of a quarter, and one seated loose never', () => {
  const read = (count48: number) =>
    judged(run(zero, call(count48), seat)).map(({ right }) => right);
  // Tight at 42 forty-eighths; counts off the marks are read as they stand.
  expect(bolts[0]?.seat48).toBe(42);
  expect([38, 39, 45, 46].map(read)).toEqual([[false], [true], [true], [false]]);
  expect(judged(run({ type: 'seat', loose: true }))).toMatchObject([
    { read48: null, right: false },
  ]);
});
