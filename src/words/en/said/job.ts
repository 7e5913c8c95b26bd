import type { Fact } from '#counting';
import type { SayingContext } from '../../context';
import { pushrodWords } from './figures';
import { offBaseLine } from './offBase';
import { capital, howMany, isFull, lines, sentence } from './pieces';

type JobFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

export function opened({ name }: JobFact<'job opened'>, context: SayingContext): string {
  return isFull(context) ? jobName(name) : '';
}

/** The job's name as a sentence; a job without a name is 'New job.' */
export function jobName(name: string): string {
  const trimmed = name.trim();
  return trimmed === '' ? 'New job.' : sentence(trimmed);
}

export function setUpChanged(fact: JobFact<'set-up changed'>, context: SayingContext): string {
  const { appliesTo, readings, offBase = [] } = fact;
  const off = offBaseLine(offBase);
  if (readings === 0) return 'Set-up changed.';
  if (appliesTo === 'from here') {
    return lines(
      'Set-up changed from here.',
      isFull(context) ? 'Earlier readings stand.' : '',
      off,
    );
  }
  return lines('Set-up changed.', `${capital(howMany(readings, 'reading'))} figured anew.`, off);
}

export function roundStarted({ purpose }: JobFact<'round started'>): string {
  switch (purpose) {
    case 'measure':
      return 'New round.';
    case 'final check':
      return 'Final check.';
    default: {
      const never: never = purpose;
      return never;
    }
  }
}

export function pushrodFitted(
  { lengthMm, valves }: JobFact<'pushrod fitted'>,
  context: SayingContext,
): string {
  if (valves !== undefined && lengthMm !== null)
    return sentence(`${pushrodWords(lengthMm, context)} for ${howMany(valves, 'valve')}`);
  return lengthMm === null
    ? 'No test pushrod noted.'
    : `Test pushrod ${pushrodWords(lengthMm, context)}.`;
}

export function discarded(context: SayingContext): string {
  return lines('Job discarded.', isFull(context) ? 'It can be restored.' : '');
}

/** A storage alarm: the log is not on the disk. */
export function notKept({ why }: JobFact<'not kept'>, context: SayingContext): string {
  const full = isFull(context);
  switch (why) {
    case 'slow':
      return lines('Not kept yet: storage is slow.', full ? 'Wait before you count on.' : '');
    case 'failed':
      return lines('Not kept: storage failed.', full ? 'Write the readings down.' : '');
    case 'full':
      return lines('Not kept: storage is full.', full ? 'Free some space on this device.' : '');
    default: {
      const never: never = why;
      return never;
    }
  }
}

export function readOnly({ why }: JobFact<'read only'>, context: SayingContext): string {
  if (why === 'newer app') {
    return lines(
      'Read only: a newer version has the jobs.',
      isFull(context) ? 'Reload this page.' : '',
    );
  }
  return lines(
    'Read only: open in another window.',
    isFull(context) ? 'Count there, or close it.' : '',
  );
}
