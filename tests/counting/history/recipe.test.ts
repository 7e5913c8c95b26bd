import { expect, test } from 'vitest';
import { recipeOf, type SetUp } from '#counting';
import { longTravel, v8SetUp } from '../../fakes/setUps';

const recipe = recipeOf(v8SetUp());
const adjuster = { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.7, leanDeg: 0 } as const;

const same: readonly [string, Partial<SetUp>][] = [
  ['another name', { name: 'Pump 9' }],
  ['another test pushrod', { testPushrod: { mm: 200, convention: 'tip to tip' } }],
  ['called in turns', { calling: { way: 'turns' } }],
  ['one cylinder only', { scope: [{ cylinder: 1, valve: 'intake' }] }],
  ['the travel measured', { adjuster: { ...adjuster, measuredTravelPerQuarterMm: 0.48 } }],
  ['the ratio typed with its rounding', { adjuster: { ...adjuster, rockerRatio: 1.7001 } }],
  [
    'another preferred band',
    {
      groups: [
        {
          id: 'all',
          name: 'All',
          members: { kind: 'all' },
          window: { ...longTravel, preferredMinMm: longTravel.preferredMinMm + 0.1 },
        },
      ],
    },
  ],
];

test.each(same)('the same recipe: %s', (_, changes) => {
  expect(recipeOf(v8SetUp(changes))).toBe(recipe);
});

const other: readonly [string, Partial<SetUp>][] = [
  ['another ratio', { adjuster: { ...adjuster, rockerRatio: 1.6 } }],
  ['another thread', { adjuster: { ...adjuster, pitchMm: 1 } }],
  ['adjustable rockers', { rockers: 'adjustable' }],
  ['lengths stated the other way', { testPushrod: { mm: 200, convention: 'full ball' } }],
  [
    'other lifters',
    {
      groups: [
        {
          id: 'all',
          name: 'All',
          members: { kind: 'all' },
          window: { ...longTravel, lifter: 'hydraulic flat tappet' },
        },
      ],
    },
  ],
  [
    'another firing order',
    { engine: { ...v8SetUp().engine!, firingOrder: [1, 8, 7, 2, 6, 5, 4, 3] } },
  ],
];

test.each(other)('another recipe: %s', (_, changes) => {
  expect(recipeOf(v8SetUp(changes))).not.toBe(recipe);
  expect(recipeOf(v8SetUp(changes))).not.toBeNull();
});

test.each([{ engine: null }, { groups: [] }, { adjuster: null }])(
  'no recipe while something is not known: %o',
  (changes) => {
    expect(recipeOf(v8SetUp(changes))).toBeNull();
  },
);
