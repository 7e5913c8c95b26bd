/**
 * Words: language as data. What is heard, said and shown in English, and numbers both ways.
 * Pure; it imports only valvetrain and counting. No sound, no screens, no decisions live here.
 */
import type { Announcement, Refusal } from '#counting';
import type { SayingContext } from './context';
import { en } from './en';

export type { SayingContext, TalkLevel, Units } from './context';
export * from './en/heard';
export * from './en/numbers';
export type { Language } from './language';
export { type SpokenLine, spokenLog } from './spokenLog';

const language = en;

/** Tag of the language spoken and shown, for the voice and the page. */
export const languageTag: string = language.tag;

/** Strings of the screens. */
export const shown = language.shown;

/** The spoken line of an announcement; '' where a tick says it all. */
export function say(announcement: Announcement, context: SayingContext): string {
  return language.said(announcement.fact, context);
}

/** The caption of an announcement: the spoken line, or a few words for the tick. Never empty. */
export function caption(announcement: Announcement, context: SayingContext): string {
  const { fact, cue } = announcement;
  return language.said(fact, context) || language.quiet(fact, cue, context);
}

/** What stands for an instruction that came too late. It does not repeat the instruction. */
export function lapsed(): string {
  return language.lapsed();
}

/** Why a command was not taken, and what to do next. Counts are in quarters. */
export function refusalSentence(refusal: Refusal): string {
  return language.refused(refusal);
}
