import type { Clock } from '#clock';
import { type Note, TICKS, type Tick, tickMs } from './ticks';

/** What makes the sound: times are its own seconds. */
export interface Beeper {
  /** Its time now, seconds; null while it makes no sound. */
  nowS(): number | null;
  beep(note: Note, atS: number): void;
  /** Opens it, or wakes it; resolves when it sounds. Inside a key or touch handler. Never rejects. */
  wake(): Promise<void>;
}

/** Ticks: without words, and never waiting for anything. */
export interface Ticker {
  tick(tick: Tick): void;
  /** Call inside a key or touch handler: sound may start, or start again after a call or a lock. */
  unlock(): void;
  /** The last tick scheduled: the beeper's seconds, or null when there was no sound. */
  last(): ScheduledTick | null;
}

export interface ScheduledTick {
  readonly tick: Tick;
  /** By the clock, ms: when it was asked for. */
  readonly askedAt: number;
  /** By the beeper, seconds: when it sounds; null while there is no sound. */
  readonly soundsAtS: number | null;
}

/** A tick asked for while the sound was still waking is played if it woke within this, ms. */
const WAKING_MS = 300;
/** Two ticks at the same moment are heard one after the other, this far apart, seconds. */
const APART_S = 0.02;

export interface TickerParts {
  readonly clock: Clock;
  readonly beeper: Beeper;
  readonly onTick?: (scheduled: ScheduledTick) => void;
}

/** Schedules ticks at once on the beeper. */
export function createTicker({ clock, beeper, onTick }: TickerParts): Ticker {
  let last: ScheduledTick | null = null;
  let freeAtS = 0;
  let unheard: ScheduledTick | null = null;

  function play(tick: Tick): number | null {
    const nowS = beeper.nowS();
    if (nowS === null) return null;
    const startS = Math.max(nowS, freeAtS);
    let atS = startS;
    for (const note of TICKS[tick]) {
      atS += note.afterMs / 1000;
      beeper.beep(note, atS);
      atS += note.ms / 1000;
    }
    freeAtS = startS + tickMs(tick) / 1000 + APART_S;
    return startS;
  }

  function catchUp(): void {
    const waited = unheard;
    unheard = null;
    if (waited !== null && clock.now() - waited.askedAt <= WAKING_MS) play(waited.tick);
  }

  return {
    tick(tick) {
      const soundsAtS = play(tick);
      last = { tick, askedAt: clock.now(), soundsAtS };
      if (soundsAtS === null) unheard = last;
      onTick?.(last);
    },
    unlock() {
      if (beeper.nowS() === null) void beeper.wake().then(catchUp);
    },
    last: () => last,
  };
}
