import { type JobState, stageOf } from '#counting';
import { type Bolt, boltNow, bolts, judged, lastMark48 } from './bolts';

/** What is to be done next on the practice run. */
export type LessonStep =
  | 'wake'
  | 'take up'
  | 'zero'
  | 'turn'
  | 'number'
  | 'clock'
  | 'too far'
  | 'seat'
  | 'how far'
  | 'accept'
  | 'mend'
  | 'carry on'
  | 'elsewhere'
  | 'done';

/** Where the lesson stands: told by the job alone, so that taking back goes back in it too. */
export function lessonStep(job: JobState, resting: boolean): LessonStep {
  if (resting) return 'wake';
  const stage = stageOf(job);
  if (stage === 'held') return 'carry on';
  const bolt = boltNow(job);
  if (bolt === null) return 'done';
  if (job.open?.direction === 'off') return 'elsewhere';
  switch (stage) {
    case 'choose valve':
      return 'take up';
    case 'to start':
      return 'zero';
    case 'counting':
      return countingStep(bolt, job.open?.count48 ?? 0);
    case 'landing':
      return tappedRight(job) ? readStep(job) : 'how far';
    case 'read':
      return readStep(job);
    default:
      return 'elsewhere';
  }
}

function countingStep(bolt: Bolt, count48: number): LessonStep {
  if (count48 > bolt.seat48) return 'too far';
  if (count48 >= lastMark48(bolt)) return 'seat';
  switch (bolt.teaches) {
    case 'presses':
      return 'turn';
    case 'numbers':
      return 'number';
    case 'clock':
      return 'clock';
    default: {
      const never: never = bolt.teaches;
      return never;
    }
  }
}

/** Answered by taps, the landing stays open for more of them: it is right once the taps are. */
function tappedRight(job: JobState): boolean {
  const last = job.readings.at(-1);
  const tapped = last?.kind === 'counted' && last.landing !== null;
  return tapped && judged(job).at(-1)?.right === true;
}

/** A last bolt read rightly ends the run; a wrong one can be mended, or accepted as it is. */
function readStep(job: JobState): LessonStep {
  const now = judged(job).at(-1);
  if (now !== undefined && !now.right) return 'mend';
  return job.readings.length >= bolts.length ? 'done' : 'accept';
}
