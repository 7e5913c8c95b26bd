import { sameValve, type ValveId } from '#valvetrain';
import { stageOf } from '../allowed';
import type { CrankPosition } from '../events';
import { orderTold } from '../order/orderTold';
import { type JobState, setUpOf } from '../state';
import { engineSummary } from '../summary';
import { distrusted } from '../sure/distrusted';
import { nextStop, nextValveHere, samePosition, valvesWanted, walkOf } from '../walk';
import type { Fact } from './announcement';
import { offBaseFact } from './offBaseTold';

/**
 * What the bench asks for next on coming to this state; null where the builder's own next act needs
 * no asking. Not for a resume or a take-back: the crank is never told to turn after those.
 */
export function promptFor(state: JobState, before: JobState): Fact | null {
  const stage = stageOf(state);
  switch (stage) {
    case 'cautions':
      return { kind: 'cautions' };
    case 'pushrods loose':
      return { kind: 'pushrods loose?' };
    case 'hands clear':
    case 'turning':
      return crankFact(state, stage);
    case 'choose valve':
      return state.crank.at === null
        ? null
        : {
            kind: 'valve',
            valve: nextValveHere(state) ?? null,
            direction: 'on',
            sameCylinder: alone(state.crank.at),
            repeat: false,
            ...checkingOf(state),
          };
    case 'to start':
      return valveFact(state, before);
    case 'all read':
      return {
        kind: 'all read',
        summary: engineSummary(state),
        order: orderTold(state),
        distrusted: distrusted(state),
        ...offBaseFact(state),
      };
    case 'not opened':
    case 'discarded':
    case 'held':
    case 'counting':
    case 'landing':
    case 'read':
      return null;
    default: {
      const never: never = stage;
      return never;
    }
  }
}

function crankFact(state: JobState, stage: 'hands clear' | 'turning'): Fact | null {
  const stop = nextStop(state);
  const setUp = setUpOf(state);
  if (stop === null || setUp === null) return null;
  const walk = walkOf(setUp);
  const { position, turnDeg, companion, proof, again, first } = stop;
  const place = {
    position,
    index: walk.findIndex((other) => samePosition(other, position)) + 1,
    of: walk.length,
    ...(alone(position) ? {} : { count: wantedAt(state, position) }),
    ...(again ? { again } : {}),
  };
  if (stage === 'hands clear') return { kind: 'hands clear?', ...place };
  return {
    kind: 'turn crank',
    ...place,
    turnDeg,
    companion,
    ...(proof === null || companion !== null ? {} : { proof }),
    ...(first === null ? {} : { first }),
  };
}

/** The valves still wanted of a position, or the one that was asked for there. */
function wantedAt(state: JobState, { valves }: CrankPosition): readonly ValveId[] {
  const wanted = valvesWanted(state);
  const left = valves.filter((valve) => wanted.some((other) => sameValve(other, valve)));
  const asked = state.crank.headingValve;
  return left.length > 0 || asked === null ? left : [asked];
}

/** Whether a position has the valves of one cylinder only. */
function alone({ valves }: CrankPosition): boolean {
  return valves.every(({ cylinder }) => cylinder === valves[0]?.cylinder);
}

function valveFact(state: JobState, before: JobState): Fact | null {
  const { open } = state;
  if (open === null) return null;
  const was = before.open?.valve ?? before.readings.at(-1)?.valve ?? null;
  return {
    kind: 'valve',
    valve: open.valve,
    direction: open.direction,
    sameCylinder: before.open !== null && was !== null && was.cylinder === open.valve?.cylinder,
    repeat: open.repeatOf !== null,
    ...checkingOf(state),
  };
}

/** Marks a fact of a job counted on a checking pushrod. */
export function checkingOf(state: JobState): { readonly checking?: true } {
  return setUpOf(state)?.checking === undefined ? {} : { checking: true };
}
