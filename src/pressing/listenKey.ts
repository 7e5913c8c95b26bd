import type { Press } from './press';
import { DEBOUNCE_MS } from './timings';

/** The key that opens the ear while it is held. */
export interface ListenHold {
  readonly code: string;
  /** Set from its key-up until the debounce has passed. */
  readonly upAt: number | null;
}

/** The listening key after one event. */
export interface ListenOutcome {
  readonly listening: ListenHold | null;
  readonly presses: readonly Press[];
}

/** The key goes down: the ear opens, or stays open when the contact bounced or a key-up was lost. */
export function listenDown(listening: ListenHold | null, code: string): ListenOutcome {
  return {
    listening: { code, upAt: null },
    presses: listening === null ? [{ kind: 'listen', on: true }] : [],
  };
}

/** The key comes up: the ear closes after the debounce, which also keeps the end of a word. */
export function listenUp(listening: ListenHold | null, code: string, at: number): ListenOutcome {
  if (listening === null || listening.code !== code) return { listening, presses: [] };
  return { listening: { code, upAt: at }, presses: [] };
}

/** Closes the ear now. */
export function endListening(listening: ListenHold | null): ListenOutcome {
  return {
    listening: null,
    presses: listening === null ? [] : [{ kind: 'listen', on: false }],
  };
}

/** Time passes: closes the ear once the key has stayed up. */
export function listenTime(listening: ListenHold | null, at: number): ListenOutcome {
  const wakeAt = listenWakeAt(listening);
  return wakeAt !== undefined && at >= wakeAt
    ? endListening(listening)
    : { listening, presses: [] };
}

/** When the ear closes by itself. */
export function listenWakeAt(listening: ListenHold | null): number | undefined {
  return listening === null || listening.upAt === null ? undefined : listening.upAt + DEBOUNCE_MS;
}
