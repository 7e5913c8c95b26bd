import { breaksOff, ruleOf } from './lineRules';
import type { Line, MouthState } from './mouth';
import { pauseMs } from './rhythm';

/** An instruction to turn the crank is fresh for this long after it was offered, ms. */
export const FRESH_MS = 1000;

/** Whether a line's fact is on disk, or the standing alarm lets words go without (C10). */
export function mayBeTold(state: MouthState, line: Line): boolean {
  return state.alarm || line.keptThrough <= state.keptThrough;
}

/**
 * When a waiting line may be said, ms by the clock; null while it is not kept, which only news can
 * mend, and for one without words.
 */
export function readyAt(state: MouthState, line: Line): number | null {
  if (line.silent || !mayBeTold(state, line)) return null;
  const afterCut = line.batch <= state.cut.batch ? state.cut.until : 0;
  const since = Math.max(line.offeredAt, state.rhythm.lastAt ?? 0);
  const paused = line.timing === 'at a pause' ? since + pauseMs(state.rhythm) : 0;
  return Math.max(line.offeredAt, state.freeAt, afterCut, paused);
}

/**
 * The line whose turn it is at `at`: alarms first, then an instruction while it is fresh, even
 * before the other facts of its command, then in order.
 * Null while nothing is ready, or nothing that breaks off the line being said.
 */
export function nextLine(state: MouthState, at: number): Line | null {
  const said = state.saying?.line.kind;
  const ready = state.waiting.filter((line) => {
    const when = readyAt(state, line);
    const free = said === undefined || breaksOff(line.kind, line.perishable, said);
    return when !== null && when <= at && free;
  });
  return (
    ready.find(({ kind }) => ruleOf(kind).rank === 4) ??
    ready.find(({ perishable }) => perishable) ??
    ready[0] ??
    null
  );
}

/** When time alone next changes something; undefined if it does not. */
export function wakeAt(state: MouthState, at: number): number | undefined {
  const times: number[] = state.saying === null ? [] : [state.saying.overAt];
  for (const line of state.waiting) {
    if (line.perishable) times.push(line.offeredAt + FRESH_MS);
    const when = readyAt(state, line);
    if (when !== null && when > at) times.push(when);
  }
  return times.length === 0 ? undefined : Math.min(...times);
}
