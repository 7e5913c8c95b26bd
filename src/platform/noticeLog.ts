/** Something worth knowing when the app misbehaved: when, and what, in fixed words. */
export interface Notice {
  /** ms since 1970. */
  readonly at: number;
  /** Of the app's own fixed words: never what was heard, typed or named. */
  readonly what: string;
}

export interface NoticeLog {
  add(what: string): void;
  /** Oldest first. */
  list(): readonly Notice[];
}

/** How many notices are kept. */
export const MOST_NOTICES = 500;

/** The last notices, in memory. */
export function createNoticeLog(now: () => number): NoticeLog {
  let notices: readonly Notice[] = [];
  return {
    add(what) {
      notices = [...notices.slice(1 - MOST_NOTICES), { at: now(), what }];
    },
    list: () => notices,
  };
}

/**
 * Where an error came from, without its message, which may quote what was typed: 'TypeError at
 * index-1a2b.js:12:345'.
 */
export function faultOf(error: unknown): string {
  if (!(error instanceof Error)) return typeof error;
  const name = /^[A-Za-z]{1,40}$/.test(error.name) ? error.name : 'Error';
  const place = /([\w.-]+\.js:\d+:\d+)/.exec(error.stack ?? '')?.[1];
  return place === undefined ? name : `${name} at ${place}`;
}
