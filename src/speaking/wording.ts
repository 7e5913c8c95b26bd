import type { Announcement } from '#counting';
import { caption, lapsed, type SayingContext, say } from '#words';

/** How an announcement becomes text. */
export interface Wording {
  /** The spoken line; '' where a tick says it all. */
  said(announcement: Announcement, context: SayingContext): string;
  /** The caption; never empty. */
  caption(announcement: Announcement, context: SayingContext): string;
  /** The caption of an instruction that was not given. It must not repeat the instruction. */
  lapsed(announcement: Announcement, context: SayingContext): string;
}

/** The words of the app's language. */
export const appWords: Wording = {
  said: say,
  caption,
  lapsed,
};
