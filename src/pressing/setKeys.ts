import type { KeyMeaning, Keymap, Pedal } from './keymap';

/** The keymap with these codes freed of every meaning they had. */
function without(keymap: Keymap, codes: readonly string[]): Keymap {
  const { pedal, keys, listen } = keymap;
  const kept = Object.entries(keys).filter(([code]) => !codes.includes(code));
  const freed: Keymap = {
    pedal: { ...pedal, codes: pedal.codes.filter((code) => !codes.includes(code)) },
    keys: Object.fromEntries(kept),
  };
  return listen === undefined || codes.includes(listen) ? freed : { ...freed, listen };
}

/** Makes a learned pedal the one pedal. Its codes lose other meanings, but `one more` stays. */
export function withPedal(keymap: Keymap, pedal: Pedal): Keymap {
  const others = pedal.codes.filter((code) => keymap.keys[code] !== 'one more');
  return { ...without(keymap, others), pedal };
}

/** Gives a key a meaning, in place of any it had. */
export function withKey(keymap: Keymap, code: string, meaning: KeyMeaning): Keymap {
  const freed = without(keymap, [code]);
  return { ...freed, keys: { ...freed.keys, [code]: meaning } };
}

/** Makes a key open the ear while held, in place of any meaning it had. */
export function withListen(keymap: Keymap, code: string): Keymap {
  return { ...without(keymap, [code]), listen: code };
}

/** Whether the pedal can only be tapped and no key goes to the next stage. */
export function needsStageKey(keymap: Keymap): boolean {
  return !keymap.pedal.sendsKeyUp && !Object.values(keymap.keys).includes('next stage');
}
