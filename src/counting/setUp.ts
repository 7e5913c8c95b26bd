import type {
  Adjuster,
  CamCard,
  CheckingPushrod,
  Engine,
  LengthConvention,
  Offer,
  PushrodEnds,
  PushrodLength,
  Travel,
  ValveGroup,
  ValveId,
  ZeroFeel,
} from '#valvetrain';
import { CLOCK_HOUR, QUARTER, TURN, type Turn48, turn48 } from '#valvetrain';
import type { WalkChoice } from './walk/choice';

/** How the builder calls the turns. A stroke is one swing of a ratchet under a cowl, in degrees. */
export type Calling =
  | { readonly way: 'quarters' }
  | { readonly way: 'turns' }
  | { readonly way: 'strokes'; readonly degrees: 30 | 45 | 60 | 90 };

/** What a spoken clock hour reads: the mark on the socket, or nothing (the group is off). */
export type ClockReading = 'mark' | 'off';

/** A checking pushrod and how its closed length was taken. */
export interface CheckingRod extends CheckingPushrod {
  readonly convention: LengthConvention;
}

/** What pushrods can be had, and how many more than needed are wanted. */
export interface Buying {
  readonly offer: Offer;
  /** How the lengths on offer are stated. */
  readonly convention: LengthConvention;
  /** Of each length. */
  readonly spares: number;
  /** Balls and oil holes: known, lengths stated in both ways can be compared. */
  readonly ends: PushrodEnds | null;
}

/** Everything about one job that is set before counting and may be changed later. Lengths in mm. */
export interface SetUp {
  readonly name: string;
  /** Null for a count started before any engine was described. */
  readonly engine: Engine | null;
  /** The valves this job counts; a part of an engine is a shorter list. */
  readonly scope: readonly ValveId[];
  /** Null when the travel per turn is not known: counts are kept, no preload is shown. */
  readonly adjuster: Adjuster | null;
  readonly rockers: 'bolt-down' | 'adjustable';
  /** Empty until a lifter kind has been chosen: there is no default window. */
  readonly groups: readonly ValveGroup[];
  readonly calling: Calling;
  /** 'I call only the last number': a jump ahead is then expected and taken. */
  readonly callsLastOnly: boolean;
  /** Ask 'how far?' past the last mark when the rocker seats. */
  readonly asksLanding: boolean;
  readonly clock: ClockReading;
  readonly hands: 'alone' | 'with helper';
  /** The pushrod fitted for the test. */
  readonly testPushrod: PushrodLength | null;
  /** How zero lash is felt for; by up-and-down play if absent. */
  readonly zeroFeel?: ZeroFeel;
  /**
   * The measured travel per quarter turn with its own uncertainty. Holds while the adjuster's
   * measured travel is this one; a figure typed in its place is good to 2 %.
   */
  readonly measuredTravel?: Travel;
  /** Counted by opening this pushrod to zero lash under a rocker torqued down. */
  readonly checking?: CheckingRod;
  /** Absent: lengths every 25 thou, stated as the test pushrod is, no spares. */
  readonly buying?: Buying;
  /** Absent: the cam is not known, and taken for a long one. */
  readonly cam?: CamCard;
  /** Absent: in firing order, both valves of a cylinder at its firing TDC. */
  readonly walk?: WalkChoice;
}

/** One called unit in 48ths of a turn: a quarter, a whole turn, or the stroke's angle. */
export function unitOf(calling: Calling): Turn48 {
  switch (calling.way) {
    case 'quarters':
      return QUARTER;
    case 'turns':
      return TURN;
    case 'strokes':
      return turn48((TURN * calling.degrees) / 360);
    default: {
      const never: never = calling;
      return never;
    }
  }
}

/** What one press adds, in 48ths: a quarter, or the stroke's angle. */
export function stepOf(calling: Calling): Turn48 {
  return calling.way === 'strokes' ? unitOf(calling) : QUARTER;
}

/** The spacing of the marks a reading falls between, in 48ths: what an unasked landing leaves open. */
export function markOf(calling: Calling): Turn48 {
  return stepOf(calling);
}

/** The most that can be counted, in 48ths: forty of the called unit. */
export function mostOf(calling: Calling): Turn48 {
  return turn48(40 * unitOf(calling));
}

/** What an answer given by the clock resolves, in 48ths: one hour. */
export const CLOCK_RESOLUTION: Turn48 = CLOCK_HOUR;

/** A called whole number as a count, 48ths: so many of the called unit. */
export function callOf(value: number, calling: Calling): Turn48 {
  return turn48(value * unitOf(calling));
}

/** Pushrods are usually sold every 25 thou: 0.635 mm (common practice). */
export const LENGTH_GRID_MM = 0.635;

/** What is known of pushrods. */
type Pushrods = Pick<SetUp, 'buying' | 'checking' | 'testPushrod'>;

/** How lengths to buy are stated: as the offer says, else as the test pushrod is. */
export function lengthConvention({ buying, checking, testPushrod }: Pushrods): LengthConvention {
  return buying?.convention ?? checking?.convention ?? testPushrod?.convention ?? 'tip to tip';
}

/** What can be bought; every 25 thou where nothing else is said. */
export function buyingOf(setUp: Pushrods): Buying {
  return (
    setUp.buying ?? {
      offer: { kind: 'grid', stepMm: LENGTH_GRID_MM, offsetMm: 0 },
      convention: lengthConvention(setUp),
      spares: 0,
      ends: null,
    }
  );
}
