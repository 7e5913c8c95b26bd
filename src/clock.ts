/** Stops what `after` would have done; calling it again, or too late, does nothing. */
export type Cancel = () => void;

/** Time as the app sees it. Everything that waits or stamps is handed one, so tests bring their own. */
export interface Clock {
  /** Milliseconds since the Unix epoch. */
  now(): number;
  /** Calls `fn` once, `ms` milliseconds from now. */
  after(ms: number, fn: () => void): Cancel;
}

/** The device's own clock: the only place in the app that sets a timer. */
export const systemClock: Clock = {
  now: () => Date.now(),
  after(ms, fn) {
    const timer = setTimeout(fn, ms);
    return () => clearTimeout(timer);
  },
};
