import type { CommandType } from '#counting';
import type { Grammar } from './grammar';
import type { Meaning } from './hearing';

/** A phrase of fixed words. */
export interface FixedPhrase {
  /** As it is said. */
  readonly said: string;
  /** Other spellings recognisers give for the same sounds. */
  readonly written?: readonly string[];
  /** The commands it may come to; none for talk and the ear. */
  readonly commands: readonly CommandType[];
  readonly means: (grammar: Grammar) => Meaning;
}

/** What a phrase with a number in it came to. */
export interface Understood {
  readonly meaning: Meaning;
  /** As it is properly said. */
  readonly phrase: string;
}

/** A phrase with a number in it. */
export interface NumberPhrase {
  /** How it goes, for the list of phrases: 'go to cylinder …'. */
  readonly shape: string;
  /** Examples as they are said. */
  readonly examples: readonly string[];
  /** The fixed words it starts with, in every spelling; none when it starts with the number. */
  readonly heads: readonly (readonly string[])[];
  readonly commands: readonly CommandType[];
  /** Null for anything that is not this phrase. */
  readonly read: (tokens: readonly string[], grammar: Grammar) => Understood | null;
}

/** Phrases that belong together: a row of the table of what is heard. */
export interface PhraseGroup {
  readonly name: string;
  /** When they make sense, in words. */
  readonly when: string;
  readonly fixed: readonly FixedPhrase[];
  readonly numbers: readonly NumberPhrase[];
}

/** A fixed phrase that always means one command. */
export function command(
  said: string,
  body: Extract<Meaning, { kind: 'command' }>['command'],
  ...written: readonly string[]
): FixedPhrase {
  return {
    said,
    written,
    commands: [body.type],
    means: () => ({ kind: 'command', command: body }),
  };
}

/** The rest of the tokens after one of the heads, longest first; null when none fits. */
export function afterHead(
  tokens: readonly string[],
  heads: readonly (readonly string[])[],
): readonly string[] | null {
  const fits = heads
    .filter((head) => head.every((word, i) => tokens[i] === word))
    .sort((a, b) => b.length - a.length);
  const [head] = fits;
  return head === undefined ? null : tokens.slice(head.length);
}
