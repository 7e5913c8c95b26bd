import type { Window } from '#valvetrain';
import { decimalsNeeded, figureMm, figureThou, type Units } from '#words';

/**
 * A length as a bare figure in the chosen unit; one decimal more where rounding would carry it
 * across a limit of its window.
 */
export function figureIn(units: Units, mm: number, window: Window | null = null): string {
  const edges = window === null ? [] : edgesOf(window);
  return units === 'mm'
    ? figureMm(mm, decimalsNeeded(mm, edges, 'mm'))
    : figureThou(mm, decimalsNeeded(mm, edges, 'thou'));
}

function edgesOf(window: Window): readonly number[] {
  return [
    0,
    window.usableMinMm,
    window.preferredMinMm,
    window.preferredMaxMm,
    window.usableMaxMm,
    window.plungerTravelMm - window.keepOutBottomMm,
    window.plungerTravelMm,
  ];
}
