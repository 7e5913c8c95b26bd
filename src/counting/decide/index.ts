import { allowed } from '../allowed';
import type { Command } from '../commands';
import { EVENT_VERSION, type EventBody, type JobEvent } from '../events';
import type { JobState } from '../state';
import { byType } from './byType';
import { type Decision, type Draft, notNow } from './decision';
import { decideLate } from './late';
import { replacesOwnCount } from './undo';

/**
 * What a command comes to in this state: events to append, an answer, or a refusal with what its
 * words need. Pure; the command carries its own clock. Never throws.
 */
export function decide(state: JobState, command: Command): Decision {
  const draft = draftFor(state, command);
  if (draft.kind !== 'events') return draft;
  return {
    kind: 'events',
    events: draft.bodies.map((body, i) => enveloped(state, command, body, i)),
  };
}

function draftFor(state: JobState, command: Command): Draft {
  const late = decideLate(state, command);
  if (late !== null) return late;
  if (!allowed(state).includes(command.type)) return notNow(state, command.type);
  return replacesOwnCount(state, command) ?? byType(state, command);
}

function enveloped(state: JobState, command: Command, body: EventBody, i: number): JobEvent {
  return {
    jobId: command.type === 'openJob' ? command.jobId : state.jobId,
    seq: state.seq + 1 + i,
    v: EVENT_VERSION,
    at: command.at,
    by: command.by,
    ...(command.utterance === undefined ? {} : { utterance: command.utterance.id }),
    ...body,
  };
}
