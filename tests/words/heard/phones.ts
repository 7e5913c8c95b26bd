import { dictionary } from 'cmu-pronouncing-dictionary';

/** Trade words the dictionary lacks, in its own phones. */
const TRADE_WORDS: Readonly<Record<string, string>> = {
  torqued: 'T AO R K T',
  pushrods: 'P UH SH R AA D Z',
  "o'clock": 'AH K L AA K',
  "crank's": 'K R AE NG K S',
};

const VOWELS: ReadonlySet<string> = new Set(
  'AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW'.split(' '),
);

/** Consonants that noise makes one of: told apart by voicing alone, or both hisses, stops or nasals. */
const ALIKE: readonly (readonly string[])[] = [
  ['P', 'B', 'T', 'D', 'K', 'G'],
  ['F', 'V', 'TH', 'DH', 'HH'],
  ['S', 'Z', 'SH', 'ZH', 'CH', 'JH'],
  ['M', 'N', 'NG'],
  ['L', 'R', 'W', 'Y'],
];

/** The phones of a phrase, without stress. Throws for a word that no one has written down. */
export function phonesOf(phrase: string): readonly string[] {
  return phrase
    .toLowerCase()
    .replace(/[,.]/g, '')
    .split(/[\s-]+/)
    .flatMap((word) => {
      const phones = TRADE_WORDS[word] ?? dictionary[word];
      if (phones === undefined) throw new Error(`no phones are known for '${word}'`);
      return phones.replace(/\d/g, '').split(' ');
    });
}

function swap(a: string, b: string): number {
  if (a === b) return 0;
  if (VOWELS.has(a) && VOWELS.has(b)) return 0.5;
  return ALIKE.some((kind) => kind.includes(a) && kind.includes(b)) ? 0.5 : 1;
}

/** How far apart two phrases sound: the least cost of turning one into the other, over the longer's phones. */
export function phonesApart(a: readonly string[], b: readonly string[]): number {
  let above = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (const [i, from] of a.entries()) {
    const row = [i + 1];
    for (const [j, to] of b.entries()) {
      row.push(
        Math.min((above[j] ?? 0) + swap(from, to), (above[j + 1] ?? 0) + 1, (row[j] ?? 0) + 1),
      );
    }
    above = row;
  }
  return (above.at(-1) ?? 0) / Math.max(a.length, b.length, 1);
}
