import { announce, evolve, initial, type JobEvent, setUpOf } from '#counting';
import type { SayingContext } from './context';
import { en } from './en';

/** One line of a job's spoken log. */
export interface SpokenLine {
  readonly seq: number;
  /** Wall clock of the event, ms since 1970. */
  readonly at: number;
  /** What was spoken; '' for a tick. */
  readonly said: string;
  readonly caption: string;
}

/** What the job's own set-up decides about its lines is taken from the log. */
export type LogContext = Omit<SayingContext, 'hands' | 'calling' | 'unkept'>;

/**
 * All that a log has to say, in order, as it would be spoken with every pause long enough. Refusals
 * and alarms are not in a log, and so not here. Pure: the same log gives the same lines.
 */
export function spokenLog(events: readonly JobEvent[], context: LogContext): readonly SpokenLine[] {
  let state = initial;
  return events.flatMap((event) => {
    const before = state;
    state = evolve(before, event);
    const setUp = setUpOf(state);
    const whole: SayingContext = {
      ...context,
      hands: setUp?.hands ?? 'alone',
      calling: setUp?.calling.way ?? 'quarters',
      unkept: false,
    };
    return announce(before, event, state).map(({ fact, cue }) => {
      const said = en.said(fact, whole);
      const { seq, at } = event;
      return { seq, at, said, caption: said || en.quiet(fact, cue, whole) };
    });
  });
}
