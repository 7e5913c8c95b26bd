import type { JobEvent, JobState } from '#counting';

/** What the list of jobs shows of one, without reading its log. */
export interface JobCard {
  readonly id: string;
  readonly name: string;
  readonly createdAt: number;
  readonly changedAt: number;
  readonly engine: string | null;
  readonly read: number;
  readonly wanted: number;
  readonly status: JobState['status'];
}

/** A job file read, or the sentence that says why it can't be. */
export type JobFileRead =
  | { readonly ok: true; readonly events: readonly JobEvent[] }
  | { readonly ok: false; readonly sentence: string };

/** Jobs on this device and in files. */
export interface JobKeeper {
  jobs(): Promise<readonly JobCard[]>;
  read(jobId: string): Promise<{ readonly events: readonly JobEvent[] }>;
  append(events: readonly JobEvent[]): Promise<void>;
  readJobFile(text: string): Promise<JobFileRead>;
  writeJobFile(events: readonly JobEvent[]): Promise<string>;
}
