import type { CommandBody } from '#counting';

/** What a phrase means. Talk and the ear are no business of the bench's log. */
export type Meaning =
  | { readonly kind: 'command'; readonly command: CommandBody }
  /** Ends the app's talk and any pending turn of the crank. */
  | { readonly kind: 'talk'; readonly talk: 'stop' }
  | { readonly kind: 'ear'; readonly ear: 'shut' | 'open' };

/** Why something near the grammar was not taken. */
export type MissedWhy =
  /** It sounds like a phrase, but not enough. */
  | 'near'
  /** It could be either of two. */
  | 'tie'
  /** Several phrases in one breath that are not joined. */
  | 'two'
  /** A count without the carrier word. */
  | 'carrier'
  /** A phrase that lacks its number. */
  | 'unfinished';

/**
 * What an ear made of an utterance. `waits`: it begins a longer phrase that makes sense now, so its
 * end must be waited for.
 */
export type Hearing = { readonly waits: boolean } & (
  | {
      readonly kind: 'meaning';
      /** One, or a count and its seat. */
      readonly meanings: readonly Meaning[];
      /** The phrase as it is properly said. */
      readonly phrase: string;
      /** 0 for the phrase itself; above, the distance of what was heard from it. */
      readonly cost: number;
      /** A count of which every word is a number's own, none one that only sounds like it. */
      readonly plainCount: boolean;
    }
  | { readonly kind: 'missed'; readonly near: string; readonly why: MissedWhy }
  | { readonly kind: 'outside' }
);
