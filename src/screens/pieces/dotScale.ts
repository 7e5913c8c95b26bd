import type { Window } from '#valvetrain';

/** A length along a drawing: where it lies, and where the scale is ticked. */
export interface DotScale {
  readonly leastMm: number;
  readonly mostMm: number;
  /** The place of a length, kept within the drawing. */
  readonly at: (mm: number) => number;
  readonly ticksMm: readonly number[];
}

/** Thou and tenths of a millimetre that a scale may be ticked in, mm. */
const STEPS: Readonly<Record<'inch' | 'mm', readonly number[]>> = {
  inch: [5, 10, 25, 50, 100, 250].map((thou) => thou * 0.0254),
  mm: [0.1, 0.2, 0.5, 1, 2, 5],
};
const MOST_TICKS = 6;

/**
 * A scale over some lengths and the windows they are judged by, from `left` to `right`, ticked at round
 * figures of the unit.
 */
export function dotScale(
  lengthsMm: readonly number[],
  windows: readonly Window[],
  units: 'inch' | 'mm',
  left: number,
  right: number,
): DotScale {
  const all = [
    ...lengthsMm,
    ...windows.flatMap(({ usableMinMm, usableMaxMm }) => [usableMinMm, usableMaxMm]),
  ];
  const [from, to] = all.length === 0 ? [0, 1] : [Math.min(...all), Math.max(...all)];
  const room = Math.max((to - from) * 0.08, 0.05);
  const [leastMm, mostMm] = [from - room, to + room];
  const step =
    STEPS[units].find((one) => (mostMm - leastMm) / one <= MOST_TICKS) ?? mostMm - leastMm;
  const first = Math.ceil(leastMm / step);
  const count = Math.max(0, Math.floor(mostMm / step) - first + 1);
  return {
    leastMm,
    mostMm,
    at: (mm) => {
      const share = (Math.max(leastMm, Math.min(mostMm, mm)) - leastMm) / (mostMm - leastMm);
      return left + share * (right - left);
    },
    ticksMm: Array.from({ length: count }, (_, i) => (first + i) * step),
  };
}
