import { type Grammar, sayable } from '#words';
import { spokenWords } from './spokenWords';

/** Words of the trade that the general dictionary lacks, by its own phones. Derived from their parts. */
const TRADE_WORDS: ReadonlyMap<string, readonly string[]> = new Map([
  ['torqued', ['T AO R K T']],
  ['pushrods', ['P UH SH R AA D Z']],
  ["crank's", ['K R AE NG K S']],
]);

/** The phones of the model, silence left out. Each is also a word of its own: see `phoneWord`. */
export const PHONES: readonly string[] =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  );

/** The word that is nothing but this phone. */
export const phoneWord = (phone: string) => `ph_${phone.toLowerCase()}`;

const GRAMMARS: readonly Pick<Grammar, 'calling' | 'carrier'>[] = [
  { calling: { way: 'quarters' }, carrier: 'count' },
  { calling: { way: 'strokes', degrees: 90 }, carrier: null },
];

/** Every word that any phrase has, whatever the job. */
export function vocabulary(): ReadonlySet<string> {
  const phrases = GRAMMARS.flatMap((grammar) => sayable(grammar));
  return new Set(phrases.flatMap(({ text }) => spokenWords(text)));
}

/**
 * The general dictionary, one line a word, cut down to the phrases' own words, with the trade's words
 * and the bare phones added. Throws an Error naming the words that have no phones.
 */
export function trimmedDictionary(general: string): string {
  const wanted = vocabulary();
  const lines = general.split('\n').filter((line) => wanted.has(headOf(line)));
  const known = new Set(lines.map(headOf));
  const added = [...TRADE_WORDS].flatMap(([word, phones]) =>
    known.has(word) ? [] : phones.map((said) => `${word} ${said}`),
  );
  const missing = [...wanted].filter((word) => !known.has(word) && !TRADE_WORDS.has(word));
  if (missing.length > 0) throw new Error(`no phones for: ${missing.join(', ')}`);
  const bare = PHONES.map((phone) => `${phoneWord(phone)} ${phone}`);
  return `${[...lines, ...added, ...bare].join('\n')}\n`;
}

/** The word of a line, without the number of a second way to say it: 'a(2) EY' is 'a'. */
function headOf(line: string): string {
  return line.split(/\s/, 1)[0]?.replace(/\(\d+\)$/, '') ?? '';
}
