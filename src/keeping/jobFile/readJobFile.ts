import { engineSummary, initial, type JobEvent, replay, setUpProblems } from '#counting';
import { isStoredEvent, lift, type StoredEvent } from '../lift';
import {
  BACKUP_FORMAT,
  FILE_FORMAT,
  FILE_VERSION,
  MOST_EVENTS,
  MOST_FILE_CHARACTERS,
} from './limits';
import { isFormat, plainFile, versionOf } from './plainFile';
import { type Refused, refused } from './problems';
import { checksumOf } from './writeJobFile';

/** A job read from a file, or the sentence that says why not. */
export type JobFileRead = { readonly ok: true; readonly events: readonly JobEvent[] } | Refused;

/**
 * Reads a job file's text. Trusts nothing in it: size, nesting, names, numbers, checksum, order,
 * the shape of every event and the set-ups are held to what this app writes. Never rejects for
 * what the text holds.
 */
export async function readJobFile(text: string): Promise<JobFileRead> {
  const file = parsed(text);
  return 'ok' in file ? file : readLog(file.events);
}

/** Reads what is said to be a job's log: its order, the shape of every event, and the set-ups. */
export async function readLog(events: readonly unknown[]): Promise<JobFileRead> {
  if (events.length === 0) return refused('no events');
  if (events.length > MOST_EVENTS) return refused('too many events');
  const stored = inOrder(events);
  if ('ok' in stored) return stored;
  const lifted = liftedAll(stored);
  if ('ok' in lifted) return lifted;
  const { isJobEvent } = await import('./shapes');
  const strange = lifted.findIndex((event) => !isJobEvent(event));
  if (strange >= 0) return refused('wrong shape', String(strange + 1));
  return followed(lifted);
}

interface JobFile {
  readonly events: readonly unknown[];
}

function parsed(text: string): JobFile | Refused {
  const file = plainFile(text, MOST_FILE_CHARACTERS);
  if ('ok' in file) return file;
  const { value } = file;
  if (isFormat(value, BACKUP_FORMAT)) return refused('a backup');
  if (!hasEvents(value) || value.format !== FILE_FORMAT || typeof value.version !== 'number') {
    return refused('not a job file');
  }
  if (value.version > FILE_VERSION) return refused('newer file', versionOf(value.app));
  const { events } = value;
  if (events.length === 0) return refused('no events');
  return checksumOf(events) === value.checksum ? { events } : refused('changed since');
}

interface FileLike {
  readonly format: unknown;
  readonly version: unknown;
  readonly app: unknown;
  readonly events: readonly unknown[];
  readonly checksum: unknown;
}

function hasEvents(value: unknown): value is FileLike {
  return (
    typeof value === 'object' && value !== null && 'events' in value && Array.isArray(value.events)
  );
}

/** Events of one job, opened once, numbered from 1 without a gap. */
function inOrder(events: readonly unknown[]): readonly StoredEvent[] | Refused {
  const stored: StoredEvent[] = [];
  for (const [i, event] of events.entries()) {
    const seq = String(i + 1);
    if (!isStoredEvent(event)) return refused('damaged event', seq);
    if (event.jobId !== (stored[0] ?? event).jobId) return refused('another job', seq);
    if (event.seq !== i + 1) return refused('out of order', seq);
    if ((event.type === 'jobOpened') !== (i === 0)) return refused('not opened');
    stored.push(event);
  }
  return stored;
}

function liftedAll(stored: readonly StoredEvent[]): readonly JobEvent[] | Refused {
  const events: JobEvent[] = [];
  for (const [i, event] of stored.entries()) {
    const lifted = lift(event);
    if (!lifted.ok) return refused(lifted.why, String(i + 1));
    events.push(lifted.event);
  }
  return events;
}

/** The log folds to a job whose set-ups can be figured with. */
function followed(events: readonly JobEvent[]): JobFileRead {
  try {
    for (const event of events) {
      if (event.type !== 'jobOpened' && event.type !== 'setupChanged') continue;
      const problem = setUpProblems(event.setUp).find(({ severity }) => severity === 'refused');
      if (problem !== undefined) return refused('bad set-up', problem.sentence);
    }
    const state = replay(events);
    engineSummary(state);
    return state.status === initial.status ? refused('not opened') : { ok: true, events };
  } catch {
    return refused('can’t be followed');
  }
}
