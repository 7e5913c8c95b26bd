import { callOf, unitOf } from '#counting';
import { QUARTER, turn48 } from '#valvetrain';
import { heardCount48, hearNumber, hearWhole, sayQuarters } from '../../numbers';
import type { Grammar } from '../grammar';
import type { PhraseGroup, Understood } from '../phrase';

/** Past the most that can be counted, but a number all the same: it is answered, not ignored. */
const LARGEST_ANSWERED = 99;

/** A count as called: a bare number of the unit called, or so many quarters. */
function readCount(tokens: readonly string[], grammar: Grammar): Understood | null {
  const body = afterCarrier(tokens, grammar);
  const count48 = body === null ? null : count48Of(body, grammar);
  return body === null || count48 === null
    ? null
    : {
        meaning: {
          kind: 'command',
          command: { type: 'call', to48: turn48(count48), form: 'bare' },
        },
        phrase: phraseOf(body, count48, grammar),
      };
}

/** Without the carrier word; null when it is asked for and missing. */
function afterCarrier(tokens: readonly string[], { carrier }: Grammar): readonly string[] | null {
  if (carrier === null) return tokens;
  return tokens[0] === carrier ? tokens.slice(1) : null;
}

function count48Of(body: readonly string[], { calling, stage }: Grammar): number | null {
  const text = body.join(' ');
  const heard = hearNumber(text);
  if (heard === undefined) {
    const whole = hearWhole(text);
    const tooMany = whole !== undefined && whole > 40 && whole <= LARGEST_ANSWERED;
    return tooMany ? callOf(whole, calling) : null;
  }
  if (heard.unit === 'turn') return null;
  if (heard.unit === 'stroke' && calling.way !== 'strokes') return null;
  if (heard.whole === 0 && (heard.unit === undefined || heard.fraction.num === 0)) return null;
  // At 'how far?' a part of a quarter is the landing, not a count.
  if (heard.whole === 0 && stage === 'landing') return null;
  return heardCount48(heard, unitOf(calling)) ?? null;
}

function phraseOf(body: readonly string[], count48: number, { calling, carrier }: Grammar): string {
  const one = count48 === QUARTER;
  const quarters = `${sayQuarters(turn48(count48))} ${one ? 'quarter' : 'quarters'}`;
  const count =
    calling.way === 'quarters' && !named(body) ? quarters.replace(/ quarters?$/, '') : quarters;
  const said = count48 < QUARTER ? sayQuarters(turn48(count48)) : count;
  return carrier === null ? said : `${carrier} ${said}`;
}

const named = (tokens: readonly string[]) => tokens.some((token) => token.startsWith('quarter'));

/** By quarters or by turns; where strokes are called a bare number is so many of them. */
function readUnits(tokens: readonly string[], grammar: Grammar): Understood | null {
  const strokesOnly = grammar.calling.way === 'strokes' && !named(tokens);
  return strokesOnly ? null : readCount(tokens, grammar);
}

function readStrokes(tokens: readonly string[], grammar: Grammar): Understood | null {
  const strokesOnly = grammar.calling.way === 'strokes' && !named(tokens);
  return strokesOnly ? readCount(tokens, grammar) : null;
}

const shared = { heads: [], commands: ['call'], read: readUnits } as const;

export const count: PhraseGroup = {
  name: 'count',
  when: 'counting; by turns where the job calls turns',
  fixed: [],
  numbers: [
    {
      ...shared,
      shape: 'one … forty, with or without ‘quarters’; after the carrier word where one is set',
      examples: ['four', 'twenty-one', 'four quarters', 'five and a half quarters'],
    },
    {
      ...shared,
      shape: 'so many and a part: half, quarter, third, three quarters',
      examples: ['five and a half', 'five and a quarter', 'four and two thirds'],
    },
    {
      ...shared,
      shape: 'a part of a quarter',
      examples: ['half a quarter', 'a quarter of a quarter'],
    },
  ],
};

export const strokes: PhraseGroup = {
  name: 'strokes',
  when: 'counting, where the job calls strokes',
  fixed: [],
  numbers: [
    {
      ...shared,
      shape: 'one … forty, with or without ‘strokes’; spoken back in quarters',
      examples: ['six', 'six strokes'],
      read: readStrokes,
    },
  ],
};
