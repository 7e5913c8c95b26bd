import type { Clock } from '#clock';
import { watchdogMs } from './breaths';
import type { SpeechEngine } from './speechEngine';
import type { VoiceInfo } from './voices';

/** An utterance that has not begun by now, with the engine idle, was lost: it is said once more, ms. */
const LOST_MS = 400;

/**
 * How an utterance came out. 'endless': its end never came, the watchdog took over; 'silent': nothing
 * came at all; 'interrupted': something else in the browser cut it off.
 */
export type Outcome = 'ended' | 'endless' | 'interrupted' | 'silent' | 'failed' | 'not allowed';

export interface UtteranceParts {
  readonly clock: Clock;
  readonly engine: SpeechEngine;
  readonly text: string;
  readonly voice: VoiceInfo;
  readonly rate: number;
  readonly onStart: () => void;
  /** Called once, by the watchdog's time at the latest, unless the utterance is given up. */
  readonly onOver: (outcome: Outcome) => void;
}

/** Says one breath. Returns how to give it up: nothing more is heard of it. */
export function utter({ clock, engine, text, voice, rate, ...on }: UtteranceParts): () => void {
  let started = false;
  let over = false;
  /** A lost utterance may still come alive beside its second saying. */
  let sayings = 0;

  const watchdog = clock.after(watchdogMs(text, rate), () =>
    finish(started || engine.busy() ? 'endless' : 'silent'),
  );
  const lost = clock.after(LOST_MS, () => {
    if (!started && !engine.busy()) sayIt();
  });

  function giveUp(): void {
    over = true;
    watchdog();
    lost();
  }

  function finish(outcome: Outcome): void {
    if (over) return;
    giveUp();
    on.onOver(outcome);
  }

  function sayIt(): void {
    const mine = ++sayings;
    engine.say(text, voice, rate, {
      onStart() {
        if (over || mine !== sayings) return;
        started = true;
        on.onStart();
      },
      onEnd() {
        if (mine === sayings) finish('ended');
      },
      onError(code) {
        if (mine === sayings) finish(outcomeOf(code));
      },
    });
  }

  sayIt();
  return giveUp;
}

function outcomeOf(code: string): Outcome {
  switch (code) {
    case 'interrupted':
    case 'canceled':
      return 'interrupted';
    case 'not-allowed':
      return 'not allowed';
    default:
      return 'failed';
  }
}
