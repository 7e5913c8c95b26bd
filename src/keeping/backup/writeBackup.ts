import { type JobEvent, replay, setUpOf } from '#counting';
import { canonicalJson } from '../canonicalJson';
import { BACKUP_FORMAT, BACKUP_VERSION } from '../jobFile/limits';
import { sha256 } from '../jobFile/sha256';
import type { AppStamp } from '../jobFile/writeJobFile';

/** What a backup holds: every job's log, and this device's settings as they were kept. */
export interface BackupContents {
  readonly logs: readonly (readonly JobEvent[])[];
  /** Null where none were ever kept. */
  readonly settings: unknown;
}

/**
 * Everything on a device as one file's text; docs/job-file.md describes it.
 *
 * @param at wall clock, ms since 1970.
 */
export function writeBackup({ logs, settings }: BackupContents, app: AppStamp, at: number): string {
  const jobs = logs
    .filter((events) => events.length > 0)
    .map((events) => ({
      id: events[0]?.jobId,
      name: setUpOf(replay(events))?.name ?? '',
      events,
    }));
  const kept = settings ?? null;
  const file = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    app: { version: app.version, commit: app.commit },
    exportedAt: new Date(at).toISOString(),
    jobs,
    settings: kept,
    checksum: backupChecksum(jobs, kept),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** SHA-256 over the canonical JSON of the jobs and settings as they stand in the file. */
export function backupChecksum(jobs: readonly unknown[], settings: unknown): string {
  return sha256(canonicalJson({ jobs, settings }));
}
