import type { Cue } from '#counting';

/** The cues of the bench, and the tones that tell what letting go of a held pedal would do. */
export type Tick = Cue | 'hold next stage' | 'hold take back' | 'hold nothing';

/** One sound of a tick. */
export interface Note {
  readonly hz: number;
  /** Where the pitch glides to; absent for a level note. */
  readonly toHz?: number;
  readonly ms: number;
  /** Silence before it, ms. */
  readonly afterMs: number;
  readonly wave: 'square' | 'triangle';
  /** 0 to 1. Square carries further than triangle at the same peak, so it is set lower. */
  readonly loudness: number;
}

const square = (hz: number, ms: number, afterMs = 0): Note => ({
  hz,
  ms,
  afterMs,
  wave: 'square',
  loudness: 0.45,
});
const triangle = (hz: number, ms: number, afterMs = 0): Note => ({
  hz,
  ms,
  afterMs,
  wave: 'triangle',
  loudness: 0.9,
});
const glide = (note: Note, toHz: number): Note => ({ ...note, toHz });

/**
 * Every tick as notes. Counts climb: short of the window low, in it higher, past it highest; with no
 * window between. Entering rises, leaving falls. All lie in 600-2400 Hz, where small speakers are
 * loudest, and clear of a shop's own rumble.
 */
export const TICKS: Readonly<Record<Tick, readonly Note[]>> = {
  short: [square(740, 45)],
  in: [square(1245, 45)],
  past: [square(2093, 45)],
  plain: [triangle(988, 45)],
  enter: [square(740, 30), square(1245, 40, 5)],
  leave: [square(1661, 30), square(932, 40, 5)],
  zero: [triangle(1568, 75)],
  seat: [square(622, 75)],
  unproven: [square(622, 40), square(1397, 30, 10), square(622, 30, 10)],
  landing: [triangle(2349, 25)],
  soft: [{ ...triangle(988, 20), loudness: 0.4 }],
  back: [glide(triangle(1760, 75), 880)],
  missed: [square(622, 20), square(622, 20, 25)],
  refused: [glide(square(932, 110), 622)],
  'hold next stage': [triangle(880, 45), triangle(1760, 60, 10)],
  'hold take back': [triangle(1760, 45), triangle(880, 60, 10)],
  'hold nothing': [triangle(622, 140)],
};

/** How long a tick lasts, ms. */
export function tickMs(tick: Tick): number {
  return TICKS[tick].reduce((sum, { ms, afterMs }) => sum + ms + afterMs, 0);
}
