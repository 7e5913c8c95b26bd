import {
  engineSummary,
  type JobEvent,
  type JobNotes,
  type JobState,
  recipeOf,
  replay,
  type SetUp,
  setUpOf,
} from '#counting';

/** What the list of jobs shows of one, without reading its log. Times are ms since 1970. */
export interface JobCard {
  readonly id: string;
  readonly name: string;
  readonly createdAt: number;
  readonly changedAt: number;
  /** Layout, cylinders and firing order: 'V8, 1-8-4-3-6-5-7-2'. Null without an engine. */
  readonly engine: string | null;
  /** Valves read in the present round, and valves the job counts. */
  readonly read: number;
  readonly wanted: number;
  readonly round: number;
  /** Readings that have no valve's name yet. */
  readonly unnamed: number;
  readonly status: JobState['status'];
  readonly notes: JobNotes;
  /** Jobs that match in this can be compared; null where too little is known. */
  readonly recipe: string | null;
}

/** The card of a job that stands like this. */
export function cardOf(
  state: JobState,
  times: { readonly createdAt: number; readonly changedAt: number },
): JobCard {
  const setUp = setUpOf(state);
  const { read, wanted, unnamed } = engineSummary(state);
  return {
    id: state.jobId,
    name: setUp?.name ?? '',
    ...times,
    engine: setUp === null ? null : engineText(setUp),
    read,
    wanted,
    round: state.round.number,
    unnamed,
    status: state.status,
    notes: state.notes,
    recipe: setUp === null ? null : recipeOf(setUp),
  };
}

/** The card of a job with this log, which is not empty. */
export function cardOfLog(events: readonly JobEvent[]): JobCard {
  const createdAt = events[0]?.at ?? 0;
  return cardOf(replay(events), { createdAt, changedAt: events.at(-1)?.at ?? createdAt });
}

function engineText({ engine }: SetUp): string | null {
  if (engine === null) return null;
  const { layout, cylinders, firingOrder } = engine;
  const order = firingOrder.join('-');
  switch (layout) {
    case 'V':
      return `V${cylinders}, ${order}`;
    case 'inline':
      return `Inline ${cylinders}, ${order}`;
    case 'flat':
      return `Flat ${cylinders}, ${order}`;
    case 'other':
      return `${cylinders} cylinders, ${order}`;
    default: {
      const never: never = layout;
      return never;
    }
  }
}
