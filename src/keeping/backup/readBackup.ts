import type { JobEvent } from '#counting';
import {
  BACKUP_FORMAT,
  BACKUP_VERSION,
  FILE_FORMAT,
  MOST_BACKUP_CHARACTERS,
  MOST_JOBS,
} from '../jobFile/limits';
import { isFormat, plainFile, versionOf } from '../jobFile/plainFile';
import { type Refused, refused } from '../jobFile/problems';
import { readLog } from '../jobFile/readJobFile';
import { type BackupContents, backupChecksum } from './writeBackup';

/** A backup read, or the sentence that says why not. */
export type BackupRead = ({ readonly ok: true } & BackupContents) | Refused;

/**
 * Reads a backup's text, and trusts it no more than a job file: every log in it is held to all that a
 * job file's is. The settings are plain data; whoever takes them in knows what each may be.
 */
export async function readBackup(text: string): Promise<BackupRead> {
  const file = parsed(text);
  if ('ok' in file) return file;
  const logs: (readonly JobEvent[])[] = [];
  const ids = new Set<string>();
  for (const [i, job] of file.jobs.entries()) {
    const name = `Job ${i + 1}: `;
    if (!hasEvents(job)) return within(name, refused('no events'));
    const read = await readLog(job.events);
    if (!read.ok) return within(name, read);
    const id = read.events[0]?.jobId ?? '';
    if (ids.has(id)) return refused('a job twice', String(i + 1));
    ids.add(id);
    logs.push(read.events);
  }
  return { ok: true, logs, settings: file.settings };
}

interface Backup {
  readonly jobs: readonly unknown[];
  readonly settings: unknown;
}

function parsed(text: string): Backup | Refused {
  const file = plainFile(text, MOST_BACKUP_CHARACTERS);
  if ('ok' in file) return file.code === 'too big' ? refused('too big for a backup') : file;
  const { value } = file;
  if (isFormat(value, FILE_FORMAT) || !hasJobs(value) || value.format !== BACKUP_FORMAT) {
    return refused('not a backup');
  }
  if (typeof value.version !== 'number') return refused('not a backup');
  if (value.version > BACKUP_VERSION) return refused('newer file', versionOf(value.app));
  if (value.jobs.length > MOST_JOBS) return refused('too many jobs');
  const { jobs, settings = null } = value;
  return backupChecksum(jobs, settings) === value.checksum
    ? { jobs, settings }
    : refused('changed since');
}

/** The refusal of one job among several says which. */
function within(name: string, problem: Refused): Refused {
  return { ...problem, sentence: name + problem.sentence };
}

interface BackupLike {
  readonly format: unknown;
  readonly version: unknown;
  readonly app: unknown;
  readonly jobs: readonly unknown[];
  readonly settings?: unknown;
  readonly checksum: unknown;
}

function hasJobs(value: unknown): value is BackupLike {
  return (
    typeof value === 'object' && value !== null && 'jobs' in value && Array.isArray(value.jobs)
  );
}

function hasEvents(value: unknown): value is { readonly events: readonly unknown[] } {
  return (
    typeof value === 'object' && value !== null && 'events' in value && Array.isArray(value.events)
  );
}
