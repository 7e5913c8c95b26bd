import { QUARTER, TURN, type Turn48, turn48 } from '#valvetrain';
import type { CountedBy, Question } from '../events';
import { openQuestion } from '../questions';
import { mostOf, type SetUp, stepOf, unitOf } from '../setUp';
import { type JobState, type OpenValve, setUpOf } from '../state';
import {
  askBack,
  type CommandOf,
  type CountCommand,
  type Draft,
  happens,
  notNow,
  refuse,
  unchanged,
} from './decision';

/** Turns given as turns may go this far ahead without being asked, 48ths (C5). */
const TURNS_AHEAD_48 = 3 * TURN;
/** How far behind, and ahead, a clock hour is looked for, 48ths (C4). */
const CLOCK_BEHIND_48 = QUARTER / 2;
const CLOCK_AHEAD_48 = 3 * QUARTER;

type CountQuestion = Extract<Question, { about: 'count' }>;

interface Counting {
  readonly setUp: SetUp;
  readonly open: OpenValve;
  /** The count asked back and not yet answered at this command's time. */
  readonly asked: CountQuestion | null;
}

/** What a count comes to while a valve is being counted. */
export function decideCount(state: JobState, command: CountCommand): Draft {
  const setUp = setUpOf(state);
  const { open } = state;
  if (setUp === null || open === null) return notNow(state, command.type);
  const question = openQuestion(state, command.at);
  const on: Counting = { setUp, open, asked: question?.about === 'count' ? question : null };
  switch (command.type) {
    case 'call':
      return decideCall(on, command);
    case 'step':
      return decideStep(on, command);
    case 'positionInTurn':
      return decidePosition(on, command);
    case 'clock':
      return decideClock(on, command);
    default: {
      const never: never = command;
      return never;
    }
  }
}

/** A spoken or keyed number is the count itself (C1); far ahead or behind it is asked back (C5). */
function decideCall(on: Counting, { to48, form }: CommandOf<'call'>): Draft {
  if (on.asked?.options.includes(to48)) return answer(on, to48, on.asked.by);
  const how: CountedBy = form === 'turns' ? 'turns' : 'number';
  if (to48 > mostOf(on.setUp.calling)) return tooMany(on);
  const ahead = to48 - on.open.count48;
  if (ahead < 0) return ask(on, 'goes back', how, to48);
  const reach = form === 'turns' ? TURNS_AHEAD_48 : 2 * unitOf(on.setUp.calling);
  const expected = form === 'bare' && on.setUp.callsLastOnly;
  if (ahead > reach && !expected) return ask(on, 'jumps', how, to48);
  return take(on, to48, how);
}

/** A press is one more of the job's step, never asked back (C2). */
function decideStep(on: Counting, { size }: CommandOf<'step'>): Draft {
  const more = size === 'half quarter' ? QUARTER / 2 : stepOf(on.setUp.calling);
  return take(on, on.open.count48 + more, 'press');
}

/** A position within the turn: the nearest ahead within it, else asked (C3). */
function decidePosition(on: Counting, { within48 }: CommandOf<'positionInTurn'>): Draft {
  const { count48 } = on.open;
  const full = within48 === TURN;
  const turnsBefore = full
    ? Math.max(0, Math.ceil(count48 / TURN) - 1)
    : Math.floor(count48 / TURN);
  const candidate = turnsBefore * TURN + within48;
  if (candidate > count48) return take(on, candidate, 'position');
  return ask(on, 'position', 'position', candidate, candidate + TURN);
}

/** A clock hour reads the mark on the socket (C4). Counting off, the mark runs the other way. */
function decideClock(on: Counting, { mark48 }: CommandOf<'clock'>): Draft {
  if (on.setUp.clock === 'off') return refuse({ code: 'clock is off' });
  const { count48, direction } = on.open;
  const mark = direction === 'on' ? mark48 : (TURN - mark48) % TURN;
  if (count48 === 0 && mark === 0) return ask(on, 'clock', 'clock', TURN);
  const ahead = (((mark - count48) % TURN) + TURN) % TURN;
  const behind = ahead - TURN;
  if (ahead <= CLOCK_AHEAD_48) return take(on, count48 + ahead, 'clock');
  if (behind >= -CLOCK_BEHIND_48 && count48 + behind >= 0)
    return take(on, count48 + behind, 'clock');
  return ask(on, 'clock', 'clock', count48 + behind, count48 + ahead);
}

/** Takes a count, unless it is more than can be counted, or the same again (C1). */
function take(on: Counting, to48: number, how: CountedBy): Draft {
  if (to48 > mostOf(on.setUp.calling)) return tooMany(on);
  if (to48 === on.open.count48) return unchanged(on.open.count48);
  return happens({ type: 'counted', to48: turn48(to48), how });
}

/** The answer to a count asked back is taken and said in full, the present count too. */
function answer(on: Counting, to48: Turn48, how: CountedBy): Draft {
  return to48 > mostOf(on.setUp.calling) ? tooMany(on) : happens({ type: 'counted', to48, how });
}

function tooMany({ setUp, open }: Counting): Draft {
  return refuse({
    code: 'past the most',
    most48: mostOf(setUp.calling),
    counted48: open.count48,
  });
}

/** Asks a count back. The same again, where only one count was asked, is the answer (C5). */
function ask(
  on: Counting,
  why: CountQuestion['why'],
  by: CountedBy,
  ...mayBe: readonly number[]
): Draft {
  const most48 = mostOf(on.setUp.calling);
  const options = mayBe.filter((to48) => to48 >= 0 && to48 <= most48).map(turn48);
  const [only, ...others] = options;
  if (only === undefined) return tooMany(on);
  if (others.length === 0 && on.asked?.options.length === 1 && on.asked.options[0] === only) {
    return answer(on, only, by);
  }
  return askBack({ about: 'count', why, counted48: on.open.count48, options, by });
}
