import { describe, expect, test } from 'vitest';
import { nearestLengthMm, type PartsPlan, plannedLength } from '#valvetrain';
import { seeded } from '../random';

const plan = (more: Partial<PartsPlan>): PartsPlan => ({
  changes: [],
  rockerRatio: 1.6,
  ratioGive: 0,
  presentPreload: null,
  targetMm: null,
  ...more,
});

describe('planned length', () => {
  test('the terms add up, and a preload unlike the present one adds itself', () => {
    const found = plannedLength(
      plan({
        changes: [
          { change: { kind: 'base circle smaller', diameterMm: 0.8 }, giveMm: 0 },
          { change: { kind: 'head or deck milled', milledMm: 0.25 }, giveMm: 0 },
        ],
        presentPreload: { mm: 1.8, giveMm: 0 },
        targetMm: 2.3,
      }),
    );
    expect(found.byParts.mm).toBeCloseTo(0.15, 12);
    expect(found.byPreload?.mm).toBeCloseTo(0.5, 12);
    expect(found.longer.mm).toBeCloseTo(0.65, 12);
    expect(found.keptPreload?.mm).toBeCloseTo(1.65, 12);
    expect(found.longer.giveMm).toBe(0);
  });

  test('without the present preload, or without one wanted, the preload stays as it is', () => {
    const changes = [{ change: { kind: 'pivot shim', shimMm: 0.5 }, giveMm: 0 }] as const;
    for (const more of [{ targetMm: 2 }, { presentPreload: { mm: 2, giveMm: 0.1 } }]) {
      const found = plannedLength(plan({ changes, ...more }));
      expect(found.byPreload).toBeNull();
      expect(found.longer.mm).toBeCloseTo(0.5 * (1 + 1 / 1.6), 12);
    }
  });

  test('one figure alone is never off by more than it may be off', () => {
    const change = { kind: 'base circle smaller', diameterMm: 1 } as const;
    const { terms, byParts } = plannedLength(plan({ changes: [{ change, giveMm: 0.05 }] }));
    expect(terms[0]?.giveMm).toBeCloseTo(0.025, 12);
    expect(byParts.giveMm).toBeCloseTo(0.025, 12);
  });

  test('a shim and a tip higher by as much cancel in the error of the ratio they share', () => {
    const { terms, byParts } = plannedLength(
      plan({
        changes: [
          { change: { kind: 'pivot shim', shimMm: 1 }, giveMm: 0 },
          { change: { kind: 'valve tip higher, pivot fixed', higherMm: 1 }, giveMm: 0 },
        ],
        ratioGive: 0.05,
      }),
    );
    expect(terms.map(({ giveMm }) => giveMm)).toEqual([
      expect.closeTo(0.05 / 1.6 ** 2, 12),
      expect.closeTo(0.05 / 1.6 ** 2, 12),
    ]);
    expect(byParts.giveMm).toBeCloseTo(0, 12);
  });

  test('of 200,000 engines drawn from the stated ranges, about 95 % need a length in the band', () => {
    const seed = 20_831;
    const random = seeded(seed);
    const within = (mm: number, give: number) => mm + give * (2 * random() - 1);
    const planned = plannedLength(
      plan({
        changes: [
          { change: { kind: 'base circle smaller', diameterMm: 0.9 }, giveMm: 0.06 },
          { change: { kind: 'gasket thicker', thickerMm: -0.3 }, giveMm: 0.05 },
          { change: { kind: 'pivot shim', shimMm: 1.5 }, giveMm: 0.04 },
        ],
        rockerRatio: 1.7,
        ratioGive: 0.05,
        presentPreload: { mm: 2, giveMm: 0.06 },
        targetMm: 2.3,
      }),
    );
    const draws = 200_000;
    let inside = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const ratio = within(1.7, 0.05);
      const needed =
        within(0.9, 0.06) / 2 +
        within(-0.3, 0.05) +
        within(1.5, 0.04) * (1 + 1 / ratio) +
        (2.3 - within(2, 0.06));
      if (Math.abs(needed - planned.longer.mm) <= planned.longer.giveMm) inside += 1;
    }
    console.info(`planned length: seed ${seed}, ${draws} draws, ${inside} inside the band`);
    expect(inside / draws).toBeGreaterThan(0.94);
    expect(inside / draws).toBeLessThan(0.98);
  });

  test('not without a ratio, a figure or a ± that can be', () => {
    const change = { kind: 'gasket thicker', thickerMm: 0.1 } as const;
    expect(() => plannedLength(plan({ rockerRatio: 0 }))).toThrow(RangeError);
    expect(() => plannedLength(plan({ changes: [{ change, giveMm: -0.1 }] }))).toThrow(RangeError);
  });
});

test.each([
  [207.02, 0.635, 207.01],
  [207.4, 0.635, 207.645],
  [100.5, 1, 100],
  [100.51, 1, 101],
])('the length nearest %d mm by steps of %d is %d', (length, step, nearest) => {
  expect(nearestLengthMm(length, step)).toBeCloseTo(nearest, 9);
});

test('no step, no nearest length', () => {
  expect(() => nearestLengthMm(200, 0)).toThrow(RangeError);
});
