import type { Buying, Calling, ClockReading } from '#counting';
import type {
  AdjusterKind,
  EngineLayout,
  LengthConvention,
  Numbering,
  OutOfScopeKind,
  RunningDirection,
  SeenFrom,
  Travel,
  ValveKind,
  ZeroFeel,
} from '#valvetrain';
import type { Units } from '#words';
import { type CrankDraft, crankDraft } from './crankDraft';

/** Said instead of a figure: the job is counted without it and it can be added later. */
export const NOT_KNOWN = 'not known';

export type StrokeDegrees = Extract<Calling, { way: 'strokes' }>['degrees'];

/** Which valves share a window, as the form asks it. Named cylinders are text until read. */
export type MembersDraft =
  | { readonly kind: 'all' }
  | { readonly kind: 'valve'; readonly valve: ValveKind }
  | { readonly kind: 'bank'; readonly bank: number }
  | { readonly kind: 'cylinders'; readonly text: string };

/** The seven figures of a window, as typed. */
export interface WindowDraft {
  readonly travel: string;
  readonly keepTop: string;
  readonly keepBottom: string;
  readonly usableMin: string;
  readonly usableMax: string;
  readonly preferredMin: string;
  readonly preferredMax: string;
}

export interface GroupDraft {
  readonly id: string;
  readonly members: MembersDraft;
  /** '' until chosen, a starting set's id, NOT_KNOWN, or a kind that is out of scope. */
  readonly lifter: string;
  readonly window: WindowDraft;
}

export type GroupsBy = 'all' | 'valve' | 'bank' | 'cylinders' | 'mixed';

/** Ball and oil hole at the lifter, then at the rocker, as typed. */
export type EndsDraft = readonly [string, string, string, string];

/** Parts of a set-up this form does not ask for, kept through it. */
export interface Carried {
  readonly buying: Buying | null;
  /** Holds while the measured travel in the form is this one. */
  readonly measuredTravel: Travel | null;
}

/** A set-up while it is being filled in: text as typed, read into figures at the edge. */
export interface Draft extends CrankDraft {
  /** What lengths without a unit of their own are read in. */
  readonly units: Units;
  readonly name: string;
  /** '' until chosen, a preset's id, 'typed', NOT_KNOWN, or 'overhead cam'. */
  readonly engine: string;
  readonly cylinders: string;
  readonly order: string;
  readonly layout: EngineLayout;
  readonly numbering: Numbering;
  /** Banks as typed, front to rear: '1 3 5 / 2 4 6'. */
  readonly banks: string;
  /** Side of the first bank for someone at the rear looking forward. */
  readonly firstBank: 'left' | 'right';
  readonly firing: 'evenly' | 'typed';
  /** An odd-fire engine's firing TDCs as typed, crank degrees: '0 90 240 330 480 570'. */
  readonly firingAngles: string;
  readonly direction: '' | RunningDirection;
  readonly seenFrom: SeenFrom;
  readonly which: 'all' | 'one cylinder' | 'picked';
  readonly oneCylinder: string;
  /** Valve keys, as '3 intake'. */
  readonly picked: readonly string[];
  readonly rockers: 'bolt-down' | 'adjustable';
  /** What is turned and counted. */
  readonly counts: 'fastener' | 'checking pushrod';
  readonly turns: AdjusterKind | Extract<OutOfScopeKind, 'shared rocker shaft or bridge'>;
  /** '' until chosen, a thread's id, 'pitch', 'tpi', or NOT_KNOWN. */
  readonly thread: string;
  /** Always millimetres. */
  readonly pitch: string;
  readonly tpi: string;
  readonly ratio: string;
  readonly lean: string;
  readonly measured: string;
  readonly groupsBy: GroupsBy;
  readonly groups: readonly GroupDraft[];
  readonly pushrod: string;
  /** Of the test pushrod, or of the checking pushrod's closed length. */
  readonly convention: LengthConvention;
  /** The checking pushrod screwed right in, and what a turn opens it by. */
  readonly closed: string;
  readonly perTurn: string;
  readonly ends: EndsDraft;
  readonly zeroFeel: ZeroFeel;
  readonly calling: Calling['way'];
  readonly degrees: StrokeDegrees;
  readonly callsLastOnly: boolean;
  readonly asksLanding: boolean;
  readonly clock: ClockReading;
  readonly hands: 'alone' | 'with helper';
  /** Sentences about odd figures that the builder has answered with 'keep it'. */
  readonly kept: readonly string[];
  readonly carried: Carried;
  /** Exact millimetres behind a rounded text, by text and unit, so that showing loses nothing. */
  readonly remembered: Readonly<Record<string, number>>;
}

export const emptyWindow: WindowDraft = {
  travel: '',
  keepTop: '',
  keepBottom: '',
  usableMin: '',
  usableMax: '',
  preferredMin: '',
  preferredMax: '',
};

export function emptyGroup(id: string, members: MembersDraft): GroupDraft {
  return { id, members, lifter: '', window: emptyWindow };
}

/** A set-up with nothing answered: no engine, no thread, no lifter and so no window. */
export function emptyDraft(units: Units): Draft {
  return {
    units,
    name: '',
    engine: '',
    cylinders: '',
    order: '',
    layout: 'inline',
    numbering: 'in line',
    banks: '',
    firstBank: 'left',
    firing: 'evenly',
    firingAngles: '',
    direction: '',
    seenFrom: 'front',
    which: 'all',
    oneCylinder: '',
    picked: [],
    rockers: 'bolt-down',
    counts: 'fastener',
    turns: 'pivot',
    thread: '',
    pitch: '',
    tpi: '',
    ratio: '',
    lean: '',
    measured: '',
    groupsBy: 'all',
    groups: [emptyGroup('all', { kind: 'all' })],
    pushrod: '',
    convention: 'tip to tip',
    closed: '',
    perTurn: '',
    ends: ['', '', '', ''],
    zeroFeel: 'up-and-down play',
    calling: 'quarters',
    degrees: 60,
    callsLastOnly: false,
    asksLanding: true,
    clock: 'mark',
    hands: 'alone',
    ...crankDraft({}),
    kept: [],
    carried: { buying: null, measuredTravel: null },
    remembered: {},
  };
}
