import { lengthConvention, type SetUp } from '../setUp';

/**
 * What makes two jobs comparable, as one text to match by: the engine's layout, numbers, firing order
 * and banks; the rocker's adjuster, thread and ratio; lifter kind and plunger travel of each group of
 * valves; how lengths are stated. Not in it: test pushrod, way of calling, limits of the windows, which
 * valves were counted, and which way the crank runs.
 *
 * Null where the engine, the lifters, or both thread and checking pushrod are not known: such a job is
 * compared with none.
 */
export function recipeOf(setUp: SetUp): string | null {
  const { engine, adjuster, groups, rockers, checking } = setUp;
  if (engine === null || groups.length === 0) return null;
  if (adjuster === null && checking === undefined) return null;
  return JSON.stringify([
    [engine.layout, engine.cylinders, engine.firingOrder, engine.firingAnglesDeg ?? null],
    engine.banks,
    rockers,
    adjuster && [adjuster.kind, rounded(adjuster.pitchMm), rounded(adjuster.rockerRatio)],
    groups
      .map(({ members, window }) =>
        JSON.stringify([members, window.lifter, rounded(window.plungerTravelMm)]),
      )
      .toSorted(),
    lengthConvention(setUp),
  ]);
}

/** Figures typed in inches or in millimetres are the same recipe. */
function rounded(value: number): number {
  return Math.round(value * 200) / 200;
}
