import { defaultKeymap, type KeyMeaning, type Keymap } from './keymap';
import { keymapProblems } from './keymapProblems';

/** Keys as they were kept: the meanings may be of another version. */
export interface KeptKeys {
  readonly pedal: { readonly codes: readonly string[]; readonly sendsKeyUp: boolean };
  readonly keys: Readonly<Record<string, string>>;
  readonly listen?: string;
}

const MEANINGS: readonly string[] = [
  ...new Set<string>(Object.values(defaultKeymap.keys)),
  'next stage',
  'zero',
];

function isMeaning(meaning: string): meaning is KeyMeaning {
  return MEANINGS.includes(meaning);
}

/**
 * The keymap that was kept, without meanings this version does not know; the keys as they come when
 * nothing was kept, or what was kept contradicts itself.
 */
export function readKeymap(kept: KeptKeys | null): Keymap {
  if (kept === null) return defaultKeymap;
  const keys = Object.entries(kept.keys).flatMap(([code, meaning]) =>
    isMeaning(meaning) ? [[code, meaning] as const] : [],
  );
  const keymap: Keymap = {
    pedal: kept.pedal,
    keys: Object.fromEntries(keys),
    ...(kept.listen === undefined ? {} : { listen: kept.listen }),
  };
  return keymapProblems(keymap).length === 0 ? keymap : defaultKeymap;
}
