import { type PushrodLength, sameValve, type Turn48, type ValveId } from '#valvetrain';
import type {
  CountedBy,
  CrankPosition,
  Direction,
  JobEvent,
  Question,
  RoundPurpose,
} from './events';
import { type JobNotes, noNotes } from './notes';
import type { Reading } from './readings';
import type { SetUp } from './setUp';

/** Where the open valve stands between being chosen and being read. */
export type ValvePhase = 'to start' | 'counting' | 'landing' | 'read';

/** The valve being counted now. */
export interface OpenValve {
  readonly valve: ValveId | null;
  readonly direction: Direction;
  readonly phase: ValvePhase;
  /** Counted since zero (on) or since it left its stand (off), 48ths of a turn. */
  readonly count48: Turn48;
  /** How the last count was given; null before the first. */
  readonly lastHow: CountedBy | null;
  /** Speech that overlapped the app's own voice may have held a count. */
  readonly doubtful: boolean;
  /** The last reading of this valve in this round, which this count repeats. */
  readonly repeatOf: number | null;
  /** The reading made when it ended. */
  readonly reading: number | null;
  /** When the count ended, ms since 1970: a count that began before is asked. */
  readonly endedAt: number | null;
}

export interface SetUpVersion {
  readonly seq: number;
  readonly setUp: SetUp;
}

export interface Asked {
  readonly seq: number;
  readonly at: number;
  readonly question: Question;
}

export interface Crank {
  /** Where it stands, once the builder has said so. */
  readonly at: CrankPosition | null;
  /** Where it goes next when the builder chose it; null: the walk decides. */
  readonly heading: CrankPosition | null;
  /** The valve that was asked for there. */
  readonly headingValve: ValveId | null;
  /** 'Hands clear' has been answered for the coming turn. */
  readonly handsClear: boolean;
  /** A lifter has been pressed in since the crank last moved, and is not known to have bled down. */
  readonly loaded: boolean;
  /** It stands just past `at`, which was overshot. */
  readonly overshot: boolean;
}

/** An event that can be taken back, with the state before it and what came after that stays. */
export interface Past {
  readonly event: JobEvent;
  readonly before: JobState;
  readonly since: readonly JobEvent[];
}

/** A job as its log tells it. A fold over events: nothing here is kept anywhere else. */
export interface JobState {
  readonly jobId: string;
  readonly seq: number;
  readonly status: 'not opened' | 'open' | 'discarded';
  readonly setUps: readonly SetUpVersion[];
  readonly notes: JobNotes;
  readonly round: { readonly number: number; readonly purpose: RoundPurpose };
  /** The pushrod fitted, where no valve has one of its own. */
  readonly pushrod: PushrodLength | null;
  /** Valves with another pushrod than the rest: those of a final check. */
  readonly fitted: readonly { readonly valve: ValveId; readonly length: PushrodLength | null }[];
  /** The newest round that measures: what a final check is held against. */
  readonly measured: number;
  readonly cautionsHeard: boolean;
  readonly crank: Crank;
  readonly open: OpenValve | null;
  readonly readings: readonly Reading[];
  /** Valves passed over in this round; they come back at the end. */
  readonly skipped: readonly ValveId[];
  readonly asked: Asked | null;
  readonly held: boolean;
  readonly past: Past | null;
}

export const initial: JobState = {
  jobId: '',
  seq: 0,
  status: 'not opened',
  setUps: [],
  notes: noNotes,
  round: { number: 1, purpose: 'measure' },
  pushrod: null,
  fitted: [],
  measured: 1,
  cautionsHeard: false,
  crank: {
    at: null,
    heading: null,
    headingValve: null,
    handsClear: false,
    loaded: false,
    overshot: false,
  },
  open: null,
  readings: [],
  skipped: [],
  asked: null,
  held: false,
  past: null,
};

/** The set-up in force; null before the job is opened. */
export function setUpOf(state: JobState): SetUp | null {
  return state.setUps.at(-1)?.setUp ?? null;
}

/** The set-up a reading is figured on. */
export function setUpAt(state: JobState, seq: number): SetUp | null {
  return state.setUps.find((version) => version.seq === seq)?.setUp ?? null;
}

/** The pushrod a valve has now. */
export function pushrodFor(state: JobState, valve: ValveId | null): PushrodLength | null {
  const own = state.fitted.find((one) => valve !== null && sameValve(one.valve, valve));
  return own === undefined ? state.pushrod : own.length;
}

/** The reading with this name; undefined when it was taken back. */
export function readingById(state: JobState, id: number): Reading | undefined {
  return state.readings.find((reading) => reading.id === id);
}
