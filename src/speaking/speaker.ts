import type { Cancel, Clock } from '#clock';
import type { Announcement } from '#counting';
import type { SayingContext } from '#words';
import { lineWatchdogMs } from './breaths';
import type { Caption } from './captions';
import {
  type Line,
  type MouthEffect,
  type MouthInput,
  type OfferedLine,
  quietMouth,
} from './mouth';
import { reduceMouth } from './queue';
import { FRESH_MS } from './readiness';
import { createScribe } from './scribe';
import type { Synth, VoiceStatus } from './synth';
import type { Ticker } from './ticker';
import type { Tick } from './ticks';
import { createVoicing } from './voicing';
import { createWatchers } from './watchers';
import { appWords, type Wording } from './wording';

export interface SpeakerParts {
  readonly clock: Clock;
  readonly synth: Synth;
  readonly ticker: Ticker;
  /** Asked afresh for every line; a standing alarm is added here. */
  readonly context: () => SayingContext;
  readonly onCaption?: (caption: Caption) => void;
  /** The app's own words if absent. */
  readonly words?: Wording;
}

/** What the screen shows of the mouth. */
export interface SpeakerState {
  /** 'none': ticks and captions carry on, and the screen says so. */
  readonly voice: VoiceStatus;
  /** The caption being said or standing for its time; null when the mouth is quiet. */
  readonly saying: Caption | null;
  readonly waiting: number;
}

/** The mouth: ticks at once, words when they may be said, captions always. */
export interface Speaker {
  announce(announcements: readonly Announcement[]): void;
  /** The open job's log is kept through this seq; a lower one than before is another job's. */
  kept(seq: number): void;
  alarm(on: boolean): void;
  cut(): void;
  hush(): void;
  /** A gesture of the builder's: sound may start. */
  unlock(): void;
  /** A tone without a fact, as while the pedal is held. */
  tone(tick: Tick): void;
  /** Until when, ms by the clock, what is heard may be the app's own voice, its tail included. */
  busyUntil(): number;
  state(): SpeakerState;
  subscribe(onChange: () => void): () => void;
  /** The last 500 captions, the oldest first. */
  log(): readonly Caption[];
}

/** Joins the mouth to a clock, a voice, the ticks and the captions. */
export function createSpeaker(parts: SpeakerParts): Speaker {
  const { clock, synth, ticker, onCaption, words = appWords } = parts;
  const voicing = createVoicing(clock, synth);
  const watchers = createWatchers();
  const scribe = createScribe({
    clock,
    words,
    context: () => ({ ...parts.context(), unkept: mouth.alarm }),
    onCaption(caption) {
      if (mouth.saying?.line.token === caption.token) shown = caption;
      onCaption?.(caption);
    },
  });
  const inputs: MouthInput[] = [];
  let mouth = quietMouth;
  let feeding = false;
  let toldNone = false;
  let cancelWake: Cancel | null = null;
  /** The caption of the line being said. */
  let shown: Caption | null = null;
  let state: SpeakerState = stateNow();

  /** Callbacks of the voice and the captions may feed again: one input is done with at a time. */
  function feed(input: MouthInput): void {
    inputs.push(input);
    if (feeding) return;
    feeding = true;
    try {
      for (let next = inputs.shift(); next !== undefined; next = inputs.shift()) take(next);
    } finally {
      feeding = false;
    }
    const { waiting, saying } = mouth;
    const live = saying === null ? waiting : [...waiting, saying.line];
    scribe.forgetAllBut(new Set(live.map(({ token }) => token)));
    publish();
  }

  function take(input: MouthInput): void {
    const { state: after, effects, wakeAt } = reduceMouth(mouth, input);
    mouth = after;
    cancelWake?.();
    cancelWake =
      wakeAt === undefined
        ? null
        : clock.after(Math.max(0, wakeAt - clock.now()), () =>
            feed({ type: 'time', at: clock.now() }),
          );
    for (const effect of effects) run(effect);
  }

  function run(effect: MouthEffect): void {
    switch (effect.do) {
      case 'say':
        sayLine(effect.line);
        break;
      case 'stop':
        voicing.stop();
        break;
      case 'show':
        scribe.write(effect.line.token, false);
        break;
      case 'lapse':
        scribe.write(effect.line.token, false, 'lapsed');
        break;
      default:
        effect satisfies never;
    }
  }

  function sayLine({ token, perishable, offeredAt }: Line): void {
    const ended = () => feed({ type: 'ended', token, at: clock.now() });
    scribe.write(token, voicing.aloud());
    voicing.say({
      text: scribe.said(token),
      startBy: perishable ? offeredAt + FRESH_MS : null,
      onStart: () => feed({ type: 'started', token, at: clock.now() }),
      onEnd: ended,
      onUnsaid: () => scribe.write(token, false),
      onLate() {
        scribe.write(token, false, 'lapsed');
        ended();
      },
    });
  }

  function offered(announcement: Announcement): OfferedLine {
    const { fact, timing, keptThrough, perishable } = announcement;
    const token = scribe.take(announcement);
    const text = scribe.said(token);
    return {
      token,
      kind: fact.kind,
      timing,
      keptThrough,
      perishable,
      silent: text === '',
      longestMs: lineWatchdogMs(text, synth.choice().rate),
    };
  }

  function announce(announcements: readonly Announcement[]): void {
    for (const { cue } of announcements) if (cue !== null) ticker.tick(cue);
    const lines = announcements.map(offered);
    if (lines.length > 0) feed({ type: 'offer', lines, at: clock.now() });
  }

  function stateNow(): SpeakerState {
    return {
      voice: synth.status(),
      saying: mouth.saying === null ? null : shown,
      waiting: mouth.waiting.length,
    };
  }

  function publish(): void {
    const { voice, saying, waiting } = state;
    state = stateNow();
    const same = voice === state.voice && saying === state.saying && waiting === state.waiting;
    if (!same) watchers.notify();
  }

  function tellNone(): void {
    if (synth.status() !== 'none' || toldNone) return;
    toldNone = true;
    const fact = { kind: 'no voice' } as const;
    announce([{ fact, cue: null, timing: 'at once', keptThrough: 0, perishable: false }]);
  }

  synth.subscribe(() => {
    state = stateNow();
    // Told even with the same status: the voices to choose from may be others.
    watchers.notify();
    tellNone();
  });
  // Not here and now: who follows the captions is only being built.
  clock.after(0, tellNone);

  return {
    announce,
    kept: (through) => feed({ type: 'kept', through, at: clock.now() }),
    alarm: (on) => feed({ type: 'alarm', on, at: clock.now() }),
    cut: () => feed({ type: 'cut', at: clock.now() }),
    hush: () => feed({ type: 'hush', at: clock.now() }),
    unlock() {
      ticker.unlock();
      synth.unlock();
    },
    tone: (tick) => ticker.tick(tick),
    busyUntil: voicing.busyUntil,
    state: () => state,
    subscribe: watchers.subscribe,
    log: scribe.log,
  };
}
