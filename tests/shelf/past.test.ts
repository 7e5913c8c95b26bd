import { expect, test } from 'vitest';
import { initial, type JobEvent, noNotes, recipeOf, replay, setUpOf } from '#counting';
import { createShelf, type JobCard } from '#shelf';
import { fakeClock } from '../fakes/clock';
import { afterAll, type CountedJob, countAll, openedJob } from '../fakes/countedJob';
import { oneCylinder, v8SetUp } from '../fakes/setUps';

function shelfOf(...jobs: readonly CountedJob[]) {
  const logs = new Map(jobs.map(({ events, state }) => [state.jobId, [...events]]));
  let ids = 0;
  const shelf = createShelf({
    clock: fakeClock(),
    app: { version: '1', commit: 'a' },
    newId: () => {
      ids += 1;
      return `new-${ids}`;
    },
    keeper: {
      jobs: async () => [...logs.values()].map(cardOf),
      read: async (jobId) => ({ events: logs.get(jobId) ?? [] }),
      append: async (events) => {
        const id = events[0]?.jobId ?? '';
        logs.set(id, [...(logs.get(id) ?? []), ...events]);
      },
      readJobFile: async () => ({ ok: false, sentence: 'No.' }),
      writeJobFile: async () => '',
    },
    backup: {
      readBackup: async () => ({ ok: false, sentence: 'No.' }),
      writeBackup: async () => '',
      restoreLog: async () => 'new',
      settings: async () => undefined,
      takeSettings: () => undefined,
    },
  });
  return { shelf, logs };
}

function cardOf(events: readonly JobEvent[]): JobCard {
  const state = events.length === 0 ? initial : replay(events);
  const setUp = setUpOf(state);
  return {
    id: state.jobId,
    name: setUp?.name ?? '',
    createdAt: 0,
    changedAt: 0,
    engine: null,
    read: 0,
    wanted: 0,
    status: state.status,
    notes: state.notes,
    recipe: setUp === null ? null : recipeOf(setUp),
  };
}

const counted = (id: string, quarters: number) =>
  countAll(openedJob(oneCylinder(), id), () => quarters);
const recipe = recipeOf(v8SetUp())!;

test('the past of a recipe: its measured jobs but this one; no demo, not discarded, not of other parts', async () => {
  const otherRatio = oneCylinder({ adjuster: { ...v8SetUp().adjuster!, rockerRatio: 1.5 } });
  const { shelf } = shelfOf(
    counted('this', 4),
    counted('one', 4.5),
    counted('two', 5),
    openedJob(oneCylinder(), 'not read'),
    counted('demo-pump', 4),
    afterAll(counted('discarded', 4), { type: 'discard' }),
    countAll(openedJob(otherRatio, 'other parts'), () => 4),
  );
  const past = await shelf.past(recipe, 'this');
  expect(past.map(({ jobId }) => jobId)).toEqual(['one', 'two']);
});

test('a job is looked at without being changed; one that is not here is none', async () => {
  const { shelf, logs } = shelfOf(counted('one', 4));
  const before = logs.get('one')!.length;
  expect((await shelf.look('one'))?.readings).toHaveLength(2);
  expect(await shelf.look('two')).toBeNull();
  expect(logs.get('one')).toHaveLength(before);
});

test('a template hands on set-up, builder and tags, not for whom nor the remark', async () => {
  const notes = { builder: 'Wren', customer: 'Pump house', remark: 'Loud', tags: ['spare'] };
  const { shelf } = shelfOf(counted('one', 4));
  await shelf.note('one', notes);
  expect((await shelf.look('one'))?.notes).toEqual(notes);
  const copy = await shelf.look((await shelf.copy('one')) ?? '');
  expect(copy?.notes).toEqual({ ...noNotes, builder: 'Wren', tags: ['spare'] });
  expect(copy?.readings).toEqual([]);
  expect(setUpOf(copy!)).toEqual({ ...oneCylinder(), name: 'Pump 3, again' });
});
