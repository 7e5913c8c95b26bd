import type { Clock } from '#clock';
import type { Announcement } from '#counting';
import type { SayingContext } from '#words';
import { type Caption, createCaptionLog } from './captions';
import type { Wording } from './wording';

export interface ScribeParts {
  readonly clock: Clock;
  readonly words: Wording;
  readonly context: () => SayingContext;
  readonly onCaption: (caption: Caption) => void;
}

/** Makes text of announcements, by token, and writes the captions. */
export interface Scribe {
  /** Takes an announcement under a new token. */
  take(announcement: Announcement): number;
  /** Its spoken line as things are now; '' where a tick says it all, or once it is forgotten. */
  said(token: number): string;
  write(token: number, spoken: boolean, outcome?: Caption['outcome']): void;
  forgetAllBut(tokens: ReadonlySet<number>): void;
  log(): readonly Caption[];
}

export function createScribe({ clock, words, context, onCaption }: ScribeParts): Scribe {
  const captions = createCaptionLog();
  const announced = new Map<number, Announcement>();
  let lastToken = 0;

  return {
    take(announcement) {
      lastToken += 1;
      announced.set(lastToken, announcement);
      return lastToken;
    },
    said(token) {
      const announcement = announced.get(token);
      return announcement === undefined ? '' : words.said(announcement, context());
    },
    write(token, spoken, outcome = 'given') {
      const announcement = announced.get(token);
      if (announcement === undefined) return;
      const text =
        outcome === 'given'
          ? words.caption(announcement, context())
          : words.lapsed(announcement, context());
      const caption = {
        token,
        text,
        kind: announcement.fact.kind,
        at: clock.now(),
        spoken,
        outcome,
      };
      captions.write(caption);
      onCaption(caption);
    },
    forgetAllBut(tokens) {
      for (const token of announced.keys()) if (!tokens.has(token)) announced.delete(token);
    },
    log: captions.read,
  };
}
