import { GROUPS } from '../../../src/words/en/heard/groups';

/**
 * Whether a line is a phrase that moves a count, by the written list alone and a plain pattern of
 * numbers, without the matcher: what the matcher is held to.
 */
export function isPhrase(line: string): boolean {
  const text = line
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[,.]/g, '')
    .replace(/\b(o clock)\b/g, 'oclock')
    .trim();
  const seat = new RegExp(` (${[...SEATS].join('|')})$`);
  return FIXED.has(text) || COUNT.test(text) || COUNT.test(text.replace(seat, ''));
}

const plain = (text: string) => text.toLowerCase().replace(/['’,]/g, '');

const spellings = (name: string) =>
  GROUPS.filter((group) => group.name === name).flatMap(({ fixed }) =>
    fixed.flatMap(({ said, written = [] }) => [said, ...written].map(plain)),
  );

const SEATS: ReadonlySet<string> = new Set(spellings('seat'));
const FIXED: ReadonlySet<string> = new Set(GROUPS.flatMap(({ name }) => spellings(name)));

const UNITS =
  'one|two|three|four|five|six|seven|eight|nine|won|wun|to|too|tree|for|fore|fife|sics|sicks|ate|nein|niner';
const ONE = `(?:${UNITS}|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?: (?:${UNITS}))?|\\d{1,2})`;
const PART =
  '(?:a |an |one |two |three |five )?(?:half|halves|third|thirds|quarter|quarters|sixths?|eighths?|twelfths?)|[1-9]/(?:2|3|4|6|8|12)';
const MIXED = `(?:${ONE}|${ONE} (?:and |an |n )?(?:${PART})|${PART})`;
const OF = '(?: of)?(?: a)?';
const COUNT = new RegExp(
  `^(?:(?:a |${ONE} )?(?:full )?turns?|${MIXED}(?:${OF} (?:full )?(?:quarters?|turns?))?|${ONE} (?:and|an|n) (?:a )?bit|(?:just shy off?|a ha(?:ir|re) pass?t?(?:ed)?) (?:of )?${ONE}|(?:a )?(?:half|quarter|1/2|1/4) (?:past|passed|to|two|too|2|after|till) ${ONE}(?: oclock)?|${ONE} oclock|one more|won more|1 more)$`,
);
