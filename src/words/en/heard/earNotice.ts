import type { EarKind, EarWhy } from '#counting';
import type { Turn48 } from '#valvetrain';
import { sayQuarters } from '../numbers';
import type { MissedWhy } from './hearing';

/** What the ear has to tell when it opens, shuts or dies. */
export interface EarNotice {
  readonly state: 'open' | 'shut' | 'dead';
  readonly why: EarWhy;
  /** The count standing, 48ths of a turn; null when nothing is being counted. */
  readonly count48: Turn48 | null;
  /** Another ear takes over from one that died. */
  readonly instead?: EarKind;
}

/** The ear's own line: whether it listens, why not, at which count, and what to use instead. */
export function sayEar({ state, why, count48, instead }: EarNotice): string {
  if (state === 'open') return OPEN[why] ?? 'Ear open.';
  if (instead !== undefined) return `${REASONS[why]}. ${INSTEAD[instead]}`;
  const at = count48 === null ? '' : ` at ${sayQuarters(count48)}`;
  if (state === 'shut') return sayShut(why, at);
  return `${REASONS[why]}, no ear${at}. Use the pedal or the keys.`;
}

function sayShut(why: EarWhy, at: string): string {
  if (why === 'notice') {
    return 'To be understood, your speech would leave this device. Agree to that on the screen first, or use the pedal.';
  }
  if (why === 'asked') return 'Ear shut.';
  return `${REASONS[why]}, ear shut${at}. Use the pedal.`;
}

const OPEN: Readonly<Partial<Record<EarWhy, string>>> = {
  'room louder': 'Too noisy for the ear: use the pedal.',
  'room quieter': 'Quieter: the ear hears again.',
};

const INSTEAD: Readonly<Record<EarKind, string>> = {
  offline: 'The ear that needs no network takes over.',
  browser: 'The browser’s own ear takes over.',
};

const REASONS: Readonly<Record<EarWhy, string>> = {
  asked: 'Shut',
  notice: 'Not agreed to',
  'too loud': 'Too loud',
  'not here': 'This browser does not recognise speech',
  denied: 'The microphone is not allowed',
  'no microphone': 'No microphone found',
  'service refused': 'The speech service is not allowed',
  network: 'The speech service can’t be reached',
  'no answer': 'The speech service does not answer',
  'no results': 'The speech service hears but says nothing',
  'keeps ending': 'The speech service keeps stopping',
  language: 'The speech service knows no English',
  'no model': 'The ear’s own files can’t be loaded',
  'model damaged': 'The ear’s own files are damaged',
  'room louder': 'Too noisy',
  'room quieter': 'Quieter',
  unknown: 'The speech service failed',
};

/** What to say instead of something that was missed. */
export function sayMissed(near: string, why: MissedWhy): string {
  switch (why) {
    case 'near':
    case 'tie':
      return `Not sure: say ‘${near}’.`;
    case 'two':
      return 'One thing at a time: say the last one again.';
    case 'carrier':
      return `Say ‘${near}’.`;
    case 'unfinished':
      return `Say all of it: ‘${near}’.`;
    default: {
      const never: never = why;
      return never;
    }
  }
}
