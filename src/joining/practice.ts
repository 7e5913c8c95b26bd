import type { Bench, Keeper } from '#bench';
import type { Clock } from '#clock';
import { type CommandBody, decide, evolve, initial, type JobEvent, type SetUp } from '#counting';
import { isPractice, PRACTICE_JOB } from '#screens';
import type { SettingsStore } from '#settings';

const THOU_MM = 0.0254;

/**
 * A simulated bolt in the workshop's pump engine. Its window reaches low, so that a seat not three
 * quarters away fits too.
 */
const setUp: SetUp = {
  name: 'Practice run',
  engine: null,
  scope: [],
  adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.65, leanDeg: 0 },
  rockers: 'bolt-down',
  groups: [
    {
      id: 'all',
      name: 'All valves',
      window: {
        lifter: 'long-travel hydraulic roller',
        plungerTravelMm: 172 * THOU_MM,
        keepOutTopMm: 18 * THOU_MM,
        keepOutBottomMm: 22 * THOU_MM,
        usableMinMm: 40 * THOU_MM,
        usableMaxMm: 118 * THOU_MM,
        preferredMinMm: 60 * THOU_MM,
        preferredMaxMm: 104 * THOU_MM,
      },
      members: { kind: 'all' },
    },
  ],
  calling: { way: 'quarters' },
  callsLastOnly: false,
  asksLanding: true,
  clock: 'mark',
  hands: 'alone',
  testPushrod: null,
};

/** The log of one practice run, in memory alone, beside the logs on disk. */
export interface PracticeLog {
  /** The device's keeper, which keeps every other job. */
  readonly keeper: Keeper;
  /** Begins another run in place of the one there was; the name of its job. */
  begin(): string;
}

/** Puts a log in memory beside a keeper: what is counted in a practice run never reaches the disk. */
export function joinPracticeLog(
  keeper: Keeper,
  clock: Clock,
  app: { readonly version: string; readonly commit: string },
): PracticeLog {
  let runs = 0;
  let log: readonly JobEvent[] = [];
  return {
    keeper: {
      ...keeper,
      async read(jobId) {
        return isPractice(jobId) ? { events: log, newer: false } : keeper.read(jobId);
      },
      async append(events) {
        const [first] = events;
        if (first === undefined || !isPractice(first.jobId)) return keeper.append(events);
        // What is left to write of a run that is over belongs nowhere.
        if (first.jobId === log[0]?.jobId)
          log = [...log.filter(({ seq }) => seq < first.seq), ...events];
      },
      claim: async (jobId, onLost) =>
        isPractice(jobId) ? { release: () => undefined } : keeper.claim(jobId, onLost),
      takeOver: async (jobId, onLost) =>
        isPractice(jobId) ? { release: () => undefined } : keeper.takeOver(jobId, onLost),
      follow: (jobId, onChange) =>
        isPractice(jobId) ? () => undefined : keeper.follow(jobId, onChange),
    },
    begin() {
      runs += 1;
      const jobId = `${PRACTICE_JOB}${runs}`;
      log = firstEvents(jobId, clock.now(), app);
      return jobId;
    },
  };
}

/** A job opened at its first bolt, before zero. */
function firstEvents(
  jobId: string,
  at: number,
  app: { readonly version: string; readonly commit: string },
): readonly JobEvent[] {
  const commands: readonly CommandBody[] = [
    { type: 'openJob', jobId, setUp, app },
    { type: 'cautionsHeard' },
    { type: 'chooseValve' },
  ];
  const events: JobEvent[] = [];
  let job = initial;
  for (const body of commands) {
    const decision = decide(job, { ...body, at, by: 'app' });
    if (decision.kind !== 'events') continue;
    events.push(...decision.events);
    job = decision.events.reduce(evolve, job);
  }
  return events;
}

/** The bench put to a practice run, and back to the job it had. */
export interface Practice {
  begin(): void;
  leave(): void;
}

/** Joins practice runs to the bench. */
export function joinPractice(bench: Bench, log: PracticeLog, settings: SettingsStore): Practice {
  let before: string | null = null;
  return {
    begin() {
      const { jobId } = bench.store.getState();
      if (!isPractice(jobId)) before = jobId;
      if (!settings.store.getState().settings.practised) settings.change({ practised: true });
      void bench.open(log.begin());
    },
    leave() {
      if (!isPractice(bench.store.getState().jobId)) return;
      if (before === null) bench.close();
      else void bench.open(before);
    },
  };
}
