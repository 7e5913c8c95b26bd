import { describe, expect, test } from 'vitest';
import { journeys } from './journeys';
import { fakeLockManager } from './lockManager';
import { device } from './store';

const walk = journeys.walk!;
const never = () => expect.unreachable('the claim was not lost');

describe('one writer per job', () => {
  test('given no writer, when a window claims, then it is the writer by the lock job:<id>', async () => {
    const locks = fakeLockManager();
    const keeping = device().window({ locks });
    expect(await keeping.claim('a', never)).not.toBeNull();
    expect(locks.held()).toEqual(['job:a']);
    expect(keeping.locking).toBe(true);
  });

  test('given a writer, when another window claims, then it gets none; another job it gets', async () => {
    const locks = fakeLockManager();
    const [first, second] = [device().window({ locks }), device().window({ locks })];
    await first.claim('a', never);
    expect(await second.claim('a', never)).toBeNull();
    expect(await second.claim('b', never)).not.toBeNull();
  });

  test('given a writer that released, when another claims, then it is the writer', async () => {
    const locks = fakeLockManager();
    const [first, second] = [device().window({ locks }), device().window({ locks })];
    const claim = await first.claim('a', never);
    claim?.release();
    claim?.release();
    await new Promise((resolve) => setTimeout(resolve));
    expect(await second.claim('a', never)).not.toBeNull();
  });

  test('given a claim just released, when the same window claims at once, then it gets it', async () => {
    const locks = fakeLockManager();
    const keeping = device().window({ locks });
    for (let i = 0; i < 5; i += 1) {
      const claim = await keeping.claim('a', never);
      expect(claim).not.toBeNull();
      claim?.release();
    }
  });

  test('given a writer, when another takes over, then the first is told once and the second writes', async () => {
    const locks = fakeLockManager();
    const [first, second] = [device().window({ locks }), device().window({ locks })];
    let lost = 0;
    const claim = await first.claim('a', () => {
      lost += 1;
    });
    const taken = await second.takeOver('a', never);
    await Promise.resolve();
    expect(lost).toBe(1);
    claim?.release();
    expect(locks.held()).toEqual(['job:a']);
    expect(await first.claim('a', never)).toBeNull();
    taken.release();
  });

  test('given a released claim, when another takes over, then nobody is told', async () => {
    const locks = fakeLockManager();
    const [first, second] = [device().window({ locks }), device().window({ locks })];
    (await first.claim('a', never))?.release();
    await second.takeOver('a', never);
    expect(locks.held()).toEqual(['job:a']);
  });

  test('given no locks in the browser, then every claim is granted and the keeper says so', async () => {
    const keeping = device().window({ locks: null });
    expect(keeping.locking).toBe(false);
    expect(await keeping.claim('a', never)).not.toBeNull();
    expect(await keeping.takeOver('a', never)).not.toBeNull();
  });

  test('given locks that refuse to answer, then the claim rejects', async () => {
    const locks = { request: () => Promise.reject(new DOMException('no', 'SecurityError')) };
    const keeping = device().window({ locks });
    await expect(keeping.claim('a', never)).rejects.toThrow('no');
  });
});

describe('notes between windows', () => {
  test('another window hears that a job changed and where its log ends; the writer does not', async () => {
    const on = device();
    const [writer, reader] = [on.window(), on.window()];
    const own: number[] = [];
    writer.followAll((_job, seq) => own.push(seq));
    const other: number[] = [];
    reader.follow('another-job', (seq) => other.push(seq));
    const heard = new Promise<number>((resolve) => reader.follow('job-walk', resolve));
    await writer.append(walk.slice(0, 4));
    expect(await heard).toBe(4);
    expect(own).toEqual([]);
    expect(other).toEqual([]);
    expect((await reader.read('job-walk')).events).toEqual(walk.slice(0, 4));
  });

  test('a follower that stopped hears no more; a strange note is passed over', async () => {
    const on = device();
    const [writer, reader] = [on.window(), on.window()];
    const stopped: number[] = [];
    const stop = reader.follow('job-walk', (seq) => stopped.push(seq));
    stop();
    const heard: unknown[] = [];
    const done = new Promise<void>((resolve) =>
      reader.followAll((jobId, seq) => {
        heard.push([jobId, seq]);
        resolve();
      }),
    );
    const stranger = new BroadcastChannel(on.name);
    for (const note of [null, 'job-walk', { jobId: 'job-walk' }, { jobId: 1, seq: 2 }]) {
      stranger.postMessage(note);
    }
    await writer.append(walk.slice(0, 2));
    await done;
    stranger.close();
    expect(heard).toEqual([['job-walk', 2]]);
    expect(stopped).toEqual([]);
  });

  test('a write that failed is not told', async () => {
    const on = device();
    const [writer, reader] = [on.window(), on.window()];
    const heard: number[] = [];
    const done = new Promise<void>((resolve) =>
      reader.followAll((_job, seq) => {
        heard.push(seq);
        resolve();
      }),
    );
    await expect(writer.append(walk.slice(4, 6))).rejects.toThrow();
    await writer.append(walk.slice(0, 3));
    await done;
    expect(heard).toEqual([3]);
  });

  test('a window that hears of a newer version stops reading and writing, and says so; of its own it does not', async () => {
    const on = device();
    const older = on.window();
    await older.append(walk.slice(0, 2));
    const told = new Promise<string>((resolve) => older.watch(resolve));
    on.window();
    const newer = new BroadcastChannel(on.name);
    newer.postMessage({ store: 1, events: 'x' });
    newer.postMessage({ store: 1, events: 99 });
    expect(await told).toBe('superseded');
    newer.close();
    await expect(older.append(walk.slice(2, 4))).rejects.toMatchObject({ failure: 'superseded' });
    expect((await on.window().read('job-walk')).events).toEqual(walk.slice(0, 2));
  });

  test('without a channel nothing is told and nothing fails', async () => {
    const keeping = device().window({ channel: null });
    keeping.follow('job-walk', never);
    await keeping.append(walk);
    expect((await keeping.jobs()).length).toBe(1);
  });
});
