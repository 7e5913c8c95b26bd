import { QUARTER, TURN, type Turn48, turn48 } from '#valvetrain';
import type { CountedBy, Question } from '../events';
import { openQuestion } from '../questions';
import { mostOf, type SetUp, stepOf, unitOf } from '../setUp';
import type { JobState, OpenValve } from '../state';
import { askBack, type CommandOf, type Draft, happens, refuse, unchanged } from './decision';

/** Turns given as turns may go this far ahead without being asked, 48ths (C5). */
const TURNS_AHEAD_48 = 3 * TURN;
/** How far behind, and ahead, a clock hour is looked for, 48ths (C4). */
const CLOCK_BEHIND_48 = QUARTER / 2;
const CLOCK_AHEAD_48 = 3 * QUARTER;

interface Counting {
  readonly state: JobState;
  readonly setUp: SetUp;
  readonly open: OpenValve;
}

const counted = (to48: Turn48, how: CountedBy): Draft => happens({ type: 'counted', to48, how });

/** Takes a count, unless it is more than can be counted, or the same again (C1). */
function take({ setUp, open }: Counting, to48: number, how: CountedBy): Draft {
  const most48 = mostOf(setUp.calling);
  if (to48 > most48) return refuse({ code: 'past the most', most48, counted48: open.count48 });
  if (to48 === open.count48) return unchanged(open.count48);
  return counted(turn48(to48), how);
}

function ask(
  open: OpenValve,
  why: (Question & { about: 'count' })['why'],
  by: CountedBy,
  ...options: Turn48[]
): Draft {
  return askBack({ about: 'count', why, counted48: open.count48, options, by });
}

/** The open question's answer, when this count is one of what was asked (C5). */
function answered(on: Counting, at: number, to48: Turn48): Draft | null {
  const question = openQuestion(on.state, at);
  if (question?.about !== 'count' || !question.options.includes(to48)) return null;
  return take(on, to48, question.by);
}

/** A spoken or keyed number is the count itself (C1); far ahead or behind it is asked back (C5). */
export function decideCall(on: Counting, command: CommandOf<'call'>): Draft {
  const { to48, form } = command;
  const answer = answered(on, command.at, to48);
  if (answer !== null) return answer;
  const ahead = to48 - on.open.count48;
  const how: CountedBy = form === 'turns' ? 'turns' : 'number';
  if (to48 > mostOf(on.setUp.calling)) return take(on, to48, how);
  if (ahead < 0) return ask(on.open, 'goes back', how, to48);
  const reach = form === 'turns' ? TURNS_AHEAD_48 : 2 * unitOf(on.setUp.calling);
  const expected = form === 'bare' && on.setUp.callsLastOnly;
  if (ahead > reach && !expected) return ask(on.open, 'jumps', how, to48);
  return take(on, to48, how);
}

/** A press is one more of the job's step, never asked back (C2). */
export function decideStep(on: Counting, command: CommandOf<'step'>): Draft {
  const more = command.size === 'half quarter' ? QUARTER / 2 : stepOf(on.setUp.calling);
  return take(on, on.open.count48 + more, 'press');
}

/** A position within the turn: the nearest ahead within it, else asked (C3). */
export function decidePosition(on: Counting, command: CommandOf<'positionInTurn'>): Draft {
  const { count48 } = on.open;
  const full = command.within48 === TURN;
  const turnsBefore = full
    ? Math.max(0, Math.ceil(count48 / TURN) - 1)
    : Math.floor(count48 / TURN);
  const candidate = turn48(turnsBefore * TURN + command.within48);
  if (candidate > count48) return take(on, candidate, 'position');
  return ask(on.open, 'position', 'position', candidate, turn48(candidate + TURN));
}

/** A clock hour reads the mark on the socket (C4). Counting off, the mark runs the other way. */
export function decideClock(on: Counting, command: CommandOf<'clock'>): Draft {
  if (on.setUp.clock === 'off') return refuse({ code: 'clock is off' });
  const { count48, direction } = on.open;
  const mark = direction === 'on' ? command.mark48 : (TURN - command.mark48) % TURN;
  if (count48 === 0 && mark === 0) return ask(on.open, 'clock', 'clock', turn48(TURN));
  const ahead = (((mark - count48) % TURN) + TURN) % TURN;
  const behind = ahead - TURN;
  if (ahead <= CLOCK_AHEAD_48) return take(on, count48 + ahead, 'clock');
  if (behind >= -CLOCK_BEHIND_48 && count48 + behind >= 0)
    return take(on, count48 + behind, 'clock');
  const options = [count48 + behind, count48 + ahead].filter((to48) => to48 >= 0);
  return ask(on.open, 'clock', 'clock', ...options.map(turn48));
}
