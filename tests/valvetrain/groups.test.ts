import { describe, expect, test } from 'vitest';
import { type GroupMembers, groupOf, groupProblems, type ValveGroup } from '#valvetrain';
import { engine, windowInThou } from './samples';

const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);

function group(id: string, members: GroupMembers): ValveGroup {
  return { id, name: id, window: windowInThou(), members };
}

const all = group('all', { kind: 'all' });
const intakes = group('intakes', { kind: 'valve', valve: 'intake' });
const evenBank = group('even bank', { kind: 'bank', bank: 1 });
const deactivating = group('deactivating', { kind: 'cylinders', cylinders: [1, 4, 6, 7] });

describe('the group of a valve', () => {
  test.each([
    [6, 'intake', 'deactivating'],
    [2, 'intake', 'even bank'],
    [2, 'exhaust', 'even bank'],
    [3, 'intake', 'intakes'],
    [3, 'exhaust', 'all'],
  ] as const)(
    '%d %s is in %s: the most specific wins, in whatever order they stand',
    (cylinder, valve, expected) => {
      const groups = [all, intakes, evenBank, deactivating];
      expect(groupOf({ cylinder, valve }, groups, v8)?.id).toBe(expected);
      expect(groupOf({ cylinder, valve }, groups.toReversed(), v8)?.id).toBe(expected);
    },
  );

  test('is undefined where no group takes it in', () => {
    expect(groupOf({ cylinder: 3, valve: 'exhaust' }, [intakes, evenBank], v8)).toBeUndefined();
    expect(groupOf({ cylinder: 1, valve: 'intake' }, [], v8)).toBeUndefined();
  });
});

describe('problems of groups', () => {
  test('none for overlapping groups that the rule settles', () => {
    expect(groupProblems([all, intakes, evenBank, deactivating], v8)).toEqual([]);
  });

  test.each([
    ['valve in no group', [intakes]],
    [
      'valve in two groups',
      [all, deactivating, group('others', { kind: 'cylinders', cylinders: [7, 8] })],
    ],
    ['no such bank', [all, group('third bank', { kind: 'bank', bank: 2 })]],
    ['no such cylinder', [all, group('ninth', { kind: 'cylinders', cylinders: [9] })]],
    ['same id', [group('all', { kind: 'valve', valve: 'exhaust' }), all]],
  ])('%s', (code, groups) => {
    expect(groupProblems(groups, v8).map((problem) => problem.code)).toEqual([code]);
  });

  test('the valve is named', () => {
    expect(groupProblems([intakes], v8)[0]?.sentence).toBe(
      'The exhaust of cylinder 1 is in no valve group: put it in one, or add a group for all valves.',
    );
  });
});
