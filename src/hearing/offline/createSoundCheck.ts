import type { Cancel, Clock } from '#clock';
import type { EarWhy, SoundCheckStep } from '#counting';
import { answerTo } from '../errorCodes';
import { createEarWorker, type WorkerPort, type WorkerTold } from './earWorker';
import { FRAME_MS } from './endpointer';
import type { PackSource } from './fetchPack';
import type { CapturedMicrophone, OpenCapture } from './microphone';
import { codeOf, MICROPHONE_SILENT_MS } from './offlineRecogniser';
import type { PipelineEvent } from './pipeline';
import {
  type CheckInput,
  checkGrammar,
  noCheck,
  printsOf,
  reduceCheck,
  type SoundCheck,
} from './soundCheck';
import type { VoicePrints } from './voicePrints';

export interface SoundCheckParts {
  readonly clock: Clock;
  readonly source: PackSource;
  makeWorker(): WorkerPort;
  openCapture: OpenCapture;
  onProgress(part: number): void;
  say(step: SoundCheckStep): void;
  onChange(check: SoundCheck): void;
  /** It ended: with the builder's own words, where there were enough. */
  onOver(prints: VoicePrints | null): void;
  /** It could not be held. */
  onFailed(why: EarWhy): void;
}

/** A sound check under way. */
export interface RunningCheck {
  /** The app's own voice begins, or has ended. */
  mouth(busy: boolean): void;
  /** Ends it without a word. */
  stop(): void;
}

type Untimed<T> = T extends unknown ? Omit<T, 'at'> : never;

/** Holds one sound check: a worker and a microphone of its own, both let go at its end. */
export function startSoundCheck(parts: SoundCheckParts): RunningCheck {
  const { clock } = parts;
  let check: SoundCheck = noCheck;
  let over = false;
  let microphone: CapturedMicrophone | null = null;
  let cancelWatch: Cancel | null = null;
  let mouthBusy = false;
  const worker = createEarWorker({
    source: parts.source,
    makeWorker: parts.makeWorker,
    onProgress: parts.onProgress,
  });

  function end(): void {
    over = true;
    cancelWatch?.();
    microphone?.close();
    worker.close();
  }

  function fail(code: string): void {
    if (over) return;
    end();
    const answer = answerTo(code);
    parts.onFailed('why' in answer ? answer.why : 'unknown');
  }

  function watch(): void {
    cancelWatch?.();
    cancelWatch = clock.after(MICROPHONE_SILENT_MS, () => fail('audio-capture'));
  }

  function feed(untimed: Untimed<CheckInput>): void {
    if (over) return;
    const before = check;
    const input = { ...untimed, at: clock.now() } as CheckInput;
    const { check: next, say } = reduceCheck(check, input);
    check = next;
    if (next.index !== before.index || next.phase !== before.phase) {
      worker.follow(checkGrammar(next));
    }
    parts.onChange(next);
    const ended = next.phase === 'over' && before.phase !== 'over';
    if (ended) end();
    if (say !== null) parts.say(say);
    if (ended) parts.onOver(printsOf(next));
  }

  function told(what: WorkerTold): void {
    if (what === 'crashed') {
      fail('worker-crashed');
      return;
    }
    watch();
    for (const event of what) heard(event);
  }

  function heard(event: PipelineEvent): void {
    switch (event.type) {
      case 'speech':
        return;
      case 'level':
        feed({ type: 'level', noiseDb: event.noiseDb });
        feed({ type: 'time' });
        return;
      case 'heard': {
        // What holds no voice is no answer.
        if (event.candidate === null && event.print === null) return;
        const taken = event.verdict === 'taken' ? (event.candidate?.branch.words ?? null) : null;
        feed({
          type: 'heard',
          words: taken,
          lastedMs: (event.candidate?.frames ?? 0) * FRAME_MS,
          db: event.db,
          print: event.print,
        });
        return;
      }
      default:
        event satisfies never;
    }
  }

  async function open(): Promise<void> {
    worker.check(true);
    const loaded = await worker.load();
    if (over) return;
    if (loaded !== 'ready') {
      fail(codeOf(loaded));
      return;
    }
    const { port1, port2 } = new MessageChannel();
    try {
      const opened = await parts.openCapture(port1);
      if (over) {
        opened.close();
        return;
      }
      microphone = opened;
      opened.onLost(() => fail('audio-capture'));
      worker.listen(port2, opened.rate, told);
      watch();
      feed({ type: 'begin' });
      feed({ type: 'mouth', busy: mouthBusy });
    } catch (failed) {
      const denied = failed instanceof DOMException && failed.name === 'NotAllowedError';
      fail(denied ? 'not-allowed' : 'audio-capture');
    }
  }

  void open();
  return {
    mouth(busy) {
      if (busy === mouthBusy) return;
      mouthBusy = busy;
      feed({ type: 'mouth', busy });
    },
    stop() {
      if (!over) end();
    },
  };
}
