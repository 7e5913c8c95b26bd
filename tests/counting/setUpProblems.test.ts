import { describe, expect, test } from 'vitest';
import { lengthProblems, type SetUp, setUpProblems } from '#counting';
import { opened, outcomes, when } from './given';
import { allValves, countNow, eightCylinders, engineOf, exhaust, longTravel } from './samples';
import { changeSetUp, say } from './steps';

const codes = (changes: Partial<SetUp>) =>
  setUpProblems({ ...eightCylinders, ...changes })
    .filter(({ severity }) => severity === 'refused')
    .map(({ field, code }) => `${field}: ${code}`);

describe('what is wrong with a set-up', () => {
  test('nothing with a sound one, and nothing with none at all', () => {
    expect(codes({})).toEqual([]);
    expect(setUpProblems(countNow)).toEqual([]);
  });

  test('a valve of no cylinder, or no valve', () => {
    expect(codes({ scope: [exhaust(9)] })).toEqual(['scope: valve not in the engine']);
    expect(codes({ scope: [] })).toEqual(['scope: no valves']);
  });

  test.each([
    [
      'a pitch of nought',
      { adjuster: { kind: 'pivot', pitchMm: 0, rockerRatio: 1.7, leanDeg: 0 } },
    ],
    [
      'a ratio of nought',
      { adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 0, leanDeg: 0 } },
    ],
    ['a cylinder twice in the order', { engine: engineOf(1, 2, 2, 4) }],
    [
      'a window upside down',
      { groups: [{ ...allValves, window: { ...longTravel, usableMaxMm: 1 } }] },
    ],
    [
      'a window outside the travel',
      { groups: [{ ...allValves, window: { ...longTravel, plungerTravelMm: 2 } }] },
    ],
    [
      'valves in no group',
      { groups: [{ ...allValves, members: { kind: 'valve', valve: 'intake' } }] },
    ],
    ['a pushrod too short', { testPushrod: { mm: 20, convention: 'tip to tip' } }],
  ] as const satisfies readonly (readonly [string, Partial<SetUp>])[])(
    '%s is refused',
    (_, changes) => {
      expect(codes(changes).length).toBeGreaterThan(0);
      const job = when(opened(), changeSetUp('bad', changes));
      expect(outcomes(job)).toEqual(['refused: bad set-up']);
    },
  );

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -1, 0, 49.9, 500.1])(
    'a length of %d mm is refused',
    (mm) => {
      const length = { mm, convention: 'tip to tip' } as const;
      expect(lengthProblems(length)).toHaveLength(1);
      expect(outcomes(when(opened(), say('rod', { type: 'fitPushrod', length })))).toEqual([
        'refused: bad length',
      ]);
    },
  );

  test('a job can’t be opened on a refused set-up', () => {
    const scope = [exhaust(9)];
    expect(opened({ ...eightCylinders, scope }).state.status).toBe('not opened');
  });
});
