import { expect, test } from 'vitest';
import { announce, decide, evolve, type JobState, noNotes, replay, tidyNotes } from '#counting';
import { journey, pumpEngine } from '../keeping/journeys';

const counted = replay(
  journey('job', pumpEngine, [
    { type: 'cautionsHeard' },
    { type: 'handsClear' },
    { type: 'crankThere' },
    { type: 'zero' },
    { type: 'step', size: 'step' },
  ]),
);

function after(state: JobState, body: Parameters<typeof decide>[1]): JobState {
  const decision = decide(state, body);
  if (decision.kind !== 'events') throw new Error(decision.kind);
  return decision.events.reduce(evolve, state);
}

const at = { at: Date.UTC(2026, 2, 3, 10), by: 'touch' } as const;
const noted = after(counted, {
  ...at,
  type: 'note',
  notes: { ...noNotes, customer: 'Pump house', tags: ['spare'] },
});

test('a note is kept with the job, tells nothing, and is not what take-back undoes', () => {
  expect(noted.notes).toEqual({ ...noNotes, customer: 'Pump house', tags: ['spare'] });
  expect(noted.open).toEqual(counted.open);
  const back = after(noted, { ...at, type: 'takeBack' });
  expect(back.open?.count48).toBe(0);
  expect(back.notes).toEqual(noted.notes);
  const decision = decide(counted, { ...at, type: 'note', notes: noNotes });
  const [event] = decision.kind === 'events' ? decision.events : [];
  expect(event?.type).toBe('noted');
  expect(event && announce(counted, event, evolve(counted, event))).toEqual([]);
});

test('notes are tidied: white space, empty and doubled tags, more than is kept', () => {
  expect(
    tidyNotes({
      builder: '  Wren \n Lode ',
      customer: 'x'.repeat(200),
      remark: '',
      tags: ['Pump', ' pump ', '', 'spare'],
    }),
  ).toEqual({
    builder: 'Wren Lode',
    customer: 'x'.repeat(120),
    remark: '',
    tags: ['pump', 'spare'],
  });
  const many = Array.from({ length: 30 }, (_, n) => `tag ${n}`);
  expect(tidyNotes({ ...noNotes, tags: many }).tags).toHaveLength(12);
});
