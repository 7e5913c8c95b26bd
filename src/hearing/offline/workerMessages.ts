import type { Grammar } from '#words';
import type { PipelineEvent } from './pipeline';
import type { EarRecording } from './recorder';
import type { VoicePrints } from './voicePrints';

/** What the page tells the worker. */
export type ToWorker =
  /** Where the pack is, and the SHA-256 of what is in it. */
  | { readonly type: 'load'; readonly url: string; readonly sha256: string; readonly bytes: number }
  /** Sound comes at this port, at this rate, until it is closed. */
  | { readonly type: 'listen'; readonly port: MessagePort; readonly rate: number }
  | { readonly type: 'grammar'; readonly grammar: Grammar }
  | { readonly type: 'deaf' }
  /** The builder's own words as a second opinion; null for none. */
  | { readonly type: 'know'; readonly prints: VoicePrints | null }
  /** Whether prints are told of what is heard. */
  | { readonly type: 'check'; readonly on: boolean }
  /** What is listened to from now on is also taken down, until it is not listened to any more. */
  | { readonly type: 'record'; readonly on: boolean };

/** What the worker tells the page. */
export type FromWorker =
  | { readonly type: 'progress'; readonly part: number }
  | { readonly type: 'ready' }
  | { readonly type: 'recorded'; readonly recording: EarRecording }
  | { readonly type: 'failed'; readonly why: LoadFailure }
  | { readonly type: 'events'; readonly events: readonly PipelineEvent[] };

/** Why the pack could not be made to work. */
export type LoadFailure =
  /** It could not be fetched. */
  | 'missing'
  /** It is not what was built. */
  | 'corrupt'
  /** This browser can't run it. */
  | 'unable';
