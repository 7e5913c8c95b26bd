import { type OutlierCause, outliers, type ValveId, type Window } from '#valvetrain';
import { type JobState, setUpOf } from '../state';
import { cylinderSummaries, type ValveLine } from '../summary';
import { lengthIn } from './lengthIn';

/** A reading far from those of like valves: distrusted before any part is. */
export interface Distrusted {
  readonly valve: ValveId;
  /** More preload than its fellows by this, mm; below 0 less. */
  readonly offMm: number;
  /** How many readings it was judged among. */
  readonly among: number;
  /** Where to look, in order. */
  readonly causes: readonly OutlierCause[];
}

interface Fellow {
  readonly valve: ValveId;
  readonly key: string;
  readonly preloadMm: number;
  readonly ownMm: number;
}

/**
 * Readings of a round far from their fellows: valves of one kind with one window, all brought to one
 * pushrod. Under three fellows nothing is judged.
 */
export function distrusted(state: JobState, round = state.round.number): readonly Distrusted[] {
  const fellows = cylinderSummaries(state, round)
    .flatMap(({ lines }) => lines)
    .flatMap((line) => fellowOf(state, line) ?? []);
  return [...new Set(fellows.map(({ key }) => key))].flatMap((key) => {
    const alike = fellows.filter((fellow) => fellow.key === key);
    const found = outliers(alike);
    if (!found.judged) return [];
    return found.outliers.map(({ reading, offMm, causes }) => ({
      valve: reading.valve,
      offMm,
      among: alike.length,
      causes,
    }));
  });
}

/** Its preload on a pushrod of no length, which only serves to compare; null where nothing is known. */
function fellowOf(state: JobState, { valve, standing }: ValveLine): Fellow | null {
  const setUp = setUpOf(state);
  if (setUp === null || standing?.preload == null) return null;
  const { window } = standing.figures;
  const lengthMm = standing.length === null ? null : lengthIn(setUp, standing.length);
  return {
    valve,
    key: `${valve.valve} ${windowKey(window)} ${lengthMm === null ? 'no length' : 'length'}`,
    preloadMm: standing.preload.preloadMm - (lengthMm ?? 0),
    ownMm: standing.preload.ownMm,
  };
}

function windowKey(window: Window | null): string {
  return window === null ? '' : Object.values(window).join(' ');
}
