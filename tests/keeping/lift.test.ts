import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EVENT_VERSION, engineSummary, type JobEvent, readingCount48, replay } from '#counting';
import { eventTypes } from '../../src/keeping/eventTypes';
import { isJobEvent } from '../../src/keeping/jobFile/shapes';
import type { eventShape } from '../../src/keeping/jobFile/shapes/event';
import { type Lifter, lift, lifters, type StoredEvent } from '../../src/keeping/lift';
import { journeys } from './journeys';

const fixtures = join(import.meta.dirname, 'fixtures');
const versions = readdirSync(fixtures).filter((name) => /^v\d+$/.test(name));

function fixture(version: string, name: string): readonly StoredEvent[] {
  return JSON.parse(readFileSync(join(fixtures, version, `${name}.json`), 'utf8'));
}

function lifted(stored: readonly unknown[]): readonly JobEvent[] {
  return stored.map((event) => {
    const result = lift(event);
    if (!result.ok) throw new Error(result.why);
    return result.event;
  });
}

test('every version up to the newest has its fixtures, and one lifter takes each to the next', () => {
  expect(versions).toEqual(Array.from({ length: EVENT_VERSION }, (_, i) => `v${i + 1}`));
  expect(lifters).toHaveLength(EVENT_VERSION - 1);
});

describe.each(versions)('fixtures of %s', (version) => {
  test('every type of event is there and lifts to the newest shape', () => {
    const names = readdirSync(join(fixtures, version)).map((name) => name.replace('.json', ''));
    const types = names.filter((name) => !name.startsWith('log-'));
    if (version === `v${EVENT_VERSION}`) expect(types.sort()).toEqual([...eventTypes].sort());
    let checked = 0;
    for (const type of types) {
      for (const event of lifted(fixture(version, type))) {
        expect(event.v).toBe(EVENT_VERSION);
        expect(isJobEvent(event), `${type}: ${JSON.stringify(event)}`).toBe(true);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThanOrEqual(types.length);
    console.log(`${version}: ${checked} events of ${types.length} types lifted and held to shape`);
  });

  /** Counts in 48ths, worked out by hand from what was pressed and called in the journeys. */
  test.each([
    ['log-walk', [54, 40], 2],
    ['log-day-two', [54, 40, 33, 30], 0],
    ['log-day-three', [null], 0],
    ['log-crank', [48], 1],
    ['log-unnamed', [48], 0],
  ] as const)('%s folds to the counts that were made', (name, counts48, read) => {
    const state = replay(lifted(fixture(version, name)));
    expect(
      state.readings.map((reading) =>
        reading.kind === 'counted' ? readingCount48(reading) : null,
      ),
    ).toEqual(counts48);
    expect(engineSummary(state).read).toBe(read);
  });
});

describe('lifting', () => {
  const event = journeys.walk![6]!;

  test('an event goes through every step from its own version on', () => {
    const steps: readonly Lifter[] = [
      (old) => ({ ...old, v: 2, type: old.type === 'turned' ? 'counted' : old.type }),
      (old) => ({ ...old, v: 3, by: 'key' }),
    ];
    const first = { ...event, v: 1, type: 'turned', by: 'foot' };
    expect(lift(first, steps)).toEqual({ ok: true, event: { ...event, v: 3, by: 'key' } });
    expect(lift({ ...event, v: 2, by: 'foot' }, steps)).toEqual({
      ok: true,
      event: { ...event, v: 3, by: 'key' },
    });
    expect(lift({ ...first, v: 2 }, steps)).toEqual({ ok: false, why: 'unknown event' });
    expect(lift({ ...first, v: 4 }, steps)).toEqual({ ok: false, why: 'newer event' });
  });

  test('a lifter that stumbles makes the event damaged, and does not throw', () => {
    const stumbles: Lifter = () => {
      throw new TypeError('no such field');
    };
    expect(lift(event, [stumbles])).toEqual({ ok: false, why: 'damaged event' });
  });

  test.each([
    null,
    undefined,
    7,
    'counted',
    [],
    {},
    { ...event, seq: 0 },
    { ...event, seq: 1.5 },
    { ...event, v: 0 },
    { ...event, v: '1' },
    { ...event, at: Number.NaN },
    { ...event, jobId: 3 },
  ])('%j is no event', (value) => {
    expect(lift(value)).toEqual({ ok: false, why: 'damaged event' });
  });
});

type Deep<T> = T extends string | number | boolean | null | undefined
  ? T
  : { readonly [K in keyof T]: Deep<T[K]> };
type Parsed = Deep<import('zod/mini').infer<typeof eventShape>>;

/** Compiles only while the shape of files and the events of counting are the same type. */
const sameType = {
  shapeToEvent: (event: Parsed): JobEvent => event,
  eventToShape: (event: Deep<JobEvent>): Parsed => event,
};

test('what real commands come to has the shape that files are held to', () => {
  let checked = 0;
  for (const event of Object.values(journeys).flat()) {
    expect(isJobEvent(sameType.shapeToEvent(sameType.eventToShape(event)))).toBe(true);
    checked += 1;
  }
  expect(checked).toBeGreaterThan(90);
});
