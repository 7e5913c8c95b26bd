import type { PushrodLength, Turn48, ValveId } from '#valvetrain';
import type { LandingAnswer } from './landing';
import type { JobNotes } from './notes';
import type { SetUp } from './setUp';

/** Which hand gave the command: shown in the log, never used to judge it. */
export type By = 'voice' | 'key' | 'pedal' | 'touch' | 'app';

/** Counting the fastener down from zero lash, or loosening it back to first play. */
export type Direction = 'on' | 'off';

/** What a round of readings is for. */
export type RoundPurpose = 'measure' | 'final check';

/** A place where the crank stands so that some valves may be counted. */
export interface CrankPosition {
  /** Crank degrees from firing TDC of the first cylinder in the order, 0 to 720; null with no engine. */
  readonly angleDeg: number | null;
  /** The cylinder at firing TDC here; null when the position is not a firing TDC. */
  readonly cylinder: number | null;
  /** The valves that may be counted here, in counting order. */
  readonly valves: readonly ValveId[];
}

/** How a count was given. Only a press is never asked back. */
export type CountedBy = 'number' | 'press' | 'turns' | 'position' | 'clock';

/** What was asked back, open until answered, refused or lapsed. */
export type Question =
  | {
      readonly about: 'count';
      readonly why: 'goes back' | 'jumps' | 'position' | 'clock' | 'began before the seat' | 'grew';
      readonly counted48: Turn48;
      /** The counts it may be; the same value again takes it. */
      readonly options: readonly Turn48[];
      readonly by: CountedBy;
    }
  | { readonly about: 'zero'; readonly counted48: Turn48 }
  | { readonly about: 'seat'; readonly counted48: Turn48; readonly loose: boolean };

export type EventBody =
  | {
      readonly type: 'jobOpened';
      readonly setUp: SetUp;
      readonly app: { readonly version: string; readonly commit: string };
    }
  | {
      readonly type: 'setupChanged';
      readonly setUp: SetUp;
      /** Whether readings already taken are figured anew, or keep the set-up they were taken on. */
      readonly appliesTo: 'all' | 'from here';
    }
  | { readonly type: 'roundStarted'; readonly number: number; readonly purpose: RoundPurpose }
  | {
      readonly type: 'pushrodFitted';
      readonly length: PushrodLength | null;
      /** The valves it was fitted for; all where absent. */
      readonly valves?: readonly ValveId[];
    }
  | { readonly type: 'cautionsHeard' }
  | { readonly type: 'handsClear'; readonly position: CrankPosition }
  | { readonly type: 'positionReached'; readonly position: CrankPosition; readonly valve: ValveId }
  /** The crank went past the position; it goes round again to it. */
  | { readonly type: 'overshot'; readonly position: CrankPosition; readonly valve: ValveId }
  | {
      readonly type: 'valveChosen';
      /** Null: a valve counted before it has a name. */
      readonly valve: ValveId | null;
      readonly direction: Direction;
      /** The position it needs, when the crank is not there yet. */
      readonly heading: CrankPosition | null;
    }
  | { readonly type: 'valveNamed'; readonly reading: number; readonly valve: ValveId }
  | { readonly type: 'zeroTouched' }
  | { readonly type: 'counted'; readonly to48: Turn48; readonly how: CountedBy }
  | { readonly type: 'doubted' }
  | { readonly type: 'askedBack'; readonly question: Question }
  | {
      readonly type: 'seated';
      /** Counting off, the seat is where the count starts. */
      readonly loose: boolean;
    }
  | { readonly type: 'landed'; readonly answer: LandingAnswer }
  | { readonly type: 'restarted'; readonly atZero: boolean }
  | { readonly type: 'repeatStarted'; readonly valve: ValveId | null }
  | {
      readonly type: 'readingMoved';
      /** A reading's seq, or the valve open now. */
      readonly reading: number | 'open';
      readonly to: ValveId;
    }
  | {
      readonly type: 'valveLeft';
      /** The valve left, or passed over before the crank was there; null when it has no name. */
      readonly valve: ValveId | null;
      readonly skipped: boolean;
      /** The valve taken up next at the same crank position. */
      readonly next: ValveId | null;
    }
  /** Plunger travel read off a dial indicator, in place of a count. */
  | { readonly type: 'dialRead'; readonly valve: ValveId; readonly travelMm: number }
  | { readonly type: 'torqued'; readonly reading: number }
  | { readonly type: 'bledDown' }
  | { readonly type: 'held' }
  | { readonly type: 'resumed' }
  | { readonly type: 'takenBack'; readonly undoes: number }
  | { readonly type: 'noted'; readonly notes: JobNotes }
  | { readonly type: 'jobDiscarded' }
  | { readonly type: 'jobRestored' };

export type EventType = EventBody['type'];

/** The newest shape of every event type. Older shapes are lifted when a log is read. */
export const EVENT_VERSION = 1;

export interface Envelope {
  readonly jobId: string;
  /** Order in the job's log, from 1. Time never orders events. */
  readonly seq: number;
  readonly v: number;
  /** Wall clock of the command, ms since 1970. */
  readonly at: number;
  readonly by: By;
  /** The utterance it came from, so that a growing one can replace its own count. */
  readonly utterance?: string;
}

/** One thing that happened on the bench. */
export type JobEvent = Envelope & EventBody;

/** What take-back may undo; the rest are questions, notes and acknowledgements. */
export const UNDOABLE: ReadonlySet<EventType> = new Set<EventType>([
  'setupChanged',
  'roundStarted',
  'pushrodFitted',
  'positionReached',
  'overshot',
  'valveChosen',
  'valveNamed',
  'zeroTouched',
  'counted',
  'seated',
  'landed',
  'restarted',
  'repeatStarted',
  'readingMoved',
  'dialRead',
  'valveLeft',
  'torqued',
]);
