import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type JobEvent, replay } from '#counting';
import { journeys } from './journeys';
import { dumpOf, layOn, type StoreDump } from './rawStores';
import { device } from './store';

const folder = new URL('./fixtures/stores/', import.meta.url);

/** Every version's store as it was left on a device once, the oldest first. */
const kept = readdirSync(folder)
  .sort()
  .map((name) => ({
    name,
    dump: JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as StoreDump,
  }));

const rowsIn = ({ stores }: StoreDump, store: string) =>
  stores.find(({ name }) => name === store)?.rows ?? [];

test('there is a store of every version up to this one, and this one’s is as it is made today', async () => {
  const on = device();
  await on.window().append(journeys.walk ?? []);
  const now = await dumpOf(on);
  expect(kept.map(({ dump }) => dump.version)).toEqual(
    Array.from({ length: now.version / 10 }, (_, index) => 10 * (index + 1)),
  );
  const shape = ({ stores }: StoreDump) => stores.map(({ rows: _, ...store }) => store);
  const newest = kept.at(-1)?.dump;
  expect(newest && shape(newest)).toEqual(shape(now));
});

describe.each(kept)('a store left by $name', ({ dump }) => {
  const all = rowsIn(dump, 'events') as readonly JobEvent[];
  const jobIds = [...new Set(all.map(({ jobId }) => jobId))];
  const logs = jobIds.map((id) => ({ id, rows: all.filter(({ jobId }) => jobId === id) }));

  test('holds something to bring over', () => {
    expect(logs.length).toBeGreaterThan(1);
    expect(rowsIn(dump, 'jobs').length).toBe(logs.length);
  });

  test('opens in this version with every job, every event and every reading', async () => {
    const on = device();
    await layOn(on, dump);
    const keeping = on.window();
    expect((await keeping.jobs()).map(({ id }) => id).sort()).toEqual(jobIds.toSorted());
    for (const { id, rows } of logs) {
      const { events, readOnly } = await keeping.read(id);
      expect(readOnly).toBeNull();
      expect(events.map(({ seq, type }) => [seq, type])).toEqual(
        rows.map(({ seq, type }) => [seq, type]),
      );
      expect(replay(events).seq).toBe(rows.length);
    }
  });

  test('is written on from there', async () => {
    const on = device();
    await layOn(on, dump);
    const last = logs[0]?.rows.at(-1);
    if (last === undefined) throw new Error('no log');
    const { jobId } = last;
    const keeping = on.window();
    const next: JobEvent = {
      jobId,
      seq: last.seq + 1,
      v: last.v,
      at: last.at + 1,
      by: 'key',
      type: 'resumed',
    };
    await keeping.append([next]);
    expect((await on.window().read(jobId)).events.at(-1)).toEqual(next);
  });
});
