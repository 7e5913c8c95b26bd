import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobEvent } from '#counting';
import { type JobFileProblem, MOST_FILE_CHARACTERS, readJobFile, writeJobFile } from '#keeping';
import { canonicalJson } from '../../src/keeping/canonicalJson';
import { checksumOf } from '../../src/keeping/jobFile/writeJobFile';
import { journeys } from './journeys';

const app = { version: '0.1.0', commit: 'abc1234' };
const AT = Date.UTC(2026, 2, 3, 12, 0, 0);
const walk = journeys.walk!;

type Fields = Record<string, unknown>;

/** A file of the walk with its fields changed, the checksum made to fit its events. */
function fileWith(change: (file: Fields, events: Fields[]) => void): string {
  const file: Fields = JSON.parse(writeJobFile(walk, app, AT));
  const events = file.events as Fields[];
  change(file, events);
  if (Array.isArray(file.events)) file.checksum = checksumOf(file.events);
  return JSON.stringify(file);
}

/** The same, one event replaced in part. */
const eventWith = (seq: number, fields: Fields): string =>
  fileWith((_file, events) => {
    events[seq - 1] = { ...events[seq - 1], ...fields };
  });

const setUpWith = (fields: Fields): string =>
  fileWith((_file, events) => {
    const opened = events[0]!;
    opened.setUp = { ...(opened.setUp as Fields), ...fields };
  });

describe('a job out and in again', () => {
  test.each(Object.entries(journeys))('%s comes back as it was', async (_name, events) => {
    expect(await readJobFile(writeJobFile(events, app, AT))).toEqual({ ok: true, events });
  });

  test('the file says what it is, who wrote it, when, and which job', () => {
    const { events, checksum, ...rest } = JSON.parse(writeJobFile(walk, app, AT));
    expect(rest).toEqual({
      format: 'turncaller job',
      version: 1,
      app,
      exportedAt: '2026-03-03T12:00:00.000Z',
      job: { id: 'job-walk', name: 'Harrow Fen, pump engine 2' },
    });
    expect(events).toEqual(walk);
    expect(checksum).toMatch(/^[0-9a-f]{64}$/);
  });

  test('white space, the order of names and a byte-order mark change nothing', async () => {
    const reversed = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(reversed);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([name, member]) => [name, reversed(member)]),
      );
    };
    const other = JSON.stringify(reversed(JSON.parse(writeJobFile(walk, app, AT))), null, 4);
    expect(await readJobFile(`\uFEFF${other}`)).toEqual({ ok: true, events: walk });
  });

  test('names in any script come back', async () => {
    const name = 'Põmp №2 \u{1F6E0} "quoted" \\ \u2028';
    const read = await readJobFile(setUpWith({ name }));
    expect(read.ok && read.events[0]).toMatchObject({ setUp: { name } });
  });

  test('a job without events is not written', () => {
    expect(() => writeJobFile([], app, AT)).toThrow(RangeError);
  });
});

const deep = (levels: number): unknown => (levels === 0 ? 1 : { in: deep(levels - 1) });

const refusals: readonly (readonly [string, JobFileProblem, () => string])[] = [
  ['nothing', 'not JSON', () => ''],
  ['a picture', 'not JSON', () => '\u0089PNG\r\n'],
  ['a file cut short', 'not JSON', () => writeJobFile(walk, app, AT).slice(0, -100)],
  ['NaN', 'not JSON', () => '{"events":[NaN]}'],
  ['a number', 'not a job file', () => '7'],
  ['null', 'not a job file', () => 'null'],
  ['another JSON file', 'not a job file', () => '{"name":"x","version":1}'],
  ['another format', 'not a job file', () => fileWith((f) => (f.format = 'shopping list'))],
  ['events that are no list', 'not a job file', () => fileWith((f) => (f.events = { 0: 1 }))],
  ['no version', 'not a job file', () => fileWith((f) => delete f.version)],
  ['a newer file', 'newer file', () => fileWith((f) => (f.version = 2))],
  ['too much text', 'too big', () => ' '.repeat(MOST_FILE_CHARACTERS + 1)],
  ['nesting', 'too deep', () => fileWith((f) => (f.more = deep(40)))],
  ['nesting past any stack', 'too deep', () => `{"events":${'['.repeat(1e6)}${']'.repeat(1e6)}}`],
  [
    'a name that reaches the prototype',
    'forbidden name',
    () => writeJobFile(walk, app, AT).replace('"name"', '"__proto__"'),
  ],
  ['constructor', 'forbidden name', () => eventWith(3, { constructor: { prototype: {} } })],
  [
    'a number too large to be one',
    'not a number',
    () => writeJobFile(walk, app, AT).replace('"to48": 12', '"to48": 1e999'),
  ],
  ['an empty log', 'no events', () => fileWith((f) => (f.events = []))],
  [
    'a log too long',
    'too many events',
    () => fileWith((f) => (f.events = Array.from({ length: 20_001 }, () => 0))),
  ],
  [
    'a count changed by hand',
    'changed since',
    () => writeJobFile(walk, app, AT).replace('"to48": 36', '"to48": 48'),
  ],
  [
    'no checksum',
    'changed since',
    () => writeJobFile(walk, app, AT).replace('"checksum"', '"sum"'),
  ],
  ['another job’s event', 'another job', () => eventWith(4, { jobId: 'job-other' })],
  ['a missing event', 'out of order', () => fileWith((_f, events) => events.splice(4, 1))],
  ['an event twice', 'out of order', () => fileWith((_f, e) => e.splice(4, 0, { ...e[4] }))],
  ['seq from zero', 'damaged event', () => eventWith(1, { seq: 0 })],
  ['events that are none', 'damaged event', () => fileWith((f) => (f.events = [1, 2]))],
  [
    'a job opened twice',
    'not opened',
    () => fileWith((_f, e) => e.splice(1, 1, { ...e[0], seq: 2 })),
  ],
  ['a job never opened', 'not opened', () => eventWith(1, { type: 'held' })],
  ['a newer event', 'newer event', () => eventWith(6, { v: 2 })],
  ['an unknown event', 'unknown event', () => eventWith(6, { type: 'polished' })],
  [
    'an event named like an object’s own',
    'unknown event',
    () => eventWith(6, { type: 'toString' }),
  ],
  ['a count that is text', 'wrong shape', () => eventWith(6, { to48: '12' })],
  ['a count below zero', 'wrong shape', () => eventWith(6, { to48: -12 })],
  ['a count of a third', 'wrong shape', () => eventWith(6, { to48: 1 / 3 })],
  ['a count without end', 'wrong shape', () => eventWith(6, { to48: 1e15 })],
  ['something beside the count', 'wrong shape', () => eventWith(6, { more: 1 })],
  ['a time out of any calendar', 'wrong shape', () => eventWith(6, { at: 1e300 })],
  ['a hand unknown', 'wrong shape', () => eventWith(6, { by: 'foot' })],
  ['an engine of a hundred cylinders', 'wrong shape', () => setUpWith({ engine: hundred() })],
  ['a set-up without its scope', 'wrong shape', () => setUpWith({ scope: undefined })],
  ['a name of a book’s length', 'wrong shape', () => setUpWith({ name: 'x'.repeat(1e6) })],
  [
    'a rocker ratio of nothing',
    'bad set-up',
    () => setUpWith({ adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 0, leanDeg: 0 } }),
  ],
  [
    'a pushrod a metre long',
    'bad set-up',
    () => setUpWith({ testPushrod: { mm: 1000, convention: 'tip to tip' } }),
  ],
];

function hundred(): Fields {
  const opened = walk[0];
  const engine = opened?.type === 'jobOpened' ? opened.setUp.engine : null;
  return { ...engine, cylinders: 100, firingOrder: Array.from({ length: 100 }, (_, i) => i + 1) };
}

describe('a file that is not taken in', () => {
  test.each(refusals)('%s: %s', async (_name, code, text) => {
    const read = await readJobFile(text());
    expect(read).toMatchObject({ ok: false, code });
    const sentence = read.ok ? '' : read.sentence;
    expect(sentence).toMatch(/^[A-Z].*[.]$/);
    expect(sentence).not.toMatch(/undefined|NaN|Infinity|null|\[object/);
  });

  test('a newer file names the version to look for, and nothing that is no version', async () => {
    const newer = (version: unknown) =>
      fileWith((file) => Object.assign(file, { version: 2, app: { version } }));
    expect(await readJobFile(newer('2.0.1'))).toMatchObject({
      sentence:
        'The file was written by a newer version of the app (2.0.1). Update this one, then open it again.',
    });
    expect(await readJobFile(newer('<b>free money</b>'))).toMatchObject({
      sentence:
        'The file was written by a newer version of the app. Update this one, then open it again.',
    });
  });

  test('an event that is wrong is told by its number', async () => {
    expect(await readJobFile(eventWith(6, { to48: -1 }))).toMatchObject({
      sentence: 'Event 6 is damaged, so the file was not opened.',
    });
  });

  test('reading a hostile file leaves every object’s prototype as it was', async () => {
    await readJobFile(
      writeJobFile(walk, app, AT).replace('"app": {', '"app": {"__proto__": {"polluted": true},'),
    );
    expect(({} as Fields).polluted).toBeUndefined();
  });
});

test('any file with one thing changed is read or refused with a sentence, never thrown', async () => {
  const paths: (readonly (string | number)[])[] = [];
  const collect = (value: unknown, path: readonly (string | number)[]): void => {
    if (path.length > 0) paths.push(path);
    if (typeof value !== 'object' || value === null) return;
    for (const [name, member] of Object.entries(value)) {
      collect(member, [...path, Array.isArray(value) ? Number(name) : name]);
    }
  };
  const events: readonly JobEvent[] = journeys['day-two']!;
  const written: Fields = JSON.parse(writeJobFile(events, app, AT));
  collect(written.events, []);
  const outcomes = new Map<string, number>();
  const strange = fc.oneof(
    fc.jsonValue(),
    fc.integer(),
    fc.constantFrom<unknown>(null, '', 'counted', -1, 0, 0.5, 49, 1e21, [], {}, true),
  );
  const property = fc.asyncProperty(fc.nat(paths.length - 1), strange, async (which, value) => {
    const file: Fields = structuredClone(written);
    const path = paths[which]!;
    let owner = file.events as Record<string | number, unknown>;
    for (const name of path.slice(0, -1)) owner = owner[name] as typeof owner;
    owner[path.at(-1)!] = value;
    file.checksum = checksumOf(file.events as unknown[]);
    const read = await readJobFile(JSON.stringify(file));
    const outcome = read.ok ? 'taken in' : read.code;
    outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    if (!read.ok) expect(read.sentence).toMatch(/^[A-Z].*[.]$/);
  });
  const seed = Date.now() % 2 ** 31;
  await fc.assert(property, { numRuns: 1500, seed });
  console.log(
    `job files, 1500 with one of ${paths.length} places changed, seed ${seed}:`,
    outcomes,
  );
  expect([...outcomes.values()].reduce((a, b) => a + b, 0)).toBeGreaterThanOrEqual(1500);
  expect(outcomes.get('wrong shape')).toBeGreaterThan(300);
});

test('canonical JSON is the same for equal values in any order', () => {
  expect(canonicalJson({ b: [1, { d: null, c: 'x' }], a: undefined, A: -0 })).toBe(
    '{"A":0,"b":[1,{"c":"x","d":null}]}',
  );
});
