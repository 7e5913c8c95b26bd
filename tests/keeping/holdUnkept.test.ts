import { describe, expect, test } from 'vitest';
import { holdUnkept, KeepError, type Keeping } from '#keeping';
import { journeys } from './journeys';
import { device } from './store';

const walk = journeys.walk!;
const JOB = 'job-walk';

/** A device whose disk can be made to refuse, or to be none at all. */
function faulty() {
  const keeping = device().window();
  let fails: 'full' | 'failed' | 'conflict' | null = null;
  let none = false;
  const refuse = () => Promise.reject(new KeepError('failed'));
  const faulted: Keeping = {
    ...keeping,
    append: (events) =>
      none
        ? refuse()
        : fails === null
          ? keeping.append(events)
          : Promise.reject(new KeepError(fails)),
    read: (jobId) => (none ? refuse() : keeping.read(jobId)),
    jobs: () => (none ? refuse() : keeping.jobs()),
  };
  const stores: boolean[] = [];
  const logs = holdUnkept(faulted, (here) => stores.push(here));
  return {
    keeping,
    logs,
    stores,
    fails(how: typeof fails) {
      fails = how;
    },
    none(now: boolean) {
      none = now;
    },
  };
}

describe('a disk that refuses', () => {
  test('what it refused stands behind what it has, until it takes it', async () => {
    const { keeping, logs, fails } = faulty();
    await logs.append(walk.slice(0, 4));
    fails('full');
    await expect(logs.append(walk.slice(4, 6))).rejects.toMatchObject({ failure: 'full' });
    await expect(logs.append(walk.slice(4, 9))).rejects.toMatchObject({ failure: 'full' });
    expect(await logs.read(JOB)).toMatchObject({ events: walk.slice(0, 9), keptThrough: 4 });
    fails(null);
    await logs.append(walk.slice(4, 9));
    expect(await logs.read(JOB)).toMatchObject({ events: walk.slice(0, 9), keptThrough: 9 });
    expect((await keeping.read(JOB)).events).toEqual(walk.slice(0, 9));
  });

  test('another window’s log stands: what was held against it goes', async () => {
    const { logs, fails } = faulty();
    await logs.append(walk.slice(0, 4));
    fails('conflict');
    await expect(logs.append(walk.slice(4, 6))).rejects.toMatchObject({ failure: 'conflict' });
    expect(await logs.read(JOB)).toMatchObject({ events: walk.slice(0, 4), keptThrough: 4 });
  });

  test('the store deleted: the whole log, offered again and refused, is still there', async () => {
    const { logs, fails } = faulty();
    fails('failed');
    await expect(logs.append(walk.slice(0, 5))).rejects.toThrow();
    expect(await logs.read(JOB)).toMatchObject({ events: walk.slice(0, 5), keptThrough: 0 });
    expect((await logs.jobs()).map(({ id }) => id)).toEqual([JOB]);
  });

  test('a job that was to be opened on a full disk is not: it is refused', async () => {
    const { logs, fails, stores } = faulty();
    fails('full');
    await expect(logs.appendOrHold(walk.slice(0, 1))).rejects.toMatchObject({ failure: 'full' });
    expect((await logs.read(JOB)).events).toEqual([]);
    expect(stores).toEqual([true]);
  });
});

describe('no store at all', () => {
  test('a job can be opened and counted in memory; a store that comes back takes all of it', async () => {
    const { keeping, logs, none, stores } = faulty();
    none(true);
    await expect(logs.jobs()).rejects.toThrow();
    await expect(logs.read(JOB)).rejects.toThrow();
    await logs.appendOrHold(walk.slice(0, 1));
    expect(stores).toEqual([false]);
    expect(await logs.read(JOB)).toMatchObject({ events: walk.slice(0, 1), keptThrough: 0 });
    await expect(logs.append(walk.slice(1, 6))).rejects.toThrow();
    expect((await logs.jobs()).map(({ id, name }) => [id, name])).toEqual([
      [JOB, 'Harrow Fen, pump engine 2'],
    ]);
    none(false);
    await logs.append((await logs.read(JOB)).events);
    expect(stores.at(-1)).toBe(true);
    expect((await keeping.read(JOB)).events).toEqual(walk.slice(0, 6));
    expect((await logs.read(JOB)).keptThrough).toBe(6);
  });
});
