import type { Cancel, Clock } from '#clock';
import { expectedMs } from './breaths';
import type { Synth } from './synth';

/** Speech that begins this long after the app's own voice has ended may still be its echo, ms. */
export const TAIL_MS = 400;

/** A line to be said or, with no voice, to stand as a caption for the time it would take. */
export interface Voiced {
  readonly text: string;
  /** When it must have begun, ms by the clock; null when that is no matter. */
  readonly startBy: number | null;
  readonly onStart: () => void;
  readonly onEnd: () => void;
  /** No voice said it: it stands as a caption, and `onEnd` still comes. */
  readonly onUnsaid: () => void;
  /** It could not begin in time and is over. */
  readonly onLate: () => void;
}

/** One line at a time, aloud or in silence, and until when it is to be heard. */
export interface Voicing {
  /** Whether a voice is expected to say the next line. */
  aloud(): boolean;
  say(voiced: Voiced): void;
  stop(): void;
  /** Until when what is heard may be the app's own voice, its tail included; 0 if it never spoke. */
  busyUntil(): number;
}

export function createVoicing(clock: Clock, synth: Synth): Voicing {
  let current: Voiced | null = null;
  let cancelStanding: Cancel | null = null;
  let expectedEnd: number | null = null;
  let endedAt: number | null = null;

  function voiceOver(): void {
    if (expectedEnd !== null) endedAt = clock.now();
    expectedEnd = null;
  }

  function over(): void {
    voiceOver();
    cancelStanding?.();
    cancelStanding = null;
    current = null;
  }

  function aloud(): boolean {
    return synth.status() === 'ready' || synth.status() === 'waiting';
  }

  return {
    aloud,
    say(voiced) {
      over();
      current = voiced;
      const lastsMs = expectedMs(voiced.text, synth.choice().rate);
      /** A callback of this line, while it is the line. */
      const mine = (fn: () => void) => () => {
        if (current === voiced) fn();
      };
      const end = mine(() => {
        over();
        voiced.onEnd();
      });
      if (!aloud()) {
        cancelStanding = clock.after(lastsMs, end);
        return;
      }
      expectedEnd = clock.now() + lastsMs;
      const begin = mine(() => {
        expectedEnd = clock.now() + lastsMs;
        voiced.onStart();
      });
      const unsaid = mine(() => {
        voiceOver();
        cancelStanding = clock.after(lastsMs, end);
        voiced.onUnsaid();
      });
      const late = mine(() => {
        over();
        voiced.onLate();
      });
      synth.speak(
        voiced.text,
        { onStart: begin, onEnd: end, onError: (why) => (why === 'late' ? late() : unsaid()) },
        voiced.startBy,
      );
    },
    stop() {
      over();
      synth.cancel();
    },
    busyUntil() {
      if (expectedEnd !== null) return Math.max(clock.now(), expectedEnd) + TAIL_MS;
      return endedAt === null ? 0 : endedAt + TAIL_MS;
    },
  };
}
