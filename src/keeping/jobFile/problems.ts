import type { Unliftable } from '../lift';

/** Why a file was not taken in. */
export type JobFileProblem =
  | 'too big'
  | 'not JSON'
  | 'not a job file'
  | 'newer file'
  | 'a backup'
  | 'not a backup'
  | 'too big for a backup'
  | 'too many jobs'
  | 'a job twice'
  | 'too deep'
  | 'forbidden name'
  | 'not a number'
  | 'no events'
  | 'too many events'
  | 'changed since'
  | 'another job'
  | 'out of order'
  | 'not opened'
  | Unliftable
  | 'wrong shape'
  | 'bad set-up'
  | 'can’t be followed';

/** A refusal: what is wrong and, where it helps, what to do, in a sentence or two. */
export interface Refused {
  readonly ok: false;
  readonly code: JobFileProblem;
  readonly sentence: string;
}

/**
 * A refusal with its sentence. `detail` is said inside it: the number of the event, a version, or
 * the sentence of a set-up's problem.
 */
export function refused(code: JobFileProblem, detail = ''): Refused {
  return { ok: false, code, sentence: sentenceFor(code, detail) };
}

function sentenceFor(code: JobFileProblem, detail: string): string {
  switch (code) {
    case 'too big':
      return 'The file is too big for a job: a job file is never more than 8 MB.';
    case 'not JSON':
      return 'The file can’t be read: it is cut short, or it is not a job file.';
    case 'not a job file':
      return 'This is not a job file. Choose one that was exported here.';
    case 'a backup':
      return 'This is a backup of all jobs, not a job file. Restore it by ‘Restore a backup’.';
    case 'not a backup':
      return 'This is not a backup. Choose one that was made here; a single job is brought in as a job file.';
    case 'too big for a backup':
      return 'The file is too big for a backup: a backup is never more than 64 MB.';
    case 'too many jobs':
      return 'The file holds too many jobs: a backup has at most 2,000.';
    case 'a job twice':
      return `The file holds the same job twice: job ${detail}. It was not opened.`;
    case 'newer file':
      return `The file was written by a newer version of the app${detail}. Update this one, then open it again.`;
    case 'too deep':
    case 'forbidden name':
      return 'The file holds things no job file holds, so it was not opened.';
    case 'not a number':
      return 'The file holds a number too large to be one, so it was not opened.';
    case 'no events':
      return 'The file holds no job: its log is empty.';
    case 'too many events':
      return 'The file’s log is too long: a job has at most 20,000 events.';
    case 'changed since':
      return 'The file has been changed or damaged since it was written: its checksum does not match. Export the job again.';
    case 'another job':
      return `The log is not all of one job: event ${detail} belongs to another.`;
    case 'out of order':
      return `The log is out of order: event ${detail} is missing or misplaced.`;
    case 'not opened':
      return 'The log does not begin with the opening of a job, or opens it twice.';
    case 'newer event':
      return `Event ${detail} was written by a newer version of the app. Update this one, then open the file again.`;
    case 'unknown event':
      return `Event ${detail} is of a kind this version does not know. Update the app, then open the file again.`;
    case 'damaged event':
    case 'wrong shape':
      return `Event ${detail} is damaged, so the file was not opened.`;
    case 'bad set-up':
      return `The set-up in the file can’t be used. ${detail}`;
    case 'can’t be followed':
      return 'The log does not make sense from beginning to end, so the file was not opened.';
    default: {
      const never: never = code;
      return never;
    }
  }
}
