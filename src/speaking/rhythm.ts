import type { FactKind } from '#counting';

const PAUSE_OF_INTERVAL = 1.6;
const SHORTEST_PAUSE_MS = 700;
const LONGEST_PAUSE_MS = 2500;
/** Before this valve has an interval. */
const FIRST_PAUSE_MS = 1200;

/** How fast the builder counts this valve. */
export interface Rhythm {
  readonly lastAt: number | null;
  readonly intervalsMs: readonly number[];
}

/** No count of this valve yet. */
export const noRhythm: Rhythm = { lastAt: null, intervalsMs: [] };

function counted({ lastAt, intervalsMs }: Rhythm, at: number): Rhythm {
  return {
    lastAt: at,
    intervalsMs: lastAt === null ? intervalsMs : [...intervalsMs, Math.max(0, at - lastAt)],
  };
}

/** The rhythm after a fact: a count or a tap beats, another valve or a fresh start forgets. */
export function heard(rhythm: Rhythm, kind: FactKind, at: number): Rhythm {
  switch (kind) {
    case 'counted':
    case 'tapped':
      return counted(rhythm, at);
    case 'start':
    case 'valve':
    case 'restarted':
      return noRhythm;
    default:
      return rhythm;
  }
}

/** How long the builder must rest before words come, ms: 1.6 × the median interval, 0.7 to 2.5 s. */
export function pauseMs({ intervalsMs }: Rhythm): number {
  if (intervalsMs.length === 0) return FIRST_PAUSE_MS;
  const sorted = [...intervalsMs].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? upper;
  const pause = Math.round((PAUSE_OF_INTERVAL * (lower + upper)) / 2);
  return Math.min(LONGEST_PAUSE_MS, Math.max(SHORTEST_PAUSE_MS, pause));
}
