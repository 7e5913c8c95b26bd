import type { Cancel, Clock } from '#clock';
import { breathsOf } from './breaths';
import type { SpeechEngine } from './speechEngine';
import type { SpeechListener, Synth, VoiceChoice, VoiceStatus } from './synth';
import { type Outcome, utter } from './utterance';
import { chooseVoice, type VoiceInfo, voicesFor } from './voices';
import { createWatchers } from './watchers';

/** After a cancel some browsers lose what is said at once, so the next line waits this long, ms. */
const SETTLE_MS = 50;
/** How long voices may take to arrive, ms. */
const VOICES_WAIT_MS = 2000;
/** This many failures in a row mean there is no voice. */
const FAILURES_TO_NONE = 3;

export interface SynthesiserParts {
  readonly clock: Clock;
  /** Null where the browser has no speech at all. */
  readonly engine: SpeechEngine | null;
  /** Tag of the language spoken: 'en-GB'. */
  readonly language: string;
  readonly choice?: VoiceChoice;
}

interface SpokenLine {
  readonly breaths: readonly string[];
  readonly listener: SpeechListener;
  index: number;
  begun: boolean;
}

/** The browser's speech as a Synth: late, dead, lost and endless utterances are dealt with here. */
export function createSynthesiser(parts: SynthesiserParts): Synth {
  const { clock, engine, language } = parts;
  const watchers = createWatchers();
  let choice: VoiceChoice = parts.choice ?? { voiceUri: null, rate: 1 };
  let voice: VoiceInfo | null = null;
  let unlocked = false;
  let patient = engine !== null;
  let failures = 0;
  let status: VoiceStatus = engine === null ? 'none' : 'locked';
  let line: SpokenLine | null = null;
  let settledAt = 0;
  let cancelDeadline: Cancel | null = null;
  let cancelSettling: Cancel | null = null;
  /** Gives up the breath being said; null between breaths. */
  let giveUp: (() => void) | null = null;

  function statusNow(): VoiceStatus {
    if (engine === null || failures >= FAILURES_TO_NONE) return 'none';
    if (voice === null && !patient) return 'none';
    if (!unlocked) return 'locked';
    return voice === null ? 'waiting' : 'ready';
  }

  function review(): void {
    voice = engine === null ? null : chooseVoice(engine.voices(), language, choice.voiceUri);
    status = statusNow();
    watchers.notify();
  }

  /** Forgets the line; the engine may still be talking. */
  function drop(): SpeechListener | null {
    const listener = line?.listener ?? null;
    line = null;
    giveUp?.();
    giveUp = null;
    cancelSettling?.();
    cancelDeadline?.();
    return listener;
  }

  function silence(): void {
    engine?.cancel();
    settledAt = clock.now() + SETTLE_MS;
  }

  function cancel(): void {
    if (drop() !== null) silence();
  }

  /** Goes on with the line as far as it can now. */
  function proceed(): void {
    if (line === null || giveUp !== null || engine === null || status === 'waiting') return;
    if (status !== 'ready' || voice === null) {
      drop()?.onError('failed');
      return;
    }
    const wait = settledAt - clock.now();
    cancelSettling?.();
    if (wait > 0) {
      cancelSettling = clock.after(wait, proceed);
      return;
    }
    const said = line;
    let over = false;
    const abandon = utter({
      clock,
      engine,
      text: said.breaths[said.index] ?? '',
      voice,
      rate: choice.rate,
      onStart() {
        if (!said.begun) said.listener.onStart();
        said.begun = true;
      },
      onOver(outcome) {
        over = true;
        giveUp = null;
        breathOver(said, outcome);
      },
    });
    // An engine may fail inside the call itself, and the next breath be under way by now.
    if (!over) giveUp = abandon;
  }

  function breathOver(said: SpokenLine, outcome: Outcome): void {
    switch (outcome) {
      case 'ended':
        failures = 0;
        nextBreath(said);
        return;
      case 'endless':
        silence();
        nextBreath(said);
        return;
      case 'interrupted':
        drop()?.onEnd();
        return;
      case 'silent':
      case 'failed':
        failures += 1;
        failed();
        return;
      case 'not allowed':
        unlocked = false;
        failed();
        return;
      default:
        outcome satisfies never;
    }
  }

  function nextBreath(said: SpokenLine): void {
    said.index += 1;
    if (said.index < said.breaths.length) proceed();
    else drop()?.onEnd();
  }

  function failed(): void {
    silence();
    const listener = drop();
    review();
    listener?.onError('failed');
  }

  /** Not begun by its deadline: not said at all. */
  function late(said: SpokenLine): void {
    if (line !== said || said.begun) return;
    cancel();
    said.listener.onError('late');
  }

  function speak(text: string, listener: SpeechListener, startBy: number | null): void {
    cancel();
    const said: SpokenLine = { breaths: breathsOf(text), listener, index: 0, begun: false };
    line = said;
    cancelDeadline = startBy === null ? null : clock.after(startBy - clock.now(), () => late(said));
    proceed();
  }

  engine?.onVoicesChanged(() => {
    failures = 0;
    review();
    proceed();
  });
  if (engine !== null) {
    clock.after(VOICES_WAIT_MS, () => {
      patient = false;
      review();
      proceed();
    });
  }
  review();

  return {
    speak,
    cancel,
    unlock() {
      if (!unlocked) engine?.prime();
      unlocked = true;
      if (status === 'locked') review();
    },
    choose(chosen) {
      choice = chosen;
      failures = 0;
      review();
    },
    choice: () => choice,
    voices: () => voicesFor(engine?.voices() ?? [], language),
    status: () => status,
    subscribe: watchers.subscribe,
  };
}
