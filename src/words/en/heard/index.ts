/**
 * What is heard in English: phrases as data, one file a group, and the one matcher that finds the
 * meaning of an utterance in the grammar of the moment. What the ear itself has to say is here too.
 * Pure. No sound, no timing and no decisions: whether a meaning may be acted on is for others.
 */
export type { EarKind, EarWhy } from '#counting';
export { type EarNotice, sayEar, sayMissed } from './earNotice';
export { isEchoOf } from './echo';
export { CARRIER, type Grammar, type GrammarOptions, grammarFor } from './grammar';
export { hear } from './hear';
export type { Hearing, Meaning, MissedWhy } from './hearing';
export { hintsFor } from './hints';
export { type Sayable, sayable } from './sayable';
