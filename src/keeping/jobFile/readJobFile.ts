import { engineSummary, initial, type JobEvent, replay, setUpProblems } from '#counting';
import { isStoredEvent, lift, type StoredEvent } from '../lift';
import { FILE_FORMAT, FILE_VERSION, MOST_EVENTS, MOST_FILE_CHARACTERS } from './limits';
import { plainDataProblem } from './plainData';
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
  if ('ok' in file) return file;
  const stored = inOrder(file.events);
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
  if (text.length > MOST_FILE_CHARACTERS) return refused('too big');
  const value = json(text);
  if (value === undefined) return refused('not JSON');
  const problem = plainDataProblem(value);
  if (problem !== null) return refused(problem);
  if (!hasEvents(value) || value.format !== FILE_FORMAT || typeof value.version !== 'number') {
    return refused('not a job file');
  }
  if (value.version > FILE_VERSION) return refused('newer file', versionOf(value.app));
  const { events } = value;
  if (events.length === 0) return refused('no events');
  if (events.length > MOST_EVENTS) return refused('too many events');
  return checksumOf(events) === value.checksum ? { events } : refused('changed since');
}

/** Undefined for text that is not JSON. A byte-order mark before it is passed over. */
function json(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
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

/** ' (1.4.0)', cut to what a version may hold; nothing when the file doesn't say. */
function versionOf(app: unknown): string {
  if (typeof app !== 'object' || app === null || !('version' in app)) return '';
  const version = /^[0-9A-Za-z.+-]{1,20}$/.exec(String(app.version));
  return version === null ? '' : ` (${version[0]})`;
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
