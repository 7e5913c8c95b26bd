import {
  type CommandBody,
  decide,
  evolve,
  initial,
  type JobEvent,
  type JobState,
  type SetUp,
  stageOf,
} from '#counting';
import { turn48, type ValveId } from '#valvetrain';
import { v8SetUp } from './setUps';

/** A job's log with its state. */
export interface CountedJob {
  readonly events: readonly JobEvent[];
  readonly state: JobState;
}

const START = Date.UTC(2026, 2, 3, 9, 0, 0);

/** A job on a set-up, opened and no more. */
export function openedJob(setUp: SetUp = v8SetUp(), jobId = 'job', at = START): CountedJob {
  const app = { version: '0', commit: '0' };
  return run({ events: [], state: initial }, at, { type: 'openJob', jobId, setUp, app });
}

/** The job after commands, five seconds apart. A refused one is a mistake in the test. */
export function afterAll(job: CountedJob, ...commands: readonly CommandBody[]): CountedJob {
  return commands.reduce((on, body) => run(on, (on.events.at(-1)?.at ?? START) + 5000, body), job);
}

function run(job: CountedJob, at: number, body: CommandBody): CountedJob {
  const decision = decide(job.state, { ...body, at, by: 'key' });
  if (decision.kind !== 'events') throw new Error(`${body.type}: ${JSON.stringify(decision)}`);
  return {
    events: [...job.events, ...decision.events],
    state: decision.events.reduce(evolve, job.state),
  };
}

/** Counts every valve left of this round: so many quarter turns each, to a quarter of a quarter. */
export function countAll(job: CountedJob, quarters: (valve: ValveId) => number): CountedJob {
  let now = job;
  for (let i = 0; i < 400; i += 1) {
    switch (stageOf(now.state)) {
      case 'all read':
        return now;
      case 'to start':
        now = countOne(now, quarters);
        break;
      case 'read':
        now = afterAll(now, { type: 'next', cylinder: false });
        break;
      default:
        now = afterAll(now, { type: 'advance' });
    }
  }
  throw new Error('never all read');
}

function countOne(job: CountedJob, quarters: (valve: ValveId) => number): CountedJob {
  const valve = job.state.open?.valve;
  if (!valve) throw new Error('no valve open');
  const count48 = Math.round(quarters(valve) * 12);
  const marks = Math.floor(count48 / 12);
  const past = (['nothing', 'a bit past', 'half', 'just shy'] as const)[(count48 % 12) / 3];
  if (past === undefined) throw new Error('count in quarters of a quarter');
  return afterAll(
    job,
    { type: 'zero' },
    { type: 'call', to48: turn48(marks * 12), form: 'turns' },
    { type: 'seat', loose: false },
    { type: 'land', word: past },
  );
}
