import type { Voice } from '#bench';
import type { Announcement } from '#counting';

/** A mouth that writes down what it is given. */
export interface FakeVoice extends Voice {
  readonly told: Announcement[];
  readonly calls: string[];
  /** Kinds of the facts told since last asked. */
  take(): string[];
}

export function fakeVoice(): FakeVoice {
  const told: Announcement[] = [];
  const calls: string[] = [];
  let taken = 0;
  return {
    told,
    calls,
    take() {
      const kinds = told.slice(taken).map(({ fact }) => fact.kind);
      taken = told.length;
      return kinds;
    },
    unlock: () => calls.push('unlock'),
    announce(announcements) {
      told.push(...announcements);
    },
    kept: (seq) => calls.push(`kept ${seq}`),
    alarm: (on) => calls.push(`alarm ${on}`),
    cut: () => calls.push('cut'),
    hush: () => calls.push('hush'),
  };
}
