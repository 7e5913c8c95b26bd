import { type CommandBody, callOf, type JobState, setUpOf, stageOf, unitOf } from '#counting';
import type { Press } from './press';

/**
 * The command a press stands for at this moment of the job; null for presses that are not the
 * bench's (the ear's). At 'how far?' nought is 'nothing' and half is 'half'.
 */
export function commandFor(press: Press, job: JobState): CommandBody | null {
  const stage = stageOf(job);
  const calling = setUpOf(job)?.calling ?? { way: 'quarters' };
  switch (press.kind) {
    case 'step':
      return { type: 'step', size: 'step' };
    case 'half':
      return stage === 'landing'
        ? { type: 'land', word: 'half' }
        : { type: 'step', size: 'half quarter' };
    case 'number':
      return { type: 'call', to48: callOf(press.value, calling), form: 'bare' };
    case 'take back':
      return { type: 'takeBack' };
    case 'next stage':
      return { type: 'advance' };
    case 'zero':
      return stage === 'landing' ? { type: 'land', word: 'nothing' } : { type: 'zero' };
    case 'seat and accept':
      return stage === 'landing' || stage === 'read'
        ? { type: 'next', cylinder: false }
        : { type: 'seat', loose: false };
    case 'say again':
      return { type: 'ask', about: 'again' };
    case 'ear':
    case 'listen':
      return null;
    default: {
      const never: never = press;
      return never;
    }
  }
}

/**
 * Whether a keyed number is taken at once: the present count or up to two of the called unit ahead
 * of it (C5). Any other waits for a second digit.
 */
export function withinStep(value: number, job: JobState): boolean {
  const setUp = setUpOf(job);
  if (setUp === null || job.open === null) return false;
  const ahead = callOf(value, setUp.calling) - job.open.count48;
  return ahead >= 0 && ahead <= 2 * unitOf(setUp.calling);
}
