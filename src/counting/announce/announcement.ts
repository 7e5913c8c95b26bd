import type { Agreement, Proof, Remedy, Turn48, ValveId } from '#valvetrain';
import type { Stage } from '../allowed';
import type { CrankPosition, Direction, EventType, Question, RoundPurpose } from '../events';
import type { Figures } from '../figures';
import type { LandingAnswer } from '../landing';
import type { OrderTold } from '../order/orderTold';
import type { Refusal } from '../refusals';
import type { CylinderSummary, EngineSummary } from '../summary';
import type { Distrusted } from '../sure/distrusted';
import type { Compared } from '../sure/standingFigure';

/** Where the builder stands, for 'where am I', after a take-back and after a rest. */
export interface Standing {
  readonly stage: Stage;
  readonly valve: ValveId | null;
  readonly direction: Direction;
  readonly count48: Turn48;
  readonly figures: Figures | null;
  readonly position: CrankPosition | null;
}

/** A valve read more than once: the mean that stands, and how its readings agree. */
export interface Repeated {
  readonly figures: Figures;
  /** Readings in the mean. */
  readonly readings: number;
  /** The worst judgement made; null where none can be. */
  readonly compared: Compared | null;
}

/** A valve of a final check: what was predicted for it, mm, and whether what is found agrees. */
export interface Foretold {
  readonly preloadMm: number;
  readonly agreement: Agreement;
}

/** Why an ear is as it is, where its state alone does not say. */
export type EarWhy =
  /** The builder shut it, or never opened it. */
  | 'asked'
  /** Sound would leave the device and the builder has not agreed to that. */
  | 'notice'
  | 'too loud'
  | 'not here'
  | 'denied'
  | 'no microphone'
  | 'service refused'
  | 'network'
  /** The service was asked to start and nothing came. */
  | 'no answer'
  /** It hears that someone speaks and never says what. */
  | 'no results'
  | 'keeps ending'
  | 'language'
  /** The ear's own files can't be loaded, or are not what was built. */
  | 'no model'
  | 'model damaged'
  /** Open all the same: the room has become too noisy for it, or quiet enough again. */
  | 'room louder'
  | 'room quieter'
  | 'unknown';

/** How a sound check ended: what to do in this room with this voice. */
export type SoundVerdict =
  | 'good'
  /** Usable with the carrier word. */
  | 'carrier'
  /** Too noisy, or too little understood: the pedal. */
  | 'pedal'
  | 'nothing heard';

/** What is said in a sound check. */
export type SoundCheckStep =
  | SoundVerdict
  | 'quiet'
  | 'count'
  /** A command to say after it. */
  | { readonly command: string };

/** Where the ear hears: by the browser's own recognition, or by the app's, which needs no network. */
export type EarKind = 'browser' | 'offline';

/** What there is to tell: facts, no words. Text is made of it in one place, the words. */
export type Fact =
  | { readonly kind: 'job opened'; readonly name: string }
  | { readonly kind: 'cautions' }
  | {
      readonly kind: 'hands clear?';
      readonly position: CrankPosition;
      readonly index: number;
      readonly of: number;
      /** What is still to be counted there, where the cylinder does not say it. */
      readonly count?: readonly ValveId[];
      /** It was overshot: the crank goes round to it again. */
      readonly again?: true;
    }
  /** The only instruction to turn the crank there is. */
  | {
      readonly kind: 'turn crank';
      readonly position: CrankPosition;
      readonly index: number;
      readonly of: number;
      readonly count?: readonly ValveId[];
      readonly turnDeg: number | null;
      /** Its valves cross there: the proof where there is no other. */
      readonly companion: number | null;
      /** What shows that the crank is there, where it is not the companion crossing. */
      readonly proof?: Proof;
      /** It was overshot: two whole turns. */
      readonly again?: true;
      /** A mark to bring the crank to first, and how far to turn from there. */
      readonly first?: { readonly proof: Proof; readonly turnDeg: number };
    }
  | { readonly kind: 'pushrods loose?' }
  | { readonly kind: 'pushrods loose' }
  | {
      readonly kind: 'valve';
      readonly valve: ValveId | null;
      readonly direction: Direction;
      readonly sameCylinder: boolean;
      readonly repeat: boolean;
      /** A checking pushrod is opened. */
      readonly checking?: true;
    }
  | { readonly kind: 'start'; readonly direction: Direction; readonly checking?: true }
  | {
      readonly kind: 'counted';
      readonly count48: Turn48;
      readonly figures: Figures;
      readonly verdictChanged: boolean;
    }
  | { readonly kind: 'still'; readonly count48: Turn48 }
  | { readonly kind: 'asked back'; readonly question: Question }
  | { readonly kind: 'doubted' }
  | { readonly kind: 'how far?'; readonly count48: Turn48; readonly checking?: true }
  | { readonly kind: 'tapped'; readonly count48: Turn48; readonly past48: Turn48 }
  | {
      readonly kind: 'read';
      readonly valve: ValveId | null;
      readonly count48: Turn48 | null;
      readonly landing: LandingAnswer | null;
      readonly figures: Figures;
      readonly repeat: number;
      /** Which of the round's valves that can't be told this one is, from 1; 0 where it is proven. */
      readonly unproven: number;
      /** What would settle most of them. */
      readonly settlesMost: Remedy['kind'] | null;
      /** Where it is not the only reading of its valve. */
      readonly repeated?: Repeated;
      /** In a final check, where anything was predicted. */
      readonly foretold?: Foretold;
      /** The first preload of the job: drag felt at zero makes the truth a little more. Told once. */
      readonly bias?: true;
    }
  /** Read by dial indicator. */
  | {
      readonly kind: 'dial read';
      readonly valve: ValveId;
      readonly figures: Figures;
      readonly repeated: Repeated | null;
      readonly foretold?: Foretold;
    }
  | { readonly kind: 'cylinder done'; readonly cylinder: CylinderSummary; readonly left: number }
  | {
      readonly kind: 'all read';
      readonly summary: EngineSummary;
      readonly order: OrderTold | null;
      readonly distrusted: readonly Distrusted[];
      /** Valves whose reading was taken off base circle. */
      readonly offBase?: readonly ValveId[];
    }
  | { readonly kind: 'skipped'; readonly valve: ValveId | null }
  | { readonly kind: 'restarted'; readonly atZero: boolean; readonly direction: Direction }
  | {
      readonly kind: 'moved';
      readonly from: ValveId | null;
      readonly to: ValveId;
      /** Degrees off its ramp where it was counted, when too few: nought or less, it was not shut. */
      readonly offBaseDeg?: number;
    }
  | { readonly kind: 'torqued'; readonly valve: ValveId | null }
  | {
      readonly kind: 'taken back';
      readonly undone: EventType | 'question';
      readonly undoneCount48: Turn48 | null;
      readonly standing: Standing;
      readonly checkCrank: boolean;
    }
  | { readonly kind: 'held'; readonly standing: Standing }
  | { readonly kind: 'back at'; readonly standing: Standing }
  | { readonly kind: 'where'; readonly standing: Standing }
  | {
      readonly kind: 'left';
      readonly left: readonly ValveId[];
      readonly skipped: readonly ValveId[];
    }
  | {
      readonly kind: 'summary';
      readonly summary: EngineSummary;
      readonly cylinders: readonly CylinderSummary[];
      readonly order: OrderTold | null;
      readonly distrusted: readonly Distrusted[];
      readonly offBase?: readonly ValveId[];
    }
  | {
      readonly kind: 'how sure';
      /** With the figures that stand for the valve: the mean of its readings. */
      readonly standing: Standing;
      readonly repeated: Repeated | null;
      /** Between valves: the round so far, and what would settle most of what can't be told. */
      readonly summary: EngineSummary;
      readonly settlesMost: Remedy['kind'] | null;
    }
  | {
      readonly kind: 'set-up changed';
      readonly appliesTo: 'all' | 'from here';
      readonly readings: number;
      /** Valves that the new timing finds counted off base circle. */
      readonly offBase?: readonly ValveId[];
    }
  | { readonly kind: 'round started'; readonly purpose: RoundPurpose }
  | {
      readonly kind: 'pushrod fitted';
      readonly lengthMm: number | null;
      /** Fitted for so many valves only. */
      readonly valves?: number;
    }
  | { readonly kind: 'job discarded' }
  | { readonly kind: 'job restored' }
  | { readonly kind: 'refused'; readonly refusal: Refusal }
  /** The rest come from the bench and the ear, never from the log. */
  | { readonly kind: 'not kept'; readonly why: 'slow' | 'failed' | 'full' }
  | { readonly kind: 'kept again' }
  /** Without a reason: another window writes. */
  | { readonly kind: 'read only'; readonly why?: 'newer app' }
  | { readonly kind: 'no voice' }
  | { readonly kind: 'sound check'; readonly step: SoundCheckStep }
  | {
      /** 'ear lost': it died or was shut by the noise, and the builder must turn to the pedal. */
      readonly kind: 'ear' | 'ear lost';
      readonly state: 'open' | 'shut' | 'dead';
      readonly why: EarWhy;
      readonly count48: Turn48 | null;
      /** Another ear takes over from one that died. */
      readonly instead?: EarKind;
    };

export type FactKind = Fact['kind'];

/**
 * A sound without words. The pitch of a count tells short of, in or past the window; the three
 * count ticks with 'enter' and 'leave' mark the edges.
 */
export type Cue =
  | 'zero'
  | 'short'
  | 'enter'
  | 'in'
  | 'leave'
  | 'past'
  | 'plain'
  | 'landing'
  | 'seat'
  | 'unproven'
  | 'soft'
  | 'back'
  | 'missed'
  | 'refused';

export interface Announcement {
  readonly fact: Fact;
  readonly cue: Cue | null;
  /** Words at once, or when the builder pauses. */
  readonly timing: 'at once' | 'at a pause';
  /** The words wait until the log is kept through this seq; 0 waits for nothing. */
  readonly keptThrough: number;
  /** Never queued, never said late: an instruction to turn the crank. */
  readonly perishable: boolean;
}
