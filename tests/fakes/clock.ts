import type { Clock } from '#clock';

interface Due {
  readonly atMs: number;
  readonly order: number;
  readonly fn: () => void;
}

/** A clock that stands still until told. Due callbacks run in order of time, then of asking. */
export interface FakeClock extends Clock {
  /** Moves on by `ms`, running what falls due on the way, also what those callbacks ask for. */
  advance(ms: number): void;
  /** How many callbacks still wait. */
  waiting(): number;
}

export function fakeClock(startMs = 1_700_000_000_000): FakeClock {
  let nowMs = startMs;
  let asked = 0;
  const waiting = new Set<Due>();

  function nextDue(untilMs: number): Due | undefined {
    let next: Due | undefined;
    for (const due of waiting) {
      if (due.atMs > untilMs) continue;
      if (!next || due.atMs < next.atMs || (due.atMs === next.atMs && due.order < next.order)) {
        next = due;
      }
    }
    return next;
  }

  return {
    now: () => nowMs,
    after(ms, fn) {
      const due: Due = { atMs: nowMs + Math.max(0, ms), order: asked++, fn };
      waiting.add(due);
      return () => {
        waiting.delete(due);
      };
    },
    advance(ms) {
      const untilMs = nowMs + ms;
      for (let due = nextDue(untilMs); due; due = nextDue(untilMs)) {
        waiting.delete(due);
        nowMs = due.atMs;
        due.fn();
      }
      nowMs = untilMs;
    },
    waiting: () => waiting.size,
  };
}
