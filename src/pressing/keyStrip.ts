import type { DigitMeaning, KeyMeaning, Keymap } from './keymap';
import { meaningOf } from './keymap';
import { keyName } from './keyName';

/** What one place on the key strip stands for; the digits share `number`. */
export type StripMeaning = 'pedal' | 'listen' | 'number' | Exclude<KeyMeaning, DigitMeaning>;

/** One place on the key strip. */
export interface StripKeys {
  readonly meaning: StripMeaning;
  readonly codes: readonly string[];
  /** The keys' names: 'Page down', 'Number pad 1 to 9, 1 to 9'. */
  readonly label: string;
}

const ORDER: readonly StripMeaning[] = [
  'pedal',
  'one more',
  'half',
  'number',
  'next stage',
  'zero',
  'seat and accept',
  'take back',
  'say again',
  'ear',
  'listen',
];

const ROWS = ['Numpad', 'Digit'] as const;

function stripMeaning(keymap: Keymap, code: string): StripMeaning | null {
  const meaning = meaningOf(keymap, code);
  switch (meaning) {
    case 'digit 0':
      return 'zero';
    case 'digit 1':
    case 'digit 2':
    case 'digit 3':
    case 'digit 4':
    case 'digit 5':
    case 'digit 6':
    case 'digit 7':
    case 'digit 8':
    case 'digit 9':
      return 'number';
    default:
      return meaning;
  }
}

/** Names of the keys, a whole row of digits as one. */
function labelOf(codes: readonly string[]): string {
  let rest = codes;
  const rows: string[] = [];
  for (const row of ROWS) {
    const whole = Array.from({ length: 9 }, (_, index) => `${row}${index + 1}`);
    if (whole.every((code) => rest.includes(code))) {
      rows.push(`${keyName(`${row}1`)} to 9`);
      rest = rest.filter((code) => !whole.includes(code));
    }
  }
  return [...rows, ...rest.map(keyName)].join(', ');
}

/** The keys as they now are, in the order of the work. Meanings without a key are left out. */
export function stripOf(keymap: Keymap): readonly StripKeys[] {
  const codes = [
    ...new Set([
      ...keymap.pedal.codes,
      ...Object.keys(keymap.keys),
      ...(keymap.listen === undefined ? [] : [keymap.listen]),
    ]),
  ];
  return ORDER.flatMap((meaning) => {
    const these = codes.filter((code) => stripMeaning(keymap, code) === meaning);
    return these.length === 0 ? [] : [{ meaning, codes: these, label: labelOf(these) }];
  });
}
