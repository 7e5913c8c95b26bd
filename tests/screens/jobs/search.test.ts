import { expect, test } from 'vitest';
import { noNotes } from '#counting';
import type { JobCard } from '#shelf';
import { found, tagsOf } from '../../../src/screens/jobs/search';

function card(name: string, notes: Partial<JobCard['notes']> = {}, engine = 'V8'): JobCard {
  return {
    id: name,
    name,
    engine,
    createdAt: 0,
    changedAt: 0,
    read: 0,
    wanted: 16,
    status: 'open',
    notes: { ...noNotes, ...notes },
    recipe: null,
  };
}

const jobs = [
  card('Pump 3', { builder: 'Wren', tags: ['spare'] }),
  card('Pump 4', { customer: 'Pümp house', tags: ['Spare', 'urgent'] }, 'Inline 6'),
  card('Winch', { remark: 'loud spring' }),
];

test.each([
  ['pump', null, ['Pump 3', 'Pump 4']],
  ['  PUMP  inline ', null, ['Pump 4']],
  ['wren', null, ['Pump 3']],
  ['pumP house', null, ['Pump 4']],
  ['loud', null, ['Winch']],
  ['urgent', null, ['Pump 4']],
  ['', 'spare', ['Pump 3', 'Pump 4']],
  ['pump 3', 'urgent', []],
  ['', null, ['Pump 3', 'Pump 4', 'Winch']],
] as const)('%j with tag %j finds %j', (text, tag, names) => {
  expect(found(jobs, text, tag).map(({ name }) => name)).toEqual(names);
});

test('every tag once, however it is written, in the order of the alphabet', () => {
  expect(tagsOf(jobs)).toEqual(['Spare', 'urgent']);
});
