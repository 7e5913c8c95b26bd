import {
  type Announcement,
  announce,
  announceReply,
  type CommandBody,
  decide,
  evolve,
  initial,
  type JobEvent,
  type JobState,
  type SetUp,
} from '#counting';
import { caption, type SayingContext, say } from '#words';

/** A line with the second it was spoken at. */
export interface Heard {
  readonly atS: number;
  readonly line: string;
}

/**
 * A bench with a mouth by the rule of pauses: a count's line is spoken once the builder has paused
 * for 1.6 times the median interval of the valve (0.7 to 2.5 s; 1.2 s at first), and dropped when
 * anything newer comes sooner.
 */
export function bench(setUp: SetUp, context: SayingContext) {
  let state: JobState = initial;
  let now = 0;
  let waiting: { readonly line: string; readonly dueS: number } | null = null;
  let counts: number[] = [];
  const heard: Heard[] = [];
  const captions: string[] = [];
  const events: JobEvent[] = [];

  function tell(announcements: readonly Announcement[]): void {
    for (const announcement of announcements) {
      const line = say(announcement, context);
      captions.push(caption(announcement, context));
      if (announcement.timing === 'at a pause') {
        waiting = line === '' ? null : { line, dueS: now + pauseS(counts) };
      } else if (line !== '') {
        waiting = null;
        heard.push({ atS: now, line });
      }
    }
  }

  /** Gives a command some seconds after the one before. */
  function act(body: CommandBody, afterS: number): void {
    now += afterS;
    if (waiting !== null && now >= waiting.dueS)
      heard.push({ atS: waiting.dueS, line: waiting.line });
    waiting = null;
    const decision = decide(state, { ...body, at: 1_000_000 + now * 1000, by: 'key' });
    if (decision.kind !== 'events') {
      tell(announceReply(state, decision));
      return;
    }
    for (const event of decision.events) {
      const before = state;
      state = evolve(state, event);
      events.push(event);
      if (event.type === 'zeroTouched') counts = [];
      if (event.type === 'counted') counts.push(now);
      tell(announce(before, event, state));
    }
  }

  const app = { version: '0.0.0', commit: 'test' };
  act({ type: 'openJob', jobId: 'test', setUp, app }, 0);
  return { act, heard, captions, events, state: () => state };
}

function pauseS(counts: readonly number[]): number {
  const intervals = counts.slice(1).map((at, i) => at - (counts[i] ?? at));
  const median = intervals.sort((a, b) => a - b)[Math.floor(intervals.length / 2)];
  return median === undefined ? 1.2 : Math.min(2.5, Math.max(0.7, 1.6 * median));
}

/** Words of lines, as a voice says them: 'seventy-eight' is one. */
export function words(lines: readonly string[]): number {
  return lines
    .join(' ')
    .split(/\s+/)
    .filter((word) => /\w/.test(word)).length;
}
