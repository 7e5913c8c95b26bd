import { type JobEvent, replay, setUpOf } from '#counting';
import { canonicalJson } from '../canonicalJson';
import { FILE_FORMAT, FILE_VERSION } from './limits';
import { sha256 } from './sha256';

/** Which build wrote a file. */
export interface AppStamp {
  readonly version: string;
  readonly commit: string;
}

/**
 * A job's whole log as a file's text; docs/job-file.md describes it.
 *
 * @param at wall clock, ms since 1970.
 * @throws RangeError when there are no events: there is no job to write.
 */
export function writeJobFile(events: readonly JobEvent[], app: AppStamp, at: number): string {
  const [first] = events;
  if (first === undefined) throw new RangeError('A job without events can’t be written.');
  const file = {
    format: FILE_FORMAT,
    version: FILE_VERSION,
    app: { version: app.version, commit: app.commit },
    exportedAt: new Date(at).toISOString(),
    job: { id: first.jobId, name: setUpOf(replay(events))?.name ?? '' },
    events,
    checksum: checksumOf(events),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** SHA-256 over the canonical JSON of the events as they stand in the file. */
export function checksumOf(events: readonly unknown[]): string {
  return sha256(canonicalJson(events));
}
