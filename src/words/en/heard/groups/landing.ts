import { callOf, type LandingWord, markOf, tapOf } from '#counting';
import { turn48 } from '#valvetrain';
import { hearNumber } from '../../numbers';
import type { Grammar } from '../grammar';
import type { Meaning } from '../hearing';
import { afterHead, type FixedPhrase, type PhraseGroup, type Understood } from '../phrase';

const land = (said: string, word: LandingWord, ...written: readonly string[]): FixedPhrase => ({
  said,
  written,
  commands: ['land'],
  means: () => ({ kind: 'command', command: { type: 'land', word } }),
});

/** A mark named in words: a whole number of the unit called. */
function markNamed(tokens: readonly string[]): number | null {
  const heard = hearNumber(tokens.join(' '));
  if (heard === undefined || heard.fraction.num !== 0 || heard.unit !== undefined) return null;
  return heard.whole >= 1 ? heard.whole : null;
}

/**
 * A landing with its mark answers 'how far?'; while counting it is the count itself, a quarter of a
 * mark past the one named or short of it.
 */
function atMark(
  mark: number | null,
  word: 'a bit past' | 'just shy',
  grammar: Grammar,
): Meaning | null {
  if (mark === null) return null;
  const of48 = callOf(mark, grammar.calling);
  if (grammar.stage === 'landing')
    return { kind: 'command', command: { type: 'land', word, of48 } };
  const bit48 = tapOf(markOf(grammar.calling));
  const to48 = turn48(word === 'just shy' ? of48 - bit48 : of48 + bit48);
  return { kind: 'command', command: { type: 'call', to48, form: 'bare' } };
}

function understood(
  phrase: string,
  mark: readonly string[],
  word: 'a bit past' | 'just shy',
  grammar: Grammar,
): Understood | null {
  const meaning = atMark(markNamed(mark), word, grammar);
  return meaning === null ? null : { meaning, phrase };
}

const BITS = [
  ['and', 'a', 'bit'],
  ['an', 'a', 'bit'],
  ['n', 'a', 'bit'],
  ['&', 'a', 'bit'],
  ['and', 'bit'],
];
const SHY_OF = [
  ['just', 'shy', 'of'],
  ['just', 'shy', 'off'],
];
const HAIR_PAST = [
  ['a', 'hair', 'past'],
  ['a', 'hair', 'passed'],
  ['a', 'hare', 'past'],
];

function readAndABit(tokens: readonly string[], grammar: Grammar): Understood | null {
  const tail = BITS.find((bit) => bit.every((word, i) => tokens.at(i - bit.length) === word));
  if (tail === undefined) return null;
  const mark = tokens.slice(0, -tail.length);
  return understood(`${mark.join(' ')} and a bit`, mark, 'a bit past', grammar);
}

function readShyOf(tokens: readonly string[], grammar: Grammar): Understood | null {
  const mark = afterHead(tokens, SHY_OF);
  return mark && understood(`just shy of ${mark.join(' ')}`, mark, 'just shy', grammar);
}

function readHairPast(tokens: readonly string[], grammar: Grammar): Understood | null {
  const mark = afterHead(tokens, HAIR_PAST);
  return mark && understood(`a hair past ${mark.join(' ')}`, mark, 'a bit past', grammar);
}

/** At 'how far?' a part of a quarter is what it went past the mark. */
function readPart(tokens: readonly string[], grammar: Grammar): Understood | null {
  if (grammar.stage !== 'landing' || markOf(grammar.calling) !== 12) return null;
  const heard = hearNumber(tokens.join(' '));
  if (heard?.unit !== 'quarter' || heard.whole !== 0) return null;
  const word = PARTS.get(`${heard.fraction.num}/${heard.fraction.den}`);
  if (word === undefined) return null;
  return {
    meaning: { kind: 'command', command: { type: 'land', word } },
    phrase: tokens.join(' '),
  };
}

const PARTS: ReadonlyMap<string, LandingWord> = new Map<string, LandingWord>([
  ['1/4', 'a bit past'],
  ['1/2', 'half'],
  ['3/4', 'just shy'],
]);

export const landing: PhraseGroup = {
  name: 'landing',
  when: 'at ‘how far?’; with a number also while counting',
  fixed: [
    land('half', 'half', 'a half', 'one half', '1/2', 'haf', 'halve'),
    land('nothing', 'nothing', 'nothing past', 'nuthin', 'nothin'),
    land(
      'a hair past',
      'a bit past',
      'hair past',
      'a hair passed',
      'a hare past',
      'hare past',
      'a hair pass',
    ),
    land('just shy', 'just shy', 'just shine', 'just chai', 'just sigh'),
  ],
  numbers: [
    {
      shape: '… and a bit',
      examples: ['four and a bit'],
      heads: [],
      commands: ['land', 'call'],
      read: readAndABit,
    },
    {
      shape: 'a hair past …',
      examples: ['a hair past four'],
      heads: HAIR_PAST,
      commands: ['land', 'call'],
      read: readHairPast,
    },
    {
      shape: 'just shy of …',
      examples: ['just shy of five'],
      heads: SHY_OF,
      commands: ['land', 'call'],
      read: readShyOf,
    },
    {
      shape: 'a part of a quarter, at ‘how far?’',
      examples: [],
      heads: [],
      commands: ['land'],
      read: readPart,
    },
  ],
};
