import type { JobEvent, JobNotes, JobState } from '#counting';

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
  readonly notes: JobNotes;
  /** Jobs that match in this can be compared; null where too little is known. */
  readonly recipe: string | null;
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

/** A backup read, or the sentence that says why it can't be. */
export type BackupRead =
  | {
      readonly ok: true;
      readonly logs: readonly (readonly JobEvent[])[];
      readonly settings: unknown;
    }
  | { readonly ok: false; readonly sentence: string };

/** What became of a job of a backup; in the last three the device's log is left as it is. */
export type Restored = 'new' | 'longer' | 'here' | 'apart' | 'open';

/** Everything on this device, out and in again. */
export interface BackupKeeper {
  readBackup(text: string): Promise<BackupRead>;
  writeBackup(logs: readonly (readonly JobEvent[])[], settings: unknown): Promise<string>;
  /** Adds what the device's own log lacks at its end, and changes nothing that is there. */
  restoreLog(events: readonly JobEvent[]): Promise<Restored>;
  /** The settings as they were kept; undefined where none ever were. */
  settings(): Promise<unknown>;
  takeSettings(kept: unknown): void;
}
