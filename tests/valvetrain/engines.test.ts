import { describe, expect, test } from 'vitest';
import { companion, engineFromPreset, engineProblems, engines } from '#valvetrain';

const running = { runningDirection: 'anticlockwise', seenFrom: 'rear' } as const;

describe('engines to start from', () => {
  test.each(engines.map((preset) => [preset.name, preset] as const))('%s is sound', (_, preset) => {
    const e = engineFromPreset(preset, running);
    expect(engineProblems(e)).toEqual([]);
    expect(e).toMatchObject({ ...running, banks: preset.banks });
    expect(preset.places.map((place) => place.cylinder).sort((a, b) => a - b)).toEqual(
      preset.firingOrder.toSorted((a, b) => a - b),
    );
  });

  test('ids and names are each used once', () => {
    expect(new Set(engines.map((preset) => preset.id)).size).toBe(engines.length);
    expect(new Set(engines.map((preset) => preset.name)).size).toBe(engines.length);
  });

  test('inline 4 and 6; V6, V8, flat 4 and 6 in both numberings', () => {
    const kinds = new Set(engines.map((p) => `${p.layout} ${p.cylinders} ${p.numbering}`));
    expect([...kinds].sort()).toEqual([
      'V 6 alternating',
      'V 6 by bank',
      'V 8 alternating',
      'V 8 by bank',
      'flat 4 alternating',
      'flat 4 by bank',
      'flat 6 alternating',
      'flat 6 by bank',
      'inline 4 in line',
      'inline 6 in line',
    ]);
  });

  test('the V sixes here fire the banks by turns: numbering and order belong together', () => {
    for (const preset of engines.filter((p) => p.layout === 'V' && p.cylinders === 6)) {
      const banks = preset.firingOrder.map((n) => preset.banks.findIndex((b) => b.includes(n)));
      banks.forEach((bank, place) => {
        expect(bank).not.toBe(banks[(place + 1) % banks.length]);
      });
    }
  });

  test('in a flat engine the companion lies opposite', () => {
    for (const preset of engines.filter((p) => p.layout === 'flat')) {
      const e = engineFromPreset(preset, running);
      const [left = [], right = []] = preset.banks;
      expect(left.map((cylinder) => companion(e, cylinder))).toEqual(right);
    }
  });
});
