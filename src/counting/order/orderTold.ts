import type { GroupLabel, Scheme, Turn48, ValveId } from '#valvetrain';
import type { JobState } from '../state';
import { finalCheck } from './finalCheck';
import { pushrodAnswer } from './pushrodAnswer';
import { groupStops } from './stops';

/** What the readings come to, for saying in one breath. Lengths mm. */
export type OrderTold =
  | {
      readonly kind: 'lengths';
      readonly scheme: Scheme;
      /** A length for each group of valves, or for so many valves. */
      readonly lengths: readonly {
        readonly label: GroupLabel | null;
        readonly lengthMm: number | null;
        readonly valves: number;
      }[];
      readonly fits: number;
      readonly of: number;
      /** Valves it does not make usable. */
      readonly failing: readonly ValveId[];
    }
  /** Adjustable rockers: nothing is bought. */
  | {
      readonly kind: 'stops';
      readonly stops: readonly { readonly group: string; readonly count48: Turn48 }[];
    }
  /** A final check. */
  | {
      readonly kind: 'final';
      readonly agree: number;
      readonly of: number;
      readonly differ: readonly ValveId[];
    };

/** Null while the readings come to nothing. */
export function orderTold(state: JobState): OrderTold | null {
  if (state.round.purpose === 'final check') return finalTold(state);
  const stops = groupStops(state);
  if (stops.length > 0) {
    return {
      kind: 'stops',
      stops: stops.map(({ group, stop }) => ({ group, count48: stop.count48 })),
    };
  }
  const answer = pushrodAnswer(state);
  if (answer === null) return null;
  const { scheme, groups, lengths, usable, of, valves } = answer.taken;
  return {
    kind: 'lengths',
    scheme,
    lengths:
      groups.length > 0
        ? groups.map(({ label, lengthMm, pools }) => ({
            label,
            lengthMm,
            valves: pools.reduce((sum, pool) => sum + pool.valves.length, 0),
          }))
        : lengths.map((share) => ({
            label: null,
            lengthMm: share.lengthMm,
            valves: share.valves.length,
          })),
    fits: usable,
    of,
    failing: valves.flatMap((valve) => (valve.usable ? [] : [valve.id])),
  };
}

function finalTold(state: JobState): OrderTold | null {
  const judged = finalCheck(state).filter(({ agreement }) => agreement !== null);
  if (judged.length === 0) return null;
  const differ = judged.flatMap(({ agreement, line }) => (agreement?.agrees ? [] : [line.valve]));
  return { kind: 'final', agree: judged.length - differ.length, of: judged.length, differ };
}
