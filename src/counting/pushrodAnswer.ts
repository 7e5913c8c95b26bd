import { type OneLengthResult, oneLengthForAll } from '#valvetrain';
import { type JobState, setUpOf } from './state';
import { cylinderSummaries } from './summary';

/** Pushrods are usually sold every 25 thou: 0.635 mm (common practice). */
export const LENGTH_GRID_MM = 0.635;

/**
 * One length for every valve read in this round, by the simple rule. Null with adjustable rockers
 * (turns to stop at are the answer there), and while no reading has both a preload, a window and a
 * test pushrod.
 */
export function oneLength(state: JobState): OneLengthResult | null {
  if (setUpOf(state)?.rockers !== 'bolt-down') return null;
  const measured = cylinderSummaries(state)
    .flatMap(({ lines }) => lines)
    .flatMap(({ reading, figures }) => {
      if (!reading?.pushrod || figures?.window == null || figures.preloadMm === null) return [];
      return [
        { preloadMm: figures.preloadMm, testLengthMm: reading.pushrod.mm, window: figures.window },
      ];
    });
  return oneLengthForAll(measured, LENGTH_GRID_MM);
}
