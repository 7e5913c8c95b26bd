import type { PushrodLength, Turn48, ValveId, ValveKind } from '#valvetrain';
import type { By, RoundPurpose } from './events';
import type { LandingWord } from './landing';
import type { JobNotes } from './notes';
import type { SetUp } from './setUp';

/** How an absolute count was given: a bare number, with its unit, or by whole turns. */
export type CallForm = 'bare' | 'turns';

export type AskedFor = 'again' | 'where' | 'how sure' | 'left' | 'summary';

export type CommandBody =
  | {
      readonly type: 'openJob';
      readonly jobId: string;
      readonly setUp: SetUp;
      readonly app: { readonly version: string; readonly commit: string };
    }
  | { readonly type: 'changeSetUp'; readonly setUp: SetUp; readonly appliesTo: 'all' | 'from here' }
  | { readonly type: 'startRound'; readonly purpose: RoundPurpose }
  | {
      readonly type: 'fitPushrod';
      readonly length: PushrodLength | null;
      readonly valves?: readonly ValveId[];
    }
  /** Plunger travel off a dial indicator, mm, in place of a count. */
  | { readonly type: 'readDial'; readonly valve: ValveId; readonly travelMm: number }
  | { readonly type: 'cautionsHeard' }
  | { readonly type: 'pushrodsLoose' }
  | { readonly type: 'handsClear' }
  | { readonly type: 'crankThere' }
  /** The crank was turned past where it was sent. */
  | { readonly type: 'overshot' }
  /** Whatever the bench does next: the one pedal's hold. */
  | { readonly type: 'advance' }
  /** Neither named: the next valve of the walk, or one without a name. */
  | { readonly type: 'chooseValve'; readonly cylinder?: number; readonly valve?: ValveKind }
  | { readonly type: 'loosening' }
  | { readonly type: 'zero' }
  /** A spoken or keyed count: the count itself, 48ths of a turn (C1). */
  | { readonly type: 'call'; readonly to48: Turn48; readonly form: CallForm }
  /** One more step, or half a quarter (C2). */
  | { readonly type: 'step'; readonly size: 'step' | 'half quarter' }
  /** A position within the turn, 12 to 48 (C3). */
  | { readonly type: 'positionInTurn'; readonly within48: Turn48 }
  /** The mark's place on the clock, 0 (twelve) to 47 (C4). */
  | { readonly type: 'clock'; readonly mark48: Turn48 }
  | { readonly type: 'seat'; readonly loose: boolean }
  /** Answers 'how far?'. `of48` is the mark named with it ('just shy of five'). */
  | { readonly type: 'land'; readonly word: LandingWord; readonly of48?: Turn48 }
  | { readonly type: 'next'; readonly cylinder: boolean }
  | { readonly type: 'skip' }
  | { readonly type: 'restart' }
  | { readonly type: 'repeat' }
  | {
      readonly type: 'moveReading';
      readonly cylinder?: number;
      readonly valve?: ValveKind | 'other';
    }
  | { readonly type: 'nameReading'; readonly reading: number; readonly valve: ValveId }
  | { readonly type: 'torqued' }
  | { readonly type: 'hold' }
  | { readonly type: 'carryOn' }
  | { readonly type: 'takeBack' }
  /** Speech overlapped the app's own voice (C9). */
  | { readonly type: 'doubt' }
  | { readonly type: 'ask'; readonly about: AskedFor }
  /** All of the notes anew. */
  | { readonly type: 'note'; readonly notes: JobNotes }
  | { readonly type: 'discard' }
  | { readonly type: 'restore' };

export type CommandType = CommandBody['type'];

/** The utterance a spoken command came from. */
export interface Utterance {
  readonly id: string;
  /** Wall clock at its first sound, ms: commands are judged by when they began (C11). */
  readonly beganAt: number;
}

/** A command with its clock: `at` is the wall clock in ms since 1970; decide has no other. */
export type Command = CommandBody & {
  readonly at: number;
  readonly by: By;
  readonly utterance?: Utterance;
};
