import { describe, expect, test } from 'vitest';
import { type JobEvent, noNotes, recipeOf } from '#counting';
import { done } from './done';
import { journey, journeys, nothingKnown, pumpEngine } from './journeys';
import { device, rawStore } from './store';

const walk = journeys.walk!;
const dayTwo = journeys['day-two']!;
const unnamed = journeys.unnamed!;

describe('the list of jobs', () => {
  test('a card tells the job as its log folds', async () => {
    const keeping = device().window();
    await keeping.append(walk);
    expect(await keeping.jobs()).toEqual([
      {
        id: 'job-walk',
        name: 'Harrow Fen, pump engine 2',
        createdAt: walk[0]!.at,
        changedAt: walk.at(-1)!.at,
        engine: 'Inline 4, 1-3-4-2',
        read: 2,
        wanted: 8,
        round: 1,
        unnamed: 0,
        status: 'open',
        notes: noNotes,
        recipe: recipeOf(pumpEngine),
      },
    ]);
  });

  test('a count without an engine has a card without one', async () => {
    const keeping = device().window();
    await keeping.append(unnamed.slice(0, -1));
    expect(await keeping.jobs()).toMatchObject([
      { name: 'Counted at once', engine: null, read: 0, wanted: 0, unnamed: 1 },
    ]);
  });

  test('the job changed last comes first', async () => {
    const keeping = device().window();
    const late = unnamed.map((event) => ({ ...event, at: event.at + 3_600_000 }));
    await keeping.append(late);
    await keeping.append(walk);
    await keeping.append(dayTwo);
    const cards = await keeping.jobs();
    expect(cards.map(({ id }) => id)).toEqual(['job-unnamed', 'job-day-two', 'job-walk']);
    expect(cards.map(({ changedAt }) => changedAt)).toEqual(
      [late, dayTwo, walk].map((events) => events.at(-1)!.at),
    );
  });

  test('discarding is an event: the card says so, the log stays, restoring brings it back', async () => {
    const keeping = device().window();
    const opened = journey('job-d', pumpEngine, []);
    const discarded = journey('job-d', pumpEngine, [{ type: 'discard' }]);
    const restored = journey('job-d', pumpEngine, [{ type: 'discard' }, { type: 'restore' }]);
    await keeping.append(opened);
    await keeping.append(discarded.slice(1));
    expect(await keeping.jobs()).toMatchObject([{ id: 'job-d', status: 'discarded' }]);
    expect((await keeping.read('job-d')).events).toEqual(discarded);
    await keeping.append(restored.slice(2));
    expect(await keeping.jobs()).toMatchObject([{ id: 'job-d', status: 'open' }]);
  });

  test('cards kept one event at a time, by two windows in turn, equal cards built from the logs', async () => {
    const on = device();
    const windows = [on.window(), on.window()] as const;
    let appends = 0;
    for (const events of [walk, dayTwo, unnamed, journey('job-n', nothingKnown, [])]) {
      for (const [i, event] of events.entries()) {
        await windows[Math.floor(i / 3) % 2 === 0 ? 0 : 1].append([event]);
        appends += 1;
      }
    }
    const cached = await windows[0].jobs();
    await windows[1].rebuildCards();
    expect(await windows[0].jobs()).toEqual(cached);
    expect(cached).toHaveLength(4);
    console.log(
      `cards: ${appends} appends by two windows, ${cached.length} cards equal their logs`,
    );
  });

  test('cards an older version wrote, without what was added since, are built anew', async () => {
    const on = device();
    await on.window().append(walk);
    await on.window().append(unnamed);
    const whole = await on.window().jobs();
    const db = await rawStore(on);
    const { recipe: _recipe, notes: _notes, ...old } = whole[1]!;
    await done(db.transaction('jobs', 'readwrite').objectStore('jobs').put(old));
    db.close();
    expect(await on.window().jobs()).toEqual(whole);
  });

  test('a card is written in its event’s transaction: never one without the other', async () => {
    const on = device();
    const keeping = on.window();
    let looked = 0;
    for (const event of walk) {
      const kept = keeping.append([event]);
      const during = await on.window().jobs();
      await kept;
      const [card] = await keeping.jobs();
      expect(card?.changedAt).toBe(event.at);
      expect([undefined, event.at, before(event)]).toContain(during[0]?.changedAt);
      looked += 1;
    }
    expect(looked).toBe(walk.length);
  });
});

function before(event: JobEvent): number | undefined {
  return walk[event.seq - 2]?.at;
}

describe('settings', () => {
  test('what was put is got again, in another window too; what was not is undefined', async () => {
    const on = device();
    const keeping = on.window();
    await keeping.putSetting('keys', { PageDown: 'step' });
    await keeping.putSetting('keys', { PageDown: 'step', Space: 'step' });
    expect(await on.window().setting('keys')).toEqual({ PageDown: 'step', Space: 'step' });
    expect(await keeping.setting('voice')).toBeUndefined();
  });
});
