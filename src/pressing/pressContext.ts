import type { Keymap } from './keymap';

/** What the reducer needs to know of the world at each input. */
export interface PressContext {
  /**
   * Whether a number is so near ahead of the present count that it is taken at once.
   * True for the present count itself too, so that the same number again is answered at once.
   */
  readonly withinStep: (value: number) => boolean;
  readonly keymap: Keymap;
  /** False away from the bench, under a dialog, or with the keys switched off. */
  readonly active: boolean;
}
