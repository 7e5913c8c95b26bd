import type { Keymap, Meaning } from './keymap';
import { digitOf, isDigit } from './keymap';
import { keyName } from './keyName';

/** Keys that move the focus or change other keys, so that they can mean nothing else. */
const NEVER = new Set([
  '',
  'Unidentified',
  'Tab',
  'ShiftLeft',
  'ShiftRight',
  'ControlLeft',
  'ControlRight',
  'AltLeft',
  'AltRight',
  'MetaLeft',
  'MetaRight',
  'CapsLock',
  'NumLock',
  'ScrollLock',
]);

/** Whether a key can be given a meaning at all. */
export function canMean(code: string): boolean {
  return !NEVER.has(code);
}

/** Why a key can't be learned. */
export function cannotMean(code: string): string {
  return `${keyName(code)} can't be used here: choose another key.`;
}

/** A meaning as it stands in a sentence. */
export function meaningName(meaning: Meaning): string {
  if (isDigit(meaning)) return `the digit ${digitOf(meaning)}`;
  switch (meaning) {
    case 'pedal':
      return 'the pedal';
    case 'listen':
      return 'listen while held';
    case 'half':
      return 'half a quarter more';
    case 'ear':
      return 'ear open or shut';
    case 'one more':
    case 'take back':
    case 'next stage':
    case 'zero':
    case 'seat and accept':
    case 'say again':
      return meaning;
    default: {
      const never: never = meaning;
      return never;
    }
  }
}

/** Every meaning a code has been given, the pedal first. */
function meaningsOf(keymap: Keymap, code: string): readonly Meaning[] {
  const meanings: Meaning[] = [];
  if (keymap.pedal.codes.includes(code)) meanings.push('pedal');
  if (keymap.listen === code) meanings.push('listen');
  const key = Object.hasOwn(keymap.keys, code) ? keymap.keys[code] : undefined;
  // A tap of the pedal is one more, so both together are one meaning.
  if (key !== undefined && !(key === 'one more' && meanings.includes('pedal'))) meanings.push(key);
  return meanings;
}

function codesOf(keymap: Keymap): readonly string[] {
  const listen = keymap.listen === undefined ? [] : [keymap.listen];
  return [...new Set([...keymap.pedal.codes, ...listen, ...Object.keys(keymap.keys)])];
}

/** What is wrong with a keymap, a sentence each; empty when every key has one meaning. */
export function keymapProblems(keymap: Keymap): readonly string[] {
  const perKey = codesOf(keymap).flatMap((code) => {
    if (!canMean(code)) return [cannotMean(code)];
    const meanings = meaningsOf(keymap, code);
    return meanings.length < 2
      ? []
      : [`${keyName(code)} can't be both ${meanings.map(meaningName).join(' and ')}.`];
  });
  const none = keymap.pedal.codes.length === 0 ? ['No key is set as the pedal.'] : [];
  return [...none, ...perKey];
}

/** What codes would lose by being set to a meaning, a sentence each. */
export function losses(
  keymap: Keymap,
  codes: readonly string[],
  meaning: Meaning,
): readonly string[] {
  return codes.flatMap((code) =>
    meaningsOf(keymap, code)
      .filter((old) => old !== meaning && !(old === 'one more' && meaning === 'pedal'))
      .map(
        (old) =>
          `${keyName(code)} is ${meaningName(old)} now: as ${meaningName(meaning)} it no longer will be.`,
      ),
  );
}
