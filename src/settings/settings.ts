import type { LengthStyle, NumberStyle } from '#words';
import type { NamedWindow } from './namedWindows';

/** Which ear hears: 'automatic' goes by what this browser can do. */
export type EarChoice = 'automatic' | 'browser' | 'offline' | 'none';

export type TalkLevel = 'terse' | 'plain' | 'teaching';

/** The keys of this device as plain data; whoever reads keys knows what the meanings are. */
export interface KeySettings {
  readonly pedal: { readonly codes: readonly string[]; readonly sendsKeyUp: boolean };
  readonly keys: Readonly<Record<string, string>>;
  readonly listen?: string;
}

/** This device's own choices: they belong to no job and are no events. */
export interface Settings {
  readonly units: 'inch' | 'mm';
  readonly numbers: NumberStyle;
  readonly lengths: LengthStyle;
  readonly level: TalkLevel;
  /** Speak, or only tick and caption. */
  readonly speaks: boolean;
  /** The chosen voice's name; null lets the app choose. */
  readonly voice: string | null;
  /** Speaking rate, 0.5 to 2; 1 is the voice's own. */
  readonly rate: number;
  /** The builder wears a headset: the ear may stay open while the app speaks. */
  readonly headset: boolean;
  readonly whichEar: EarChoice;
  /** The ear opens when the bench is woken. */
  readonly earOnWaking: boolean;
  /** Open until shut, or only while a key is held. */
  readonly listens: 'open' | 'while held';
  /** A count by voice needs its carrier word: 'count five'. */
  readonly carrier: boolean;
  /** The builder knows that speech may leave the device, and agrees. */
  readonly mayLeave: boolean;
  /** Measure the room's noise while the ear is open; on some phones that takes the microphone. */
  readonly measuresRoom: boolean;
  /** Null: the keys as they come. */
  readonly keys: KeySettings | null;
  readonly keysOn: boolean;
  readonly shop: 'bright' | 'dark';
  /** Diagonal of the screen, inches; null while not asked. */
  readonly screenDiagonalIn: number | null;
  /** A practice run was begun on this device: it is no longer offered first. */
  readonly practised: boolean;
  /** The builder's own windows, to choose from where a lifter is. */
  readonly windows: readonly NamedWindow[];
}

export const defaultSettings: Settings = {
  units: 'inch',
  numbers: 'cardinal',
  lengths: 'shop',
  level: 'plain',
  speaks: true,
  voice: null,
  rate: 1,
  headset: false,
  whichEar: 'automatic',
  earOnWaking: false,
  listens: 'open',
  carrier: false,
  mayLeave: false,
  measuresRoom: true,
  keys: null,
  keysOn: true,
  shop: 'dark',
  screenDiagonalIn: null,
  practised: false,
  windows: [],
};
