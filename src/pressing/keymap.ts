/** A digit of the number pad or the top row. */
export type DigitMeaning = `digit ${0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9}`;

/** What one key can be set to. `digit 0` alone is zero; `zero` is zero whatever came before. */
export type KeyMeaning =
  | 'one more'
  | 'half'
  | 'take back'
  | 'next stage'
  | 'zero'
  | 'seat and accept'
  | 'say again'
  | 'ear'
  | DigitMeaning;

/** What a code does: its own meaning, or one of the two that are held. */
export type Meaning = KeyMeaning | 'pedal' | 'listen';

/** The one pedal: two codes when the device sends them in turn. */
export interface Pedal {
  readonly codes: readonly string[];
  /** False for pedals that tell nothing, or nothing true, of being let go. */
  readonly sendsKeyUp: boolean;
}

/** All keys of this device, as plain data that can be kept. Keys are named by `code`. */
export interface Keymap {
  readonly pedal: Pedal;
  readonly keys: Readonly<Record<string, KeyMeaning>>;
  /** Opens the ear while held; none until learned. */
  readonly listen?: string;
}

function digitKeys(prefix: 'Numpad' | 'Digit'): Record<string, KeyMeaning> {
  const digits = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] as const;
  return Object.fromEntries(digits.map((digit) => [`${prefix}${digit}`, `digit ${digit}`]));
}

/** The keys before anything is learned. */
export const defaultKeymap: Keymap = {
  pedal: { codes: ['PageDown'], sendsKeyUp: true },
  keys: {
    Space: 'one more',
    Enter: 'one more',
    NumpadEnter: 'one more',
    PageDown: 'one more',
    ArrowRight: 'one more',
    NumpadDecimal: 'half',
    KeyH: 'half',
    NumpadSubtract: 'take back',
    Backspace: 'take back',
    PageUp: 'take back',
    ArrowLeft: 'take back',
    NumpadAdd: 'seat and accept',
    NumpadMultiply: 'say again',
    NumpadDivide: 'ear',
    ...digitKeys('Numpad'),
    ...digitKeys('Digit'),
  },
};

/**
 * The one meaning of a code, or null. The pedal goes before the key list, where its code may also
 * stand as `one more` (a tap is one more), so that it stays useful once another pedal is learned.
 */
export function meaningOf(keymap: Keymap, code: string): Meaning | null {
  if (keymap.pedal.codes.includes(code)) return 'pedal';
  if (keymap.listen === code) return 'listen';
  return Object.hasOwn(keymap.keys, code) ? (keymap.keys[code] ?? null) : null;
}

/** Whether a meaning is one digit of a number. */
export function isDigit(meaning: Meaning): meaning is DigitMeaning {
  return meaning.startsWith('digit ');
}

/** The digit, 0 to 9. */
export function digitOf(meaning: DigitMeaning): number {
  return Number(meaning.slice('digit '.length));
}
