import type { StoreApi } from 'zustand/vanilla';
import type { Bench } from '#bench';
import type { Announcement } from '#counting';
import type { SettingsStore } from '#settings';
import type { Speaker } from '#speaking';
import type { EarNotice } from '#words';
import type { RecordingJoint } from './earRecording';

/** What an ear is joined to. */
export interface EarParts {
  readonly page: Window & typeof globalThis;
  readonly bench: Bench;
  readonly settings: SettingsStore;
  readonly speaker: Speaker;
  /** The builder's own words as they are kept, whatever they are. */
  readonly prints: StoreApi<{ readonly prints: unknown }>;
  readonly recording: RecordingJoint;
}

/** An ear once its code is here. */
export interface LoadedEar {
  /** Open when it is shut or dead, shut when it is open: the ear's key. */
  toggle(): void;
  hold(on: boolean): void;
  /** Opens it, unless it listens only while its key is held. */
  start(): void;
  stop(): void;
  log(): string;
  /** Shuts it for good and lets go of what it followed: another ear takes its place. */
  close(): void;
}

/** What the ear has to say of itself, as an announcement. */
export function told(notice: EarNotice): Announcement {
  const { state, why } = notice;
  const lost = state === 'dead' || why === 'too loud' || why === 'room louder';
  return {
    fact: { kind: lost ? 'ear lost' : 'ear', ...notice },
    cue: lost ? 'refused' : 'soft',
    timing: 'at once',
    keptThrough: 0,
    perishable: false,
  };
}
