import { NUMBER_HOMOPHONES } from '../numbers';
import { beginsLonger } from './begins';
import { isSeveral, readCountThenSeat } from './breath';
import { readExact } from './exact';
import type { Grammar } from './grammar';
import type { Hearing } from './hearing';
import { nearest, unfinished } from './near';
import { plainTokens } from './plainTokens';

/** 'Bottomed' says the plunger is at its end: it is never taken for the seat, nor for anything else. */
const RULED_OUT: ReadonlySet<string> = new Set(['bottomed', 'bottom', 'bottoms', 'bottoming']);

/**
 * What an utterance means: the whole of it, in the grammar of this moment. A phrase that is known
 * but makes no sense now is still a meaning; decide answers it in words. Never throws.
 */
export function hear(text: string, grammar: Grammar): Hearing {
  const tokens = plainTokens(text);
  const waits = beginsLonger(tokens, grammar);
  if (tokens.length === 0 || tokens.some((token) => RULED_OUT.has(token))) {
    return { kind: 'outside', waits };
  }
  const exact = readExact(tokens, grammar);
  if (exact !== null) {
    const { meaning, phrase } = exact;
    const isCall = meaning.kind === 'command' && meaning.command.type === 'call';
    const plainCount = isCall && !tokens.some((token) => ALIKE.has(token));
    return { kind: 'meaning', meanings: [meaning], phrase, cost: 0, plainCount, waits };
  }
  const pair = readCountThenSeat(tokens, grammar);
  if (pair !== null) {
    return {
      kind: 'meaning',
      meanings: pair.map(({ meaning }) => meaning),
      phrase: pair.map(({ phrase }) => phrase).join(', '),
      cost: 0,
      plainCount: false,
      // Two changes are not easily withdrawn when the utterance goes on as talk.
      waits: true,
    };
  }
  return { ...inexact(tokens, grammar), waits };
}

type Inexact =
  | Pick<
      Extract<Hearing, { kind: 'meaning' }>,
      'kind' | 'meanings' | 'phrase' | 'cost' | 'plainCount'
    >
  | Pick<Extract<Hearing, { kind: 'missed' }>, 'kind' | 'near' | 'why'>
  | { readonly kind: 'outside' };

function inexact(tokens: readonly string[], grammar: Grammar): Inexact {
  const { carrier } = grammar;
  if (carrier !== null && carrier !== tokens[0]) {
    const counted = readExact([carrier, ...tokens], grammar);
    if (counted !== null) return { kind: 'missed', near: counted.phrase, why: 'carrier' };
  }
  if (isSeveral(tokens, grammar)) {
    return { kind: 'missed', near: tokens.join(' '), why: 'two' };
  }
  const begun = unfinished(tokens);
  if (begun !== null) return { kind: 'missed', near: begun, why: 'unfinished' };
  const near = nearest(tokens, grammar);
  if (near?.kind === 'meaning') {
    const { meaning, phrase, cost } = near;
    return { kind: 'meaning', meanings: [meaning], phrase, cost, plainCount: false };
  }
  return near ?? lastWords(tokens);
}

/** 'Zero', 'seated': too short to act on, but near enough to say what would do. */
function lastWords(tokens: readonly string[]): Inexact {
  const near = FULLER.get(tokens.join(' '));
  return near === undefined ? { kind: 'outside' } : { kind: 'missed', near, why: 'near' };
}

const FULLER: ReadonlyMap<string, string> = new Map([
  ['zero', 'zero lash'],
  ['0', 'zero lash'],
  ['seated', 'rocker seated'],
  ['seeded', 'rocker seated'],
  ['skip', 'skip this valve'],
  ['next', 'next valve'],
  ['loose', 'pushrods loose'],
  ['down', "it's down"],
]);

const ALIKE: ReadonlySet<string> = new Set(NUMBER_HOMOPHONES.map(({ written }) => written));
