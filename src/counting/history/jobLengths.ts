import { rootSumOfSquares, targetPreloadMm, type ValveKind, valveKinds } from '#valvetrain';
import { choosable } from '../order/choosable';
import { pushrodAnswer } from '../order/pushrodAnswer';
import { type JobState, pushrodFor, setUpOf } from '../state';
import { lengthIn } from '../sure/lengthIn';

/** The intakes or the exhausts of a job, as one mean. Lengths mm. */
export interface KindLengths {
  readonly valve: ValveKind;
  /** Mean length at which they would stand at zero lash: what the engine itself asks for. */
  readonly zeroLashMm: number;
  /** Mean preload aimed at. */
  readonly targetMm: number;
  /** Of the mean: its own uncertainty, and the share the travel per quarter turn has in it. */
  readonly ownMm: number;
  readonly commonMm: number;
  readonly valves: number;
}

/** What lengths a job came to. */
export interface JobLengths {
  readonly jobId: string;
  readonly name: string;
  /** When its last reading was taken, ms since 1970. */
  readonly at: number;
  readonly kinds: readonly KindLengths[];
  /** Lengths fitted for its final check, else those to order; each once, shortest first. */
  readonly lengthsMm: readonly number[];
  readonly fitted: boolean;
}

/** Null while the job has no valve that a length can be chosen for. */
export function jobLengths(state: JobState): JobLengths | null {
  const setUp = setUpOf(state);
  if (setUp === null) return null;
  const kinds = valveKinds.flatMap((valve) => kindOf(state, valve) ?? []);
  if (kinds.length === 0) return null;
  const fitted = fittedLengths(state);
  const ordered = pushrodAnswer(state)?.taken.lengths.map(({ lengthMm }) => lengthMm) ?? [];
  return {
    jobId: state.jobId,
    name: setUp.name,
    at: Math.max(...state.readings.map(({ at }) => at)),
    kinds,
    lengthsMm: fitted.length > 0 ? fitted : ordered,
    fitted: fitted.length > 0,
  };
}

function kindOf(state: JobState, valve: ValveKind): KindLengths | null {
  const valves = choosable(state).valves.filter(({ id }) => id.valve === valve);
  if (valves.length === 0) return null;
  const mean = (of: (one: (typeof valves)[number]) => number) =>
    valves.reduce((sum, one) => sum + of(one), 0) / valves.length;
  return {
    valve,
    zeroLashMm: mean(({ testLengthMm, preload }) => testLengthMm - preload.preloadMm),
    targetMm: mean(({ window }) => targetPreloadMm(window)),
    ownMm: rootSumOfSquares(...valves.map(({ preload }) => preload.ownMm)) / valves.length,
    commonMm: mean(({ preload }) => preload.commonMm),
    valves: valves.length,
  };
}

function fittedLengths(state: JobState): readonly number[] {
  const setUp = setUpOf(state);
  if (setUp === null || state.round.purpose !== 'final check') return [];
  const lengths = setUp.scope.flatMap((valve) => {
    const length = pushrodFor(state, valve);
    return length === null ? [] : (lengthIn(setUp, length) ?? []);
  });
  return [...new Set(lengths)].toSorted((a, b) => a - b);
}
