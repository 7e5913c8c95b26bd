import type { CommandType } from '#counting';
import { cardinal, sayLengthIn } from '../numbers';
import type { Grammar } from './grammar';
import { GROUPS } from './groups';

/** A phrase as it is spoken, every number in words. */
export interface Sayable {
  readonly text: string;
  /** The commands it may come to; none for talk and the ear. */
  readonly commands: readonly CommandType[];
}

const MOST_COUNTED = 40;
/** Counts with a part, landings on a mark, cylinders: as far as work goes. */
const MOST_MARKS = 16;
const MOST_TURNS = 6;
const HOURS = 12;
/** Spoken lengths of test pushrods, inches: from, to, and how finely. */
const LENGTHS_IN = { from: 5, to: 12, step: 0.025 } as const;
const MM_PER_INCH = 25.4;

/**
 * Every phrase that can be spoken to this job, for a recogniser that needs a closed list. What each
 * means, and whether it makes sense now, is for `hear` and `allowed`.
 */
export function sayable(grammar: Pick<Grammar, 'calling' | 'carrier'>): readonly Sayable[] {
  const fixed = GROUPS.flatMap((group) =>
    group.fixed.map(({ said, commands }) => ({ text: said, commands })),
  );
  return [
    ...fixed,
    ...of(['call'], counts(grammar)),
    ...of(['land', 'call'], landings()),
    ...of(['positionInTurn', 'call'], positions()),
    ...of(['clock'], hours()),
    ...of(
      ['moveReading'],
      upTo(MOST_MARKS, (n) => [`wrong cylinder, it's ${n}`]),
    ),
    ...of(['chooseValve'], upTo(MOST_MARKS, goTo)),
    ...of(['fitPushrod'], lengths()),
  ];
}

const of = (commands: readonly CommandType[], texts: readonly string[]): readonly Sayable[] =>
  texts.map((text) => ({ text, commands }));

function upTo(most: number, texts: (spoken: string) => readonly string[]): readonly string[] {
  return Array.from({ length: most }, (_, i) => texts(cardinal(i + 1))).flat();
}

function counts({ calling, carrier }: Pick<Grammar, 'calling' | 'carrier'>): readonly string[] {
  const whole = upTo(MOST_COUNTED, (n) => [n]);
  const parts = upTo(MOST_MARKS, (n) => [`${n} and a half`, `${n} and a quarter`]);
  const named =
    calling.way === 'strokes'
      ? upTo(MOST_COUNTED, (n) => (n === 'one' ? ['one stroke'] : [`${n} strokes`]))
      : [];
  const quarters = upTo(MOST_COUNTED, (n) => [n === 'one' ? 'one quarter' : `${n} quarters`]);
  const bare = [...whole, ...parts, ...named, ...quarters];
  return carrier === null ? bare : bare.map((count) => `${carrier} ${count}`);
}

function landings(): readonly string[] {
  return upTo(MOST_MARKS, (n) => [`${n} and a bit`, `a hair past ${n}`, `just shy of ${n}`]);
}

function positions(): readonly string[] {
  const within = [
    'quarter turn',
    'half turn',
    'half a turn',
    'three quarters of a turn',
    'full turn',
    'one turn',
  ];
  const turns = upTo(MOST_TURNS, (n) => [
    ...(n === 'one' ? [] : [`${n} turns`]),
    `${n} and a half turns`,
    `${n} and a quarter turns`,
  ]);
  return [...within, ...turns];
}

function hours(): readonly string[] {
  return upTo(HOURS, (n) => [
    `${n} o'clock`,
    `half past ${n}`,
    `quarter past ${n}`,
    `quarter to ${n}`,
  ]);
}

function goTo(n: string): readonly string[] {
  return ['', ', intake', ', exhaust'].map((valve) => `go to cylinder ${n}${valve}`);
}

function lengths(): readonly string[] {
  const { from, to, step } = LENGTHS_IN;
  return Array.from({ length: Math.round((to - from) / step) }, (_, i) => {
    const inches = Math.round((from + i * step) * 1000) / 1000;
    return `test rod ${sayLengthIn(inches * MM_PER_INCH, 'shop')}`;
  });
}
