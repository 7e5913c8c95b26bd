import type { EarState, Session, Spoken } from './earState';
import { REPEAT_ACROSS_MS, REPEAT_MS } from './timings';

/** A new text that is an earlier utterance over again, or that utterance grown. */
export interface Repeat {
  readonly how: 'same' | 'grown';
  readonly spoken: Spoken;
}

/**
 * Some services give a last text again as if it were new, the same or longer, at once or at the
 * start of the next session. Speech noticed since then makes it new all the same.
 */
export function repeated(
  { spoken }: EarState,
  session: Session,
  text: string,
  at: number,
): Repeat | null {
  const last = spoken.at(-1);
  if (last === undefined || !last.closed || session.speechAt !== null) return null;
  const across = last.session !== session.id;
  if (at - last.lastAt > (across ? REPEAT_ACROSS_MS : REPEAT_MS)) return null;
  if (text.toLowerCase() === last.text.toLowerCase()) return { how: 'same', spoken: last };
  const grown = text.toLowerCase().startsWith(`${last.text.toLowerCase()} `);
  return grown && !across ? { how: 'grown', spoken: last } : null;
}
