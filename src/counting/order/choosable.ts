import type { ChoosableValve, ValveId } from '#valvetrain';
import { type JobState, setUpOf } from '../state';
import { cylinderSummaries, type ValveLine } from '../summary';
import { lengthIn } from '../sure/lengthIn';

/** A valve read, but of no use for choosing a length. */
export interface LeftOut {
  readonly valve: ValveId;
  readonly why: /** Seated with lash: how much is not known. A longer test pushrod tells. */
    | 'loose'
    | 'no preload'
    | 'no window'
    /** The pushrod it was read on has no length. */
    | 'no length'
    /** Its length is stated the other way, and the balls and holes are not known. */
    | 'other convention';
}

export interface Choosable {
  readonly valves: readonly ChoosableValve[];
  readonly leftOut: readonly LeftOut[];
}

/** The valves of the newest round that measures, as choosing pushrods needs them. */
export function choosable(state: JobState): Choosable {
  const valves: ChoosableValve[] = [];
  const leftOut: LeftOut[] = [];
  for (const line of cylinderSummaries(state, state.measured).flatMap(({ lines }) => lines)) {
    if (line.reading === null) continue;
    const found = valveOrWhy(state, line);
    if (typeof found === 'string') leftOut.push({ valve: line.valve, why: found });
    else valves.push(found);
  }
  return { valves, leftOut };
}

function valveOrWhy(
  state: JobState,
  { valve, reading, standing }: ValveLine,
): ChoosableValve | LeftOut['why'] {
  const setUp = setUpOf(state);
  if (reading?.kind === 'seated loose') return 'loose';
  if (setUp === null || standing === null || standing.preload === null) return 'no preload';
  const { window } = standing.figures;
  if (window === null) return 'no window';
  if (standing.length === null) return 'no length';
  const testLengthMm = lengthIn(setUp, standing.length);
  if (testLengthMm === null) return 'other convention';
  return { id: valve, preload: standing.preload, testLengthMm, window };
}
