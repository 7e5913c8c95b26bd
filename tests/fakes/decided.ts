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

/** A job driven by commands, each a second after the one before; a refused one is an error. */
export interface Decided {
  readonly events: JobEvent[];
  state(): JobState;
  run(body: CommandBody): void;
  /** On to the next valve's zero. */
  toCounting(): void;
}

export function decided(setUp: SetUp): Decided {
  let state = initial;
  let at = 1_700_000_000_000;
  const events: JobEvent[] = [];
  const job: Decided = {
    events,
    state: () => state,
    run(body) {
      at += 1000;
      const decision = decide(state, { ...body, at, by: 'key' });
      if (decision.kind !== 'events') throw new Error(`${body.type}: ${JSON.stringify(decision)}`);
      for (const event of decision.events) {
        events.push(event);
        state = evolve(state, event);
      }
    },
    toCounting() {
      while (stageOf(state) !== 'counting') job.run({ type: 'advance' });
    },
  };
  job.run({ type: 'openJob', jobId: 'job', setUp, app: { version: '0', commit: '0' } });
  return job;
}
