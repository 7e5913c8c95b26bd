/** A stretch of sound that may be speech; frames of 10 ms, counted from the stream's start. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What one more frame brings. */
export type EndpointEvent =
  | { readonly type: 'began'; readonly at: number }
  /** It went on too long to be a phrase. */
  | { readonly type: 'too long'; readonly at: number }
  /** It may have ended: silence so far, not yet enough of it. */
  | { readonly type: 'pausing'; readonly stretch: Stretch }
  | { readonly type: 'ended'; readonly stretch: Stretch };

/** Plain data: a fold over the levels of frames. */
export interface EndpointState {
  readonly frame: number;
  /** Levels of the last frames, newest last, for the floor. */
  readonly recent: readonly number[];
  /** The last few, for the median. */
  readonly few: readonly number[];
  /** Frames in a row above the threshold. */
  readonly above: number;
  readonly speech: {
    readonly from: number;
    readonly peak: number;
    /** The floor as it was when speech began: speech itself would raise it. */
    readonly floor: number;
    readonly lastLoud: number;
    readonly tooLong: boolean;
  } | null;
}

/** Frames are this long, ms. */
export const FRAME_MS = 10;

const MEDIAN_OF = 5;
const FLOOR_OVER = 150;
const FLOOR_PART = 0.2;
/** Quieter than this is no floor: what is left after denoising can be next to nothing, dBFS. */
const LOWEST_FLOOR_DB = -72;
const ON_DB = 12;
const ON_FRAMES = 8;
const OFF_DB = 8;
const BELOW_PEAK_DB = 30;
/** Silence that ends a phrase. */
const HANG = 22;
/** Silence after which it may be over: time to make a start on what it was. */
const PAUSING = 12;
const PRE = 15;
const POST = 8;
/** The longest phrase there is takes less. */
export const LONGEST_FRAMES = 350;

/** At the start of a stream. */
export const endpointStart: EndpointState = {
  frame: 0,
  recent: [],
  few: [],
  above: 0,
  speech: null,
};

/**
 * One more frame, by its level after denoising and the room's before it, dBFS. What is quieter than
 * the room is not told from it: just after a word the denoiser lets the room through.
 */
export function endpoint(
  before: EndpointState,
  levelDb: number,
  roomDb: number,
): { readonly state: EndpointState; readonly event: EndpointEvent | null } {
  const few = [...before.few, levelDb].slice(-MEDIAN_OF);
  const recent = [...before.recent, levelDb].slice(-FLOOR_OVER);
  const level = median(few);
  const state: EndpointState = { ...before, frame: before.frame + 1, few, recent };
  return before.speech === null ? waiting(state, level, roomDb) : speaking(state, level, roomDb);
}

/** The level between sounds: a fifth of these are quieter, dBFS. */
export function quietOf(levels: readonly number[]): number {
  const sorted = [...levels].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length * FLOOR_PART)] ?? LOWEST_FLOOR_DB;
}

/** The level of what sounded among these: a fifth are louder, dBFS. */
export function loudOf(levels: readonly number[]): number {
  return -quietOf(levels.map((level) => -level));
}

const floorOf = ({ recent }: EndpointState) => Math.max(LOWEST_FLOOR_DB, quietOf(recent));

type Stepped = ReturnType<typeof endpoint>;

function waiting(state: EndpointState, level: number, roomDb: number): Stepped {
  const floor = floorOf(state);
  const above = level > Math.max(floor + ON_DB, roomDb) ? state.above + 1 : 0;
  if (above < ON_FRAMES) return { state: { ...state, above }, event: null };
  const began = state.frame - ON_FRAMES - Math.floor(MEDIAN_OF / 2);
  const from = Math.max(0, began - PRE);
  const speech = { from, peak: level, floor, lastLoud: state.frame, tooLong: false };
  return {
    state: { ...state, above: 0, speech },
    event: { type: 'began', at: Math.max(0, began) },
  };
}

function speaking(state: EndpointState, level: number, roomDb: number): Stepped {
  const { speech } = state;
  if (speech === null) return { state, event: null };
  const peak = Math.max(speech.peak, level);
  const loud = level > Math.max(speech.floor + OFF_DB, peak - BELOW_PEAK_DB, roomDb);
  const lastLoud = loud ? state.frame : speech.lastLoud;
  const now = { ...speech, peak, lastLoud };
  const quietFor = state.frame - lastLoud;
  const stretch = { from: speech.from, to: lastLoud - Math.floor(MEDIAN_OF / 2) + POST };
  if (quietFor >= HANG) {
    return {
      state: { ...state, speech: null },
      event: now.tooLong ? null : { type: 'ended', stretch },
    };
  }
  if (quietFor === PAUSING && !now.tooLong) {
    return { state: { ...state, speech: now }, event: { type: 'pausing', stretch } };
  }
  const long = state.frame - speech.from > LONGEST_FRAMES;
  if (!long) return { state: { ...state, speech: now }, event: null };
  // The room may have become louder for good: what is loud is judged by the room as it now is.
  const adapted = { ...now, floor: Math.max(speech.floor, floorOf(state)), tooLong: true };
  return {
    state: { ...state, speech: adapted },
    event: speech.tooLong ? null : { type: 'too long', at: state.frame },
  };
}

function median(levels: readonly number[]): number {
  const sorted = [...levels].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
