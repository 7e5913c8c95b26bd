import { openQuestion } from '../questions';
import { type JobState, type OpenValve, setUpOf } from '../state';
import {
  askBack,
  type CommandOf,
  type Draft,
  happens,
  notNow,
  refuse,
  unchanged,
} from './decision';

/** Zero lash: starts a count on, ends a count off, and is asked again once something is counted (C6). */
export function decideZero(state: JobState, open: OpenValve, command: CommandOf<'zero'>): Draft {
  const { direction, phase, count48 } = open;
  if (direction === 'off') {
    if (phase === 'to start') return notNow(state, command.type);
    return doubtedEnd(state, open, command, false) ?? happens({ type: 'zeroTouched' });
  }
  if (phase === 'to start') return happens({ type: 'zeroTouched' });
  if (count48 === 0) return unchanged(count48);
  // A checking pushrod starts closed and is opened to zero lash: there the count ends.
  if (setUpOf(state)?.checking !== undefined)
    return doubtedEnd(state, open, command, false) ?? happens({ type: 'seated', loose: false });
  return openQuestion(state, command.at)?.about === 'zero'
    ? happens({ type: 'restarted', atZero: true })
    : askBack({ about: 'zero', counted48: count48 });
}

/** The seat: ends a count on and freezes it (C8), starts a count off. */
export function decideSeat(state: JobState, open: OpenValve, command: CommandOf<'seat'>): Draft {
  const { direction, phase, count48 } = open;
  const { loose } = command;
  if (direction === 'off') {
    if (phase === 'counting') return refuse({ code: 'already counted', counted48: count48 });
    return loose ? notNow(state, command.type) : happens({ type: 'seated', loose: false });
  }
  if (phase === 'to start' && !loose) return notNow(state, command.type);
  if (loose && count48 > 0) return refuse({ code: 'loose after counting', counted48: count48 });
  return doubtedEnd(state, open, command, loose) ?? happens({ type: 'seated', loose });
}

/** While doubtful, a spoken end of the count is asked back with its number (C9). */
function doubtedEnd(
  state: JobState,
  open: OpenValve,
  command: CommandOf<'seat' | 'zero'>,
  loose: boolean,
): Draft | null {
  if (!open.doubtful || command.by !== 'voice') return null;
  if (openQuestion(state, command.at)?.about === 'seat') return null;
  return askBack({ about: 'seat', counted48: open.count48, loose });
}
