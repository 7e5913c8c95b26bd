import type { Cue, Fact, Refusal } from '#counting';
import type { SayingContext } from './context';

/** One language: everything said and shown, as functions of data. English is the only one so far. */
export interface Language<Shown> {
  /** BCP 47 tag of the voice and the page: 'en-GB'. */
  readonly tag: string;
  /** The spoken line; empty where a tick says it all. */
  said(fact: Fact, context: SayingContext): string;
  /** What stands on the screen for a tick without words. Never empty. */
  quiet(fact: Fact, cue: Cue | null, context: SayingContext): string;
  /** What stands on the screen for an instruction that came too late and was not given. */
  lapsed(): string;
  /** Why a command was not taken, and what to do next: for a screen without a bench. */
  refused(refusal: Refusal): string;
  /** Strings of the screens. */
  readonly shown: Shown;
}
