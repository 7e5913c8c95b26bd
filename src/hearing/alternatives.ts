import { type Grammar, hear } from '#words';
import type { Alternative } from './earInput';

/**
 * The reading to go by: the service's first, unless that is no phrase and exactly one command of
 * several words is among the others, word for word. A count is never picked from among them.
 */
export function bestOf(alternatives: readonly Alternative[], grammar: Grammar): string {
  const [first = '', ...others] = alternatives.map(({ text }) => text.trim());
  if (hear(first, grammar).kind === 'meaning') return first;
  const sure = others.filter((text) => {
    const hearing = hear(text, grammar);
    return hearing.kind === 'meaning' && hearing.cost === 0 && isCommand(hearing);
  });
  const meanings = new Set(sure.map((text) => JSON.stringify(hear(text, grammar))));
  return meanings.size === 1 ? (sure[0] ?? first) : first;
}

function isCommand(hearing: Extract<ReturnType<typeof hear>, { kind: 'meaning' }>): boolean {
  const { meanings, phrase } = hearing;
  const counts = meanings.some(
    (meaning) => meaning.kind === 'command' && meaning.command.type === 'call',
  );
  return !counts && phrase.includes(' ');
}
