import type { Command } from '../commands';
import type { EventBody, Question } from '../events';
import { openQuestion } from '../questions';
import { mostOf } from '../setUp';
import { type JobState, type OpenValve, setUpOf } from '../state';
import { decideCount } from './count';
import { askBack, type Draft, happens, isCount, refuse, unchanged } from './decision';

/**
 * A count that began before the seat it arrives after: asked, whatever was said since; the same
 * again takes it (C11). Null when the command is neither.
 */
export function decideLate(state: JobState, command: Command): Draft | null {
  const { open, status, held } = state;
  if (open === null || open.reading === null || status !== 'open' || held) return null;
  return takeLate(state, open, command) ?? askLate(state, open, command);
}

function askLate(state: JobState, open: OpenValve, command: Command): Draft | null {
  if (!isCount(command) || command.utterance === undefined) return null;
  if (open.endedAt === null || command.utterance.beganAt >= open.endedAt) return null;
  const counting: OpenValve = { ...open, phase: 'counting', reading: null, endedAt: null };
  const draft = decideCount({ ...state, asked: null, open: counting }, command);
  const heard = draft.kind === 'events' ? optionsOf(draft.bodies[0]) : null;
  if (heard === null) return draft;
  const { options, by } = heard;
  if (options.includes(open.count48)) return unchanged(open.count48);
  const why = 'began before the seat';
  return askBack({ about: 'count', why, counted48: open.count48, options, by });
}

type CountQuestion = Extract<Question, { about: 'count' }>;

/** The counts an event takes or asks about. */
export function optionsOf(
  body: EventBody | undefined,
): Pick<CountQuestion, 'options' | 'by'> | null {
  if (body?.type === 'counted') return { options: [body.to48], by: body.how };
  if (body?.type !== 'askedBack' || body.question.about !== 'count') return null;
  return body.question;
}

/** The seat is taken back, the count taken, and the valve seated at it again. */
function takeLate(state: JobState, open: OpenValve, command: Command): Draft | null {
  const question = openQuestion(state, command.at);
  const setUp = setUpOf(state);
  if (setUp === null || command.type !== 'call' || question?.about !== 'count') return null;
  if (question.why !== 'began before the seat' || !question.options.includes(command.to48))
    return null;
  const undoes = undoneToTheEnd(state, open);
  if (undoes === null) return null;
  const most48 = mostOf(setUp.calling);
  if (command.to48 > most48)
    return refuse({ code: 'past the most', most48, counted48: open.count48 });
  return happens(
    ...undoes,
    { type: 'counted', to48: command.to48, how: question.by },
    open.direction === 'off' ? { type: 'zeroTouched' } : { type: 'seated', loose: false },
  );
}

/** What takes back all through the end of the count, when nothing but landings came after it. */
function undoneToTheEnd(state: JobState, open: OpenValve): readonly EventBody[] | null {
  const undoes: EventBody[] = [];
  for (let past = state.past; past !== null; past = past.before.past) {
    undoes.push({ type: 'takenBack', undoes: past.event.seq });
    if (past.event.seq === open.reading) return undoes;
    if (past.event.type !== 'landed') return null;
  }
  return null;
}
