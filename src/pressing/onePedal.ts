import type { HoldReached, Press, PressCue } from './press';
import { DEBOUNCE_MS, HOLD_LIMIT_MS, NEXT_STAGE_MS, TAKE_BACK_MS } from './timings';

/** The pedal, down. */
export interface Hold {
  readonly code: string;
  readonly downAt: number;
  /** The last threshold told by a cue; null while letting go is still a tap. */
  readonly reached: HoldReached | null;
  /** Set while a very short press waits to see whether the contact only bounced. */
  readonly upAt: number | null;
}

/** The pedal after one event. */
export interface HoldOutcome {
  readonly hold: Hold | null;
  readonly presses: readonly Press[];
  readonly cues: readonly PressCue[];
}

/** Milliseconds at which the screen is told of 'nothing': just past the limit, which still counts. */
const PAST_LIMIT_MS = HOLD_LIMIT_MS + 1;

/** What letting go after `heldMs` does; null is a tap. */
export function reachedAfter(heldMs: number): HoldReached | null {
  if (heldMs > HOLD_LIMIT_MS) return 'nothing';
  if (heldMs >= TAKE_BACK_MS) return 'take back';
  if (heldMs >= NEXT_STAGE_MS) return 'next stage';
  return null;
}

function pressesOf(reached: HoldReached | null): readonly Press[] {
  switch (reached) {
    case null:
      return [{ kind: 'step', times: 1 }];
    case 'next stage':
      return [{ kind: 'next stage' }];
    case 'take back':
      return [{ kind: 'take back' }];
    case 'nothing':
      return [];
    default: {
      const never: never = reached;
      return never;
    }
  }
}

/** Ends a hold without a press. */
export function dropHold(hold: Hold | null): HoldOutcome {
  const told = hold !== null && hold.reached !== null;
  return { hold: null, presses: [], cues: told ? [{ kind: 'hold ended' }] : [] };
}

function letGo(hold: Hold, at: number): HoldOutcome {
  return { ...dropHold(hold), presses: pressesOf(reachedAfter(at - hold.downAt)) };
}

/**
 * The pedal goes down. Within the debounce of its own short press it was never up. A second down
 * while it is held means the key-up was lost: when it was let go is unknown, so the old hold does
 * nothing and a new one begins.
 */
export function holdDown(hold: Hold | null, code: string, at: number): HoldOutcome {
  if (hold !== null && Math.abs(at - hold.downAt) < DEBOUNCE_MS) {
    return { hold: { ...hold, code, upAt: null }, presses: [], cues: [] };
  }
  return { ...dropHold(hold), hold: { code, downAt: at, reached: null, upAt: null } };
}

/** The pedal comes up: the time held decides. A press shorter than the debounce settles first. */
export function holdUp(hold: Hold | null, code: string, at: number): HoldOutcome {
  if (hold === null || hold.code !== code) return { hold, presses: [], cues: [] };
  if (at - hold.downAt < DEBOUNCE_MS) return { hold: { ...hold, upAt: at }, presses: [], cues: [] };
  return letGo(hold, at);
}

/** Time passes while the pedal is held: tells each threshold once. */
export function holdTime(hold: Hold | null, at: number): HoldOutcome {
  if (hold === null) return { hold, presses: [], cues: [] };
  if (hold.upAt !== null) {
    return at - hold.downAt >= DEBOUNCE_MS
      ? letGo(hold, hold.upAt)
      : { hold, presses: [], cues: [] };
  }
  const reached = reachedAfter(at - hold.downAt);
  if (reached === null || reached === hold.reached) return { hold, presses: [], cues: [] };
  return { hold: { ...hold, reached }, presses: [], cues: [{ kind: 'hold', reached }] };
}

/** When the hold next changes by itself. */
export function holdWakeAt(hold: Hold | null): number | undefined {
  if (hold === null) return undefined;
  if (hold.upAt !== null) return hold.downAt + DEBOUNCE_MS;
  switch (hold.reached) {
    case null:
      return hold.downAt + NEXT_STAGE_MS;
    case 'next stage':
      return hold.downAt + TAKE_BACK_MS;
    case 'take back':
      return hold.downAt + PAST_LIMIT_MS;
    case 'nothing':
      return undefined;
    default: {
      const never: never = hold.reached;
      return never;
    }
  }
}
