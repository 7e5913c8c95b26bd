import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { StoreApi } from 'zustand/vanilla';
import type { Bench, BenchState } from '#bench';
import type { CommandBody, EarWhy, SoundVerdict } from '#counting';
import type { SettingsStore } from '#settings';
import type { Shelf } from '#shelf';
import type { Turn48 } from '#valvetrain';
import type { MissedWhy } from '#words';
import type { Build } from './build';
import type { Device } from './device';
import type { Route } from './route';

/** A line said, or shown where nothing is spoken. */
export interface Caption {
  readonly token: number;
  readonly text: string;
  readonly at: number;
  /** Spoken aloud, or only shown. */
  readonly spoken: boolean;
}

export interface MouthState {
  /** Newest last. */
  readonly captions: readonly Caption[];
  /** Why nothing is spoken; null while a voice speaks. */
  readonly silent: 'switched off' | 'no voice' | 'not woken' | null;
  /** Names of the voices on this device. */
  readonly voices: readonly string[];
}

/** One place on the strip of keys as they now are. */
export interface StripItem {
  readonly meaning: string;
  readonly label: string;
}

/** What a key can be learned for, beside the pedal and the key held to speak. */
export type KeyAct =
  | 'one more'
  | 'half'
  | 'next stage'
  | 'zero'
  | 'seat and accept'
  | 'take back'
  | 'say again'
  | 'ear';

export interface KeysState {
  readonly strip: readonly StripItem[];
  /** Codes of the pedal; two when it sends them in turn. */
  readonly pedal: readonly string[];
  /** The pedal can only be tapped, and no key goes to the next stage. */
  readonly needsStageKey: boolean;
  /** What letting go of the held pedal would do now; null while nothing is held. */
  readonly holding: 'next stage' | 'take back' | 'nothing' | null;
  /** Key learning under way: the sentence that says what to press; null while there is none. */
  readonly learning: {
    readonly sentence: string;
    readonly done: boolean;
    readonly problems: readonly string[];
  } | null;
}

/** What was heard, as heard and as understood. */
export interface Heard {
  readonly utterance: string;
  readonly kind: 'taken' | 'missed' | 'outside' | 'doubt' | 'own voice' | 'repeat' | 'withdrawn';
  readonly heard: string;
  readonly understood: string | null;
  /** Why it was missed; null when it was not. */
  readonly why: MissedWhy | null;
}

/** What the screens show of the ear. */
export interface EarShown {
  readonly state: 'shut' | 'opening' | 'open' | 'dead';
  readonly why: EarWhy;
  /** Open only while the listening key is held. */
  readonly byKey: boolean;
  /** Where speech is understood; null while that is not known. */
  readonly place: 'on device' | 'elsewhere' | null;
  /** What is being said, before it counts. */
  readonly ghost: {
    readonly heard: string;
    readonly understood: string | null;
    /** The count it would be, 48ths of a turn; null when it is none. */
    readonly count48: Turn48 | null;
  } | null;
  /** Newest last. */
  readonly captions: readonly Heard[];
  /** Noise of the room, dB of full scale; null while it is not measured. */
  readonly level: number | null;
  /** How much of the ear's own files is here while they are fetched, 0 to 1; null before. */
  readonly fetched: number | null;
  /** Too little of what is said is expected to be heard in this room. */
  readonly tooNoisy: boolean;
}

/** What the screens show of a sound check. */
export interface SoundCheckShown {
  readonly state: 'idle' | 'fetching' | 'running' | 'over' | 'failed';
  readonly phase: 'room' | 'numbers' | 'commands' | 'over';
  /** What the builder is to say now; null while nothing is waited for. */
  readonly asked: string | null;
  /** Words that are done, of how many. */
  readonly done: number;
  readonly of: number;
  /** How much of the ear's own files is here while they are fetched, 0 to 1; null before. */
  readonly fetched: number | null;
  readonly verdict: SoundVerdict | null;
  /** Why it could not be held. */
  readonly why: EarWhy | null;
  /** The builder's own words are kept on this device. */
  readonly kept: boolean;
  /** The last change to them could not be kept. */
  readonly unkept: boolean;
}

/** The sound check: a count and some commands spoken to it. */
export interface SoundCheckService {
  readonly store: StoreApi<SoundCheckShown>;
  start(): void;
  stop(): void;
  /** Deletes the builder's own words from this device. */
  forget(): void;
}

/** What the screens show of a recorded session of the ear. */
export interface RecordingShown {
  /** The next session is taken down. */
  readonly wanted: boolean;
  /** How long the kept one is; null where none is kept. */
  readonly seconds: number | null;
  /** The device would not keep it. */
  readonly unkept: boolean;
}

/** A session of the ear that needs no network, taken down when asked for. */
export interface RecordingService {
  readonly store: StoreApi<RecordingShown>;
  /** Looks for one kept before. */
  look(): void;
  want(on: boolean): void;
  /** Hands it to the builder as a sound file. */
  hand(): void;
  forget(): void;
}

/** A browser service the app looks for, and whether it is here. */
export interface Feature {
  readonly name: string;
  readonly here: boolean;
  readonly without: string;
}

/** Everything the screens are given. main.tsx builds it; a screen reaches nothing else. */
export interface Services {
  readonly bench: Bench;
  readonly shelf: Shelf;
  readonly settings: SettingsStore;
  readonly mouth: StoreApi<MouthState>;
  readonly keys: StoreApi<KeysState>;
  readonly ear: StoreApi<EarShown>;
  readonly route: StoreApi<{ readonly route: Route }>;
  readonly device: Device;
  readonly soundCheck: SoundCheckService;
  readonly recording: RecordingService;
  readonly build: Build;
  readonly features: readonly Feature[];
  go(route: Route): void;
  /** A touch on the bench. */
  touch(command: CommandBody): void;
  /** Begins a practice run on the bench, in place of the job or the run it has. */
  practise(): void;
  /** Opens the ear, or shuts it. */
  toggleEar(): void;
  /** Agrees that speech may leave the device, and opens the ear. */
  agreeToLeave(): void;
  /** Shuts the ear, also where it waits to be agreed to. */
  shutEar(): void;
  /** The ear's own log, as a file's text; empty while it was never opened. */
  earLog(): string;
  learnPedal(): void;
  /** Learns a key or a button for this, in place of what it did. */
  learnKey(act: KeyAct): void;
  /** Learns the key that opens the ear while it is held. */
  learnListen(): void;
  stopLearning(): void;
  forgetKeys(): void;
  /** Says one line in the chosen voice, to try it. */
  tryVoice(): void;
  /** What went wrong on this device, as a file's text: no sound, no names. */
  diagnostics(): Promise<string>;
  /** Hands a file to the builder. */
  save(fileName: string, text: string): void;
}

const ServicesContext = createContext<Services | null>(null);

export const ServicesProvider = ServicesContext.Provider;

/** The services of the app this screen stands in. */
export function useServices(): Services {
  const services = useContext(ServicesContext);
  if (services === null) throw new Error('A screen was drawn outside the app.');
  return services;
}

/** A part of the bench's state, drawn again only when it changes. */
export function useBench<T>(select: (state: BenchState) => T): T {
  return useStore(useServices().bench.store, select);
}

export function useSettings() {
  return useStore(useServices().settings.store, (state) => state.settings);
}
