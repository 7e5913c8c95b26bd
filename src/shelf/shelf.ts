import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Clock } from '#clock';
import {
  type CommandBody,
  decide,
  evolve,
  initial,
  type JobEvent,
  type JobLengths,
  type JobNotes,
  type JobState,
  noNotes,
  type SetUp,
  setUpOf,
} from '#counting';
import { refusalSentence } from '#words';
import { pastLengths, stateIn } from './past';
import type { BackupKeeper, JobCard, JobKeeper, Restored } from './ports';

export interface ShelfState {
  readonly jobs: readonly JobCard[];
  readonly loaded: boolean;
  /** A sentence about the last thing that could not be done; null when there is none. */
  readonly trouble: string | null;
}

export interface ShelfParts {
  readonly clock: Clock;
  readonly keeper: JobKeeper;
  readonly backup: BackupKeeper;
  readonly app: { readonly version: string; readonly commit: string };
  /** A new job's id: unique on every device. */
  newId(): string;
}

/** How many jobs of a backup came to what. */
export interface RestoreReport {
  readonly jobs: Readonly<Record<Restored, number>>;
  /** The backup's settings were taken: this device had none of its own. */
  readonly settings: boolean;
}

/** The jobs on this device. Each call that changes one appends to its log and lists them anew. */
export interface Shelf {
  readonly store: StoreApi<ShelfState>;
  list(): Promise<void>;
  /** Opens a new job on a set-up; the id of the job, or null with the trouble told. */
  create(setUp: SetUp): Promise<string | null>;
  /** A new job with another's set-up, builder and tags, and no readings. */
  copy(jobId: string): Promise<string | null>;
  discard(jobId: string): Promise<void>;
  restore(jobId: string): Promise<void>;
  exportJob(jobId: string): Promise<string | null>;
  /** Takes in a job file. A job already here is left as it is. */
  importJob(text: string): Promise<string | null>;
  /** Every job and the settings as one file's text; null with the trouble told. */
  backUp(): Promise<string | null>;
  /**
   * Takes in a backup, job by job: what this device lacks is added, what it has is left as it is.
   * Null, with the trouble told, when the file is not taken in; nothing of it is then.
   */
  restoreBackup(text: string): Promise<RestoreReport | null>;
  /** Changes the notes of a job that no bench has open. */
  note(jobId: string, notes: JobNotes): Promise<void>;
  /** A job as its log folds; null for one that is not here. Changes nothing. */
  look(jobId: string): Promise<JobState | null>;
  /** The lengths of other jobs of a recipe, the last ones first; not those discarded or not measured. */
  past(recipe: string, but: string): Promise<readonly JobLengths[]>;
  /** The set-up of the job changed last, for a count that starts at once; null when there is none. */
  lastSetUp(): Promise<SetUp | null>;
}

export function createShelf({ clock, keeper, backup, app, newId }: ShelfParts): Shelf {
  const store = createStore<ShelfState>(() => ({ jobs: [], loaded: false, trouble: null }));

  async function list(): Promise<void> {
    try {
      store.setState({ jobs: await keeper.jobs(), loaded: true });
    } catch {
      store.setState({
        loaded: true,
        trouble: 'The jobs on this device can’t be read. Reload the page.',
      });
    }
  }

  /** Runs a command on a job that no bench has open. */
  async function run(job: JobState, body: CommandBody): Promise<boolean> {
    const decision = decide(job, { ...body, at: clock.now(), by: 'touch' });
    if (decision.kind !== 'events') {
      const sentence = decision.kind === 'refused' ? refusalSentence(decision.refusal) : null;
      store.setState({ trouble: sentence });
      return false;
    }
    return keep(decision.events);
  }

  async function keep(events: readonly JobEvent[]): Promise<boolean> {
    try {
      await keeper.append(events);
      store.setState({ trouble: null });
      await list();
      return true;
    } catch {
      store.setState({
        trouble: 'That could not be kept on this device. Free some space and try again.',
      });
      return false;
    }
  }

  const stateOf = (jobId: string) => stateIn(keeper, jobId);

  async function create(setUp: SetUp): Promise<string | null> {
    const jobId = newId();
    return (await run(initial, { type: 'openJob', jobId, setUp, app })) ? jobId : null;
  }

  async function importJob(text: string): Promise<string | null> {
    const read = await keeper.readJobFile(text);
    if (!read.ok) {
      store.setState({ trouble: read.sentence });
      return null;
    }
    const { jobId } = read.events.reduce(evolve, initial);
    if ((await keeper.read(jobId)).events.length > 0) {
      store.setState({ trouble: 'That job is on this device already; it is left as it is.' });
      return jobId;
    }
    return (await keep(read.events)) ? jobId : null;
  }

  async function backUp(): Promise<string | null> {
    try {
      const cards = await keeper.jobs();
      const logs = await Promise.all(cards.map(async ({ id }) => (await keeper.read(id)).events));
      const text = await backup.writeBackup(logs, await backup.settings());
      store.setState({ trouble: null });
      return text;
    } catch {
      store.setState({ trouble: 'The jobs on this device can’t be read. Reload the page.' });
      return null;
    }
  }

  async function restoreBackup(text: string): Promise<RestoreReport | null> {
    const read = await backup.readBackup(text);
    if (!read.ok) {
      store.setState({ trouble: read.sentence });
      return null;
    }
    const jobs: Record<Restored, number> = { new: 0, longer: 0, here: 0, apart: 0, open: 0 };
    try {
      for (const events of read.logs) jobs[await backup.restoreLog(events)] += 1;
      const takes = read.settings !== null && (await backup.settings()) === undefined;
      if (takes) backup.takeSettings(read.settings);
      store.setState({ trouble: null });
      await list();
      return { jobs, settings: takes };
    } catch {
      await list();
      const done = jobs.new + jobs.longer;
      store.setState({
        trouble: `${done} of ${read.logs.length} jobs were restored, then the device would keep no more. Free some space and restore again: what is here is left as it is.`,
      });
      return null;
    }
  }

  return {
    store,
    backUp,
    restoreBackup,
    list,
    create,
    async copy(jobId) {
      const job = await stateOf(jobId);
      const setUp = setUpOf(job);
      if (setUp === null) return null;
      const id = await create({ ...setUp, name: `${setUp.name}, again` });
      const { builder, tags } = job.notes;
      if (id !== null && (builder !== '' || tags.length > 0))
        await run(await stateOf(id), { type: 'note', notes: { ...noNotes, builder, tags } });
      return id;
    },
    async note(jobId, notes) {
      await run(await stateOf(jobId), { type: 'note', notes });
    },
    async look(jobId) {
      const job = await stateOf(jobId);
      return job.status === 'not opened' ? null : job;
    },
    past: (recipe, but) => pastLengths(keeper, recipe, but),
    async discard(jobId) {
      await run(await stateOf(jobId), { type: 'discard' });
    },
    async restore(jobId) {
      await run(await stateOf(jobId), { type: 'restore' });
    },
    async exportJob(jobId) {
      const { events } = await keeper.read(jobId);
      return events.length === 0 ? null : keeper.writeJobFile(events);
    },
    importJob,
    async lastSetUp() {
      // A device that can't be read has no last one.
      const [last] = await keeper.jobs().catch(() => []);
      return last === undefined ? null : setUpOf(await stateOf(last.id));
    },
  };
}
