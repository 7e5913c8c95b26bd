import { describe, expect, test } from 'vitest';
import { lifterKinds, startingSets, targetPreloadMm, windowProblems } from '#valvetrain';
import { THOU } from './samples';

describe('starting sets', () => {
  test.each(startingSets.map((set) => [set.name, set] as const))(
    '%s can be used as it stands',
    (_, set) => {
      expect(windowProblems(set.window)).toEqual([]);
      expect(set.basis).toContain('confirm them against the lifter maker’s figures');
    },
  );

  test('there is one for every lifter kind', () => {
    expect(startingSets.map((set) => set.window.lifter)).toEqual(lifterKinds);
  });

  test('the target is the middle of the preferred band', () => {
    expect(startingSets.map((set) => targetPreloadMm(set.window) / THOU)).toEqual(
      [90, 40, 35, 40].map((thou) => expect.closeTo(thou, 9)),
    );
  });
});
