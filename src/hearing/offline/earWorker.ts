import type { Grammar } from '#words';
import type { PackSource } from './fetchPack';
import type { PipelineEvent } from './pipeline';
import type { EarRecording } from './recorder';
import type { VoicePrints } from './voicePrints';
import type { FromWorker, LoadFailure, ToWorker } from './workerMessages';

/** The worker as it is used here. */
export interface WorkerPort {
  postMessage(message: ToWorker, transfer?: Transferable[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** How loading ended: ready, or why not. */
export type Loaded = 'ready' | LoadFailure | 'crashed';

/** The worker with its life: started when first needed, started anew after a crash. */
export interface EarWorker {
  /** Loads what is not loaded yet. Never rejects. */
  load(): Promise<Loaded>;
  readonly ready: () => boolean;
  listen(port: MessagePort, rate: number, tell: (told: WorkerTold) => void): void;
  deaf(): void;
  follow(grammar: Grammar): void;
  /** The builder's own words as a second opinion; null for none. */
  know(prints: VoicePrints | null): void;
  /** Whether prints are told of what is heard. */
  check(on: boolean): void;
  /** Whether what is listened to is taken down as well. */
  record(on: boolean): void;
  close(): void;
}

/** What a listening worker tells. */
export type WorkerTold = readonly PipelineEvent[] | 'crashed';

export interface EarWorkerParts {
  readonly source: PackSource;
  makeWorker(): WorkerPort;
  /** How much of the pack is there, 0 to 1. */
  onProgress(part: number): void;
  /** What was listened to, as it was asked to be taken down. */
  onRecorded?(recording: EarRecording): void;
}

/** One worker at a time, made by the parts. */
export function createEarWorker(parts: EarWorkerParts): EarWorker {
  const { source, makeWorker, onProgress } = parts;
  let worker: WorkerPort | null = null;
  let loading: Promise<Loaded> | null = null;
  let isReady = false;
  let grammar: Grammar | null = null;
  let prints: VoicePrints | null = null;
  let checks = false;
  let records = false;
  let tell: ((told: WorkerTold) => void) | null = null;

  function drop(): void {
    worker?.terminate();
    worker = null;
    loading = null;
    isReady = false;
  }

  function begin(): Promise<Loaded> {
    return new Promise((resolve) => {
      const started = makeWorker();
      worker = started;
      started.onmessage = ({ data }) => {
        switch (data.type) {
          case 'progress':
            onProgress(data.part);
            return;
          case 'ready':
            isReady = true;
            if (grammar !== null) started.postMessage({ type: 'grammar', grammar });
            started.postMessage({ type: 'know', prints });
            started.postMessage({ type: 'check', on: checks });
            started.postMessage({ type: 'record', on: records });
            resolve('ready');
            return;
          case 'failed':
            drop();
            resolve(data.why);
            return;
          case 'recorded':
            parts.onRecorded?.(data.recording);
            return;
          case 'events':
            tell?.(data.events);
            return;
          default:
            data satisfies never;
        }
      };
      started.onerror = () => {
        if (worker !== started) return;
        drop();
        resolve('crashed');
        tell?.('crashed');
        tell = null;
      };
      started.postMessage({ type: 'load', ...source });
    });
  }

  return {
    load() {
      loading ??= begin();
      return loading;
    },
    ready: () => isReady,
    listen(port, rate, telling) {
      tell = telling;
      worker?.postMessage({ type: 'listen', port, rate }, [port]);
    },
    deaf() {
      tell = null;
      worker?.postMessage({ type: 'deaf' });
    },
    follow(now) {
      grammar = now;
      if (isReady) worker?.postMessage({ type: 'grammar', grammar: now });
    },
    know(now) {
      prints = now;
      if (isReady) worker?.postMessage({ type: 'know', prints });
    },
    check(on) {
      checks = on;
      if (isReady) worker?.postMessage({ type: 'check', on });
    },
    record(on) {
      records = on;
      if (isReady) worker?.postMessage({ type: 'record', on });
    },
    close: drop,
  };
}
