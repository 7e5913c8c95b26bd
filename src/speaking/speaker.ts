import type { Cancel, Clock } from '#clock';
import type { Announcement } from '#counting';
import type { SayingContext } from '#words';
import { lineWatchdogMs } from './breaths';
import { type Caption, createCaptionLog } from './captions';
import {
  type Line,
  type MouthEffect,
  type MouthInput,
  type OfferedLine,
  quietMouth,
} from './mouth';
import { reduceMouth } from './queue';
import { FRESH_MS } from './readiness';
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
  const { clock, synth, ticker, words = appWords } = parts;
  const voicing = createVoicing(clock, synth);
  const captions = createCaptionLog();
  const watchers = createWatchers();
  const announced = new Map<number, Announcement>();
  const inputs: MouthInput[] = [];
  let mouth = quietMouth;
  let feeding = false;
  let lastToken = 0;
  let cancelWake: Cancel | null = null;
  let toldNone = false;
  /** The caption of the line being said. */
  let shown: Caption | null = null;
  let state: SpeakerState = stateNow();

  function context(): SayingContext {
    return { ...parts.context(), unkept: mouth.alarm };
  }

  function feed(input: MouthInput): void {
    inputs.push(input);
    if (feeding) return;
    feeding = true;
    try {
      for (let next = inputs.shift(); next !== undefined; next = inputs.shift()) take(next);
    } finally {
      feeding = false;
    }
    forget();
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
        write(effect.line, false);
        break;
      case 'lapse':
        write(effect.line, false, 'lapsed');
        break;
      default:
        effect satisfies never;
    }
  }

  function write(line: Line, spoken: boolean, outcome: Caption['outcome'] = 'given'): void {
    const announcement = announced.get(line.token);
    if (announcement === undefined) return;
    const text =
      outcome === 'given'
        ? words.caption(announcement, context())
        : words.lapsed(announcement, context());
    const caption = { token: line.token, text, kind: line.kind, at: clock.now(), spoken, outcome };
    captions.write(caption);
    if (mouth.saying?.line.token === line.token) shown = caption;
    parts.onCaption?.(caption);
  }

  function sayLine(line: Line): void {
    const announcement = announced.get(line.token);
    if (announcement === undefined) return;
    const { token } = line;
    const ended = () => feed({ type: 'ended', token, at: clock.now() });
    write(line, voicing.aloud());
    voicing.say({
      text: words.said(announcement, context()),
      startBy: line.perishable ? line.offeredAt + FRESH_MS : null,
      onStart: () => feed({ type: 'started', token, at: clock.now() }),
      onEnd: ended,
      onUnsaid: () => write(line, false),
      onLate() {
        write(line, false, 'lapsed');
        ended();
      },
    });
  }

  function offered(announcement: Announcement): OfferedLine {
    const token = ++lastToken;
    announced.set(token, announcement);
    const { fact, timing, keptThrough, perishable } = announcement;
    const text = words.said(announcement, context());
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

  /** Announcements of lines that are over. */
  function forget(): void {
    const live = new Set(mouth.waiting.map(({ token }) => token));
    if (mouth.saying !== null) live.add(mouth.saying.line.token);
    for (const token of announced.keys()) if (!live.has(token)) announced.delete(token);
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

  function announce(announcements: readonly Announcement[]): void {
    for (const { cue } of announcements) if (cue !== null) ticker.tick(cue);
    const lines = announcements.map(offered);
    if (lines.length > 0) feed({ type: 'offer', lines, at: clock.now() });
  }

  /** Told even with the same status: the voices to choose from may be others. */
  function voiceChanged(): void {
    state = stateNow();
    watchers.notify();
    if (synth.status() !== 'none' || toldNone) return;
    toldNone = true;
    const fact = { kind: 'no voice' } as const;
    announce([{ fact, cue: null, timing: 'at once', keptThrough: 0, perishable: false }]);
  }
  synth.subscribe(voiceChanged);
  // Not here and now: who follows the captions is only being built.
  clock.after(0, voiceChanged);

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
    log: captions.read,
  };
}
