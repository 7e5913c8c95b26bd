import { type Grammar, type Hearing, hear } from '#words';
import type { Alternative } from './earInput';

/** A reading, and what it means. */
export interface Reading {
  readonly text: string;
  readonly hearing: Hearing;
}

/**
 * The reading to go by: the service's first, unless that is no phrase and exactly one command of
 * several words is among the others, word for word. A count is never picked from among them.
 */
export function bestOf(alternatives: readonly Alternative[], grammar: Grammar): Reading {
  const readings = alternatives.map(({ text }) => ({
    text: text.trim(),
    hearing: hear(text, grammar),
  }));
  const [first = { text: '', hearing: hear('', grammar) }, ...others] = readings;
  if (first.hearing.kind === 'meaning') return first;
  const sure = others.filter(({ hearing }) => isCommand(hearing));
  const meanings = new Set(sure.map(({ hearing }) => JSON.stringify(hearing)));
  return meanings.size === 1 ? (sure[0] ?? first) : first;
}

function isCommand(hearing: Hearing): boolean {
  if (hearing.kind !== 'meaning' || hearing.cost > 0) return false;
  const counts = hearing.meanings.some(
    (meaning) => meaning.kind === 'command' && meaning.command.type === 'call',
  );
  return !counts && hearing.phrase.includes(' ');
}
