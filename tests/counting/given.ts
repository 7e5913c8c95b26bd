import {
  type Announcement,
  announce,
  announceReply,
  type Command,
  type CommandBody,
  type Decision,
  decide,
  evolve,
  initial,
  type JobEvent,
  type JobState,
  replay,
  type SetUp,
} from '#counting';
import { eightCylinders } from './samples';

/** One thing done at the bench, with the words a table shows for it. The clock is data. */
export type Step = { readonly text: string } & (
  | {
      readonly kind: 'command';
      readonly body: CommandBody;
      readonly by: Command['by'];
      readonly utterance?: { readonly id: string; readonly agoMs: number };
    }
  | { readonly kind: 'wait'; readonly ms: number }
  /** The log is read again from its events. */
  | { readonly kind: 'reload' }
);

/** A job under test: its log, the state it folds to, the clock, and what the last steps came to. */
export interface Job {
  readonly events: readonly JobEvent[];
  readonly state: JobState;
  readonly at: number;
  readonly decisions: readonly Decision[];
  readonly told: readonly Announcement[];
}

const START_MS = 1_700_000_000_000;
/** Every command comes a second after the one before. */
const BETWEEN_MS = 1000;

const nothing: Job = { events: [], state: initial, at: START_MS, decisions: [], told: [] };

/** A job on a set-up, opened and no more. */
export function opened(setUp: SetUp = eightCylinders): Job {
  const app = { version: '0', commit: '0' };
  const job = after(nothing, [command({ type: 'openJob', jobId: 'job', setUp, app })]);
  return forgetting(job);
}

/** A job whose cautions have been heard and whose first valve, if there is a walk, is to start. */
export function ready(setUp: SetUp = eightCylinders): Job {
  const steps =
    setUp.engine === null
      ? [command({ type: 'cautionsHeard' }), command({ type: 'chooseValve' })]
      : [
          command({ type: 'cautionsHeard' }),
          ...(setUp.hands === 'alone' ? [] : [command({ type: 'handsClear' })]),
          command({ type: 'crankThere' }),
        ];
  return given(opened(setUp), steps);
}

/** The job after these steps, with nothing yet judged. */
export function given(job: Job, steps: readonly Step[]): Job {
  return forgetting(after(job, steps));
}

/** The job after these steps, with what they came to. */
export function when(job: Job, ...steps: readonly Step[]): Job {
  return after(job, steps);
}

/** The job after events written out, as a log would hold them. */
export function withEvents(job: Job, ...bodies: readonly BodyOf<JobEvent>[]): Job {
  return bodies.reduce((on, body) => {
    const event: JobEvent = {
      jobId: 'job',
      seq: on.state.seq + 1,
      v: 1,
      at: on.at + BETWEEN_MS,
      by: 'key',
      ...body,
    };
    return appended(on, [event]);
  }, job);
}

type BodyOf<T> = T extends JobEvent
  ? Omit<T, 'jobId' | 'seq' | 'v' | 'at' | 'by' | 'utterance'>
  : never;

/** The types of the events the steps came to, or the refusal's code, or 'still', or 'answer'. */
export function outcomes({ decisions }: Job): readonly string[] {
  return decisions.flatMap((decision) => {
    switch (decision.kind) {
      case 'events':
        return decision.events.map(({ type }) => type);
      case 'refused':
        return [`refused: ${decision.refusal.code}`];
      case 'unchanged':
        return ['still'];
      case 'answer':
        return ['answer'];
      default: {
        const never: never = decision;
        return never;
      }
    }
  });
}

function command(body: CommandBody): Step {
  return { text: body.type, kind: 'command', body, by: 'key' };
}

function forgetting(job: Job): Job {
  return { ...job, decisions: [], told: [] };
}

function after(job: Job, steps: readonly Step[]): Job {
  return steps.reduce(step, job);
}

function step(job: Job, one: Step): Job {
  switch (one.kind) {
    case 'wait':
      return { ...job, at: job.at + one.ms };
    case 'reload':
      return { ...job, state: replay(job.events) };
    case 'command': {
      const at = job.at + BETWEEN_MS;
      const { body, by, utterance } = one;
      const spoken = utterance && {
        utterance: { id: utterance.id, beganAt: at - utterance.agoMs },
      };
      return decided({ ...job, at }, decide(job.state, { ...body, at, by, ...spoken }));
    }
    default: {
      const never: never = one;
      return never;
    }
  }
}

function decided(job: Job, decision: Decision): Job {
  const with_ = { ...job, decisions: [...job.decisions, decision] };
  if (decision.kind === 'events') return appended(with_, decision.events);
  return { ...with_, told: [...job.told, ...announceReply(job.state, decision)] };
}

function appended(job: Job, events: readonly JobEvent[]): Job {
  const told = [...job.told];
  let { state } = job;
  for (const event of events) {
    const evolved = evolve(state, event);
    told.push(...announce(state, event, evolved));
    state = evolved;
  }
  return { ...job, state, told, events: [...job.events, ...events] };
}
