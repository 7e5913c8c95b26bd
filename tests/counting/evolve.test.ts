import { describe, expect, test } from 'vitest';
import { initial, type JobState, replay, replayLog } from '#counting';
import { turn48 } from '#valvetrain';
import { given, type Job, opened, ready, withEvents } from './given';
import { exhaust } from './samples';
import { call, land, press, seat, zero } from './steps';

const quarter = { type: 'counted', to48: turn48(12), how: 'press' } as const;
const nothingBut = ({ state }: Job): JobState => ({ ...state, seq: 0, past: null });

/** What is left of a state once its seq and way back are put aside. */
function unchangedBy(
  job: Job,
  ...events: Parameters<typeof withEvents> extends [Job, ...infer E] ? E : never
) {
  const after = withEvents(job, ...events);
  expect(nothingBut(after)).toEqual(nothingBut(job));
  expect(after.state.seq).toBe(job.state.seq + events.length);
}

describe('an event that does not fit changes nothing but seq', () => {
  test('C6: a count before zero, and after the seat', () => {
    unchangedBy(ready(), quarter);
    unchangedBy(given(ready(), [zero, press, seat]), quarter);
    unchangedBy(given(ready(), [zero, press, seat, land('half')]), quarter);
  });

  test('C6: a seat before zero, a landing before the seat, a restart before the count', () => {
    unchangedBy(ready(), { type: 'seated', loose: false });
    unchangedBy(given(ready(), [zero]), {
      type: 'landed',
      answer: { told: 'half', past48: turn48(6) },
    });
    unchangedBy(ready(), { type: 'restarted', atZero: true });
  });

  test('C6: zero in the middle of a count, a seat after the seat', () => {
    unchangedBy(given(ready(), [zero, press]), { type: 'zeroTouched' });
    unchangedBy(given(ready(), [zero, press, seat]), { type: 'seated', loose: false });
  });

  test('a reading or an event that is not there', () => {
    const job = given(ready(), [zero, press]);
    unchangedBy(job, { type: 'torqued', reading: 99 });
    unchangedBy(job, { type: 'readingMoved', reading: 99, to: exhaust(2) });
    unchangedBy(job, { type: 'takenBack', undoes: 99 });
  });

  test('anything before the job is opened, and after it is discarded', () => {
    const log = given(ready(), [zero, press]).events;
    expect(replay(log.slice(1))).toEqual({ ...initial, seq: log.at(-1)?.seq });
    unchangedBy(withEvents(opened(), { type: 'jobDiscarded' }), { type: 'cautionsHeard' });
  });
});

test('a log told again makes the same announcements and the same state', () => {
  const job = given(ready(), [zero, call(2), call(9), call(9), seat]);
  const once = replayLog(job.events);
  expect(once).toEqual(replayLog(job.events));
  expect(once.state).toEqual(job.state);
  expect(once.announcements.map(({ fact }) => fact.kind)).toContain('asked back');
});
