import { plainFigure } from '../figures';
import { odd, type Problem, refused } from '../problems';
import { exhaustCentrelineDeg, type LobeFigures } from './camCard';

/** No valve of a running engine is open longer, crank degrees. Chosen, to catch slips. */
export const LONGEST_DURATION_DEG = 400;

/** Below this a duration is asked about, crank degrees. */
const SHORT_DEG = 180;

/** Centrelines and separations outside this are asked about. From memory: most lie at 100 to 120. */
const USUAL = { fromDeg: 85, toDeg: 135 };

/**
 * Durations that can't be: nought or less, or over 400° once `widenedByDeg` is added on each side.
 * Under 180° is asked about.
 */
export function durationProblems(lobes: LobeFigures, widenedByDeg: number): readonly Problem[] {
  const widening = 2 * widenedByDeg;
  return (['intake', 'exhaust'] as const).flatMap((valve) => {
    const field = `${valve}DurationDeg` as const;
    const duration = lobes[field];
    const shown = plainFigure(duration);
    if (duration <= 0) {
      return [
        refused(
          field,
          'shuts before it opens',
          `These figures have the ${valve} open for ${shown}°: it would shut before it opens.`,
        ),
      ];
    }
    if (duration + widening > LONGEST_DURATION_DEG) {
      const atSeat =
        widening === 0 ? '' : `, which is about ${plainFigure(duration + widening)}° at the seat`;
      return [
        refused(
          field,
          'too long',
          `The ${valve} would be open for ${shown}°${atSeat}: no cam is over ${LONGEST_DURATION_DEG}°.`,
        ),
      ];
    }
    if (duration + widening >= SHORT_DEG) return [];
    return [
      odd(
        field,
        'short',
        `The ${valve} would be open for only ${shown}°, under ${SHORT_DEG}°. Confirm it if it is right.`,
      ),
    ];
  });
}

/** Lobes must lie between the dead centres either side of overlap, or their events can't be. */
export function centreProblems(lobes: LobeFigures): readonly Problem[] {
  const intake = lobes.intakeCentrelineDeg;
  const separation = lobes.lobeSeparationDeg;
  const exhaust = exhaustCentrelineDeg(lobes);
  if (separation <= 0 || separation >= 180) {
    return [
      refused(
        'lobeSeparationDeg',
        'cannot be',
        `${plainFigure(separation)}° can’t be the lobe separation: it lies between 0 and 180°.`,
      ),
    ];
  }
  if (intake <= 0 || intake >= 180) {
    return [
      refused(
        'intakeCentrelineDeg',
        'cannot be',
        `${plainFigure(intake)}° can’t be the intake centreline: it lies between 0 and 180° after TDC.`,
      ),
    ];
  }
  if (exhaust <= 0 || exhaust >= 180) {
    return [
      refused(
        'lobeSeparationDeg',
        'cannot be',
        `A lobe separation of ${plainFigure(separation)}° with an intake centreline of ${plainFigure(intake)}° puts the exhaust’s at ${plainFigure(exhaust)}°: it lies between 0 and 180° before TDC.`,
      ),
    ];
  }
  return [];
}

/** Centrelines far from where most lie. */
export function usualProblems(lobes: LobeFigures): readonly Problem[] {
  const centres = [
    ['intakeCentrelineDeg', 'intake centreline', lobes.intakeCentrelineDeg],
    ['lobeSeparationDeg', 'exhaust centreline', exhaustCentrelineDeg(lobes)],
  ] as const;
  return centres
    .filter(([, , centre]) => centre < USUAL.fromDeg || centre > USUAL.toDeg)
    .map(([field, name, centre]) =>
      odd(
        field,
        'unusual',
        `These figures put the ${name} at ${plainFigure(centre)}°; most lie from 100 to 120°. Check the signs, and confirm it if it is right.`,
      ),
    );
}
