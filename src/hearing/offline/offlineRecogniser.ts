import type { Cancel, Clock } from '#clock';
import type { SessionEvent } from '../earInput';
import type { Recogniser, RecogniserSession } from '../recogniser';
import type { EarWorker, Loaded, WorkerTold } from './earWorker';
import type { CapturedMicrophone, OpenCapture } from './microphone';
import type { PipelineEvent } from './pipeline';

export interface OfflineRecogniserParts {
  readonly clock: Clock;
  readonly worker: EarWorker;
  openCapture: OpenCapture;
  /** Something was near a phrase and not taken. */
  onMissed(phrase: string): void;
  /** The room between sounds, and all its noise but speech, dB of full scale. */
  onLevel(db: number, noiseDb: number): void;
  /** A word was taken, this loud, dB of full scale. */
  onWord(db: number): void;
}

/** A microphone that gives no sound for this long was taken away, ms. */
export const MICROPHONE_SILENT_MS = 4000;

/** The recogniser on this device, by its own worker: sound never leaves it. */
export function offlineRecogniser(parts: OfflineRecogniserParts): Recogniser {
  return {
    where: () => Promise.resolve({ place: 'on device', asksFirst: true }),
    start: (_options, tell) => startSession(parts, tell),
  };
}

function startSession(
  parts: OfflineRecogniserParts,
  tell: (event: SessionEvent) => void,
): RecogniserSession {
  const { clock, worker, openCapture } = parts;
  let microphone: CapturedMicrophone | null = null;
  let over = false;
  let heardSound = false;
  let index = 0;
  let cancelWatch: Cancel | null = null;

  function end(): void {
    if (over) return;
    over = true;
    cancelWatch?.();
    microphone?.close();
    worker.deaf();
  }

  function fail(code: string): void {
    if (over) return;
    end();
    tell({ type: 'error', code });
    tell({ type: 'ended' });
  }

  function watch(): void {
    cancelWatch?.();
    cancelWatch = clock.after(MICROPHONE_SILENT_MS, () => fail('audio-capture'));
  }

  function told(what: WorkerTold): void {
    if (over) return;
    if (what === 'crashed') {
      fail('worker-crashed');
      return;
    }
    watch();
    if (!heardSound) tell({ type: 'audio started' });
    heardSound = true;
    for (const event of what) heard(event);
  }

  function heard(event: PipelineEvent): void {
    switch (event.type) {
      case 'speech':
        tell({ type: 'speech started' });
        return;
      case 'level':
        parts.onLevel(event.db, event.noiseDb);
        return;
      case 'heard': {
        const words = event.candidate?.branch.words ?? '';
        const text = event.verdict === 'taken' ? words : '';
        const alternatives = [{ text, confidence: 1 }];
        // An empty text says that what began came to nothing.
        tell({ type: 'result', index, final: true, alternatives });
        index += 1;
        if (event.verdict === 'taken') parts.onWord(event.db);
        if (event.verdict === 'missed') parts.onMissed(words);
        return;
      }
      default:
        event satisfies never;
    }
  }

  async function open(): Promise<void> {
    const loaded = await worker.load();
    if (over) return;
    if (loaded !== 'ready') {
      fail(codeOf(loaded));
      return;
    }
    tell({ type: 'started' });
    const { port1, port2 } = new MessageChannel();
    try {
      const opened = await openCapture(port1);
      if (over) {
        opened.close();
        return;
      }
      microphone = opened;
      opened.onLost(() => fail('audio-capture'));
      worker.listen(port2, opened.rate, told);
    } catch (failed) {
      const denied = failed instanceof DOMException && failed.name === 'NotAllowedError';
      fail(denied ? 'not-allowed' : 'audio-capture');
    }
  }

  void open();
  return {
    finish() {
      if (over) return;
      end();
      tell({ type: 'ended' });
    },
    abort: end,
  };
}

/** The error that a worker's failure to load is told as. */
export function codeOf(loaded: Exclude<Loaded, 'ready'>): string {
  switch (loaded) {
    case 'missing':
      return 'model-missing';
    case 'corrupt':
      return 'model-damaged';
    case 'unable':
      return 'model-unable';
    case 'crashed':
      return 'worker-crashed';
    default: {
      const never: never = loaded;
      return never;
    }
  }
}
