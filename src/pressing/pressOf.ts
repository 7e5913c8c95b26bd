import type { DigitMeaning, KeyMeaning } from './keymap';
import type { Press } from './press';

/** The press of a key that acts by itself, as it goes down. */
export function pressOf(meaning: Exclude<KeyMeaning, DigitMeaning>): Press {
  switch (meaning) {
    case 'one more':
      return { kind: 'step', times: 1 };
    case 'half':
    case 'take back':
    case 'next stage':
    case 'zero':
    case 'seat and accept':
    case 'say again':
    case 'ear':
      return { kind: meaning };
    default: {
      const never: never = meaning;
      return never;
    }
  }
}
