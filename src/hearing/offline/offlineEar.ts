import type { Clock } from '#clock';
import { type EarNotice, grammarFor } from '#words';
import { createEar } from '../createEar';
import type { Ear, EarListener, EarView } from '../ear';
import type { EarCaption } from '../earState';
import { createEarWorker, type WorkerPort } from './earWorker';
import type { PackSource } from './fetchPack';
import type { OpenCapture } from './microphone';
import { offlineRecogniser } from './offlineRecogniser';
import type { EarRecording } from './recorder';
import { type RoomWatch, roomHeard, unheardRoom, wordHeard } from './roomWatch';
import type { VoicePrints } from './voicePrints';

export interface OfflineEarParts {
  readonly clock: Clock;
  readonly listener: EarListener;
  readonly source: PackSource;
  makeWorker(): WorkerPort;
  openCapture: OpenCapture;
  /** The builder's own words, as they now are and whenever they change; null for none. */
  readonly prints?: {
    now(): VoicePrints | null;
    subscribe(fn: () => void): () => void;
  };
  /** Whether what it listens to is taken down, and who keeps that. */
  readonly recording?: {
    wanted(): boolean;
    subscribe(fn: () => void): () => void;
    keep(recording: EarRecording): void;
  };
  /** How much of what it needs is there, 0 to 1, while it is fetched for the first time. */
  onProgress?: (part: number) => void;
}

/**
 * The ear that needs no network. Its files are fetched when it is first opened; until they are there
 * it is opening. Everything else is as with any ear.
 */
export function createOfflineEar(parts: OfflineEarParts): Ear {
  const { clock, listener } = parts;
  let asked = false;
  let mouthBusy = false;
  let missed = 0;
  let room: RoomWatch = unheardRoom;
  let count48: EarNotice['count48'] = null;
  const watchers = new Set<() => void>();
  const worker = createEarWorker({
    source: parts.source,
    makeWorker: parts.makeWorker,
    onProgress: (part) => parts.onProgress?.(part),
    onRecorded: (recording) => parts.recording?.keep(recording),
  });
  const know = () => worker.know(parts.prints?.now() ?? null);
  const record = () => worker.record(parts.recording?.wanted() ?? false);
  const forgetWish = parts.recording?.subscribe(record);
  record();
  const forgetPrints = parts.prints?.subscribe(know);
  know();
  const recogniser = offlineRecogniser({
    clock,
    worker,
    openCapture: parts.openCapture,
    onMissed,
    onLevel,
    onWord(db) {
      if (!mouthBusy) room = wordHeard(room, db);
    },
  });
  const inner = createEar({ clock, recogniser, listener });
  inner.subscribe(() => {
    for (const fn of watchers) fn();
  });

  /** Noise in which too little would be heard is told, and the ear left open: the pedal is surer. */
  function onLevel(db: number, noiseDb: number): void {
    inner.level(db);
    if (mouthBusy) return;
    const { watch, told } = roomHeard(room, noiseDb, clock.now());
    room = watch;
    if (told !== null) listener.onNotice({ state: 'open', why: told, count48 });
  }

  /** Near ties and doubtful words are told as missed, unless they may be the app's own. */
  function onMissed(phrase: string): void {
    if (mouthBusy) return;
    missed += 1;
    const caption: EarCaption = {
      utterance: `missed ${missed}`,
      kind: 'missed',
      heard: phrase,
      understood: phrase,
      why: 'near',
    };
    listener.onCaption(caption);
  }

  /** Loads first: how long that takes is no sign of a dead ear. */
  function whenLoaded(then: () => void): void {
    if (worker.ready()) {
      then();
      return;
    }
    asked = true;
    refresh();
    void worker.load().then(() => {
      if (!asked) return;
      asked = false;
      then();
      refresh();
    });
  }

  function refresh(): void {
    view = viewOf(inner.view(), asked);
    for (const fn of watchers) fn();
  }

  let view: EarView = inner.view();

  return {
    ...inner,
    start: () => whenLoaded(inner.start),
    stop() {
      asked = false;
      inner.stop();
    },
    hold(on) {
      if (on) whenLoaded(() => inner.hold(true));
      else {
        asked = false;
        inner.hold(false);
      }
    },
    follow(job, carrier) {
      inner.follow(job, carrier);
      const grammar = grammarFor(job, { carrier });
      count48 = grammar.stage === 'counting' ? grammar.count48 : null;
      worker.follow(grammar);
    },
    mouth(saying) {
      mouthBusy = saying !== null;
      inner.mouth(saying);
    },
    view() {
      const now = inner.view();
      if (!asked) return now;
      if (view.captions !== now.captions || view.level !== now.level) view = viewOf(now, asked);
      return view;
    },
    subscribe(fn) {
      watchers.add(fn);
      return () => watchers.delete(fn);
    },
    close() {
      asked = false;
      forgetPrints?.();
      forgetWish?.();
      inner.close();
      worker.close();
    },
  };
}

function viewOf(view: EarView, loading: boolean): EarView {
  return loading && view.state !== 'open' ? { ...view, state: 'opening', why: 'asked' } : view;
}
