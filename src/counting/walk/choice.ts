import {
  type CamCard,
  camProblems,
  DEFAULT_MARGIN_DEG,
  hasRefusal,
  type SeatTiming,
  type StopWish,
  seatTiming,
  type WalkMethod,
} from '#valvetrain';

/** How the builder walks the crank. `at` and `prefer` bear on the fewest stops only. */
export interface WalkChoice {
  readonly method: WalkMethod;
  /** Wanted off either ramp, crank degrees. */
  readonly marginDeg: number;
  readonly at: NonNullable<StopWish['at']>;
  readonly prefer: NonNullable<StopWish['prefer']>;
}

/** Where nothing is said: one position a cylinder, both its valves counted at its firing TDC. */
export const usualWalk: WalkChoice = {
  method: 'firing order',
  marginDeg: DEFAULT_MARGIN_DEG,
  at: 'TDCs',
  prefer: 'most margin',
};

/** The walk a set-up asks for. */
export function walkChoiceOf({ walk }: { readonly walk?: WalkChoice }): WalkChoice {
  return walk ?? usualWalk;
}

/** The cam card of a set-up; without one the cam is not known. */
export function camCardOf({ cam }: { readonly cam?: CamCard }): CamCard {
  return cam ?? { form: 'not known' };
}

/**
 * Seat timing the walk rests on. A card that can't be, which only a file from elsewhere can bring, is
 * taken for a cam nobody knows.
 */
export function timingOf(setUp: { readonly cam?: CamCard }): SeatTiming {
  const card = camCardOf(setUp);
  return seatTiming(hasRefusal(camProblems(card)) ? { form: 'not known' } : card);
}
