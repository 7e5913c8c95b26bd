import type { Refusal } from '#counting';
import type { Problem } from '#valvetrain';
import { cardinal } from '../numbers';
import { type CountContext, countWords } from './figures';
import { notNow } from './notNow';
import { capital, lines, sentence, valveName } from './pieces';

/** Why a command was not taken, and what to do next. The same at every talk level. */
export function refused(refusal: Refusal, context: CountContext): string {
  const count = (of: Parameters<typeof countWords>[0]) => countWords(of, context);
  switch (refusal.code) {
    case 'not now':
      return notNow(refusal, context);
    case 'nothing to take back':
      return 'Nothing to take back. Carry on.';
    case 'past the most':
      return `${capital(count(refusal.most48))} is the most. Still ${count(refusal.counted48)}: seat it, or start this valve over.`;
    case 'clock is off':
      return 'Clock hours are off. Call the count, or switch them on in the set-up.';
    case 'not in this job':
      return `${capital(valveName(refusal.valve))} is not in this job. Name another, or add it in the set-up.`;
    case 'no such cylinder':
      return `No cylinder ${numbered(refusal.cylinder)}: this engine has ${cardinal(refusal.cylinders)}. Name another.`;
    case 'say which valve':
      return 'Which valve? Name its cylinder, and intake or exhaust.';
    case 'already that valve':
      return `It is ${valveName(refusal.valve)} already. Carry on, or name another.`;
    case 'already counted':
      return refusal.counted48 === 0
        ? 'Counting off. Count as you loosen, then say zero lash.'
        : `${capital(count(refusal.counted48))} counted off. Loosen on, then say zero lash.`;
    case 'loose after counting':
      return `${capital(count(refusal.counted48))} counted, so not loose. Seat it, or start this valve over.`;
    case 'landing outside the mark':
      return `Seated at ${count(refusal.counted48)}, so not at ${count(refusal.said48)}. Say how far past ${count(refusal.counted48)}.`;
    case 'no reading':
      return 'No reading yet. Count a valve first.';
    case 'unknown reading':
      return 'That reading is gone. Pick another.';
    case 'already torqued':
      return `${capital(valveName(refusal.valve))} is torqued already. Carry on.`;
    case 'nothing left here':
      return 'Nothing left at this position. Go on, or name a valve.';
    case 'bad set-up':
      return problems('Set-up not taken.', refusal.problems);
    case 'bad length':
      return problems('Length not taken.', refusal.problems);
    case 'bad dial reading':
      return problems('Dial reading not taken.', refusal.problems);
    default: {
      const never: never = refusal;
      return never;
    }
  }
}

/** A cylinder as it was asked for, however odd. */
function numbered(cylinder: number): string {
  return Number.isInteger(cylinder) && cylinder >= 0 && cylinder <= 999 ? cardinal(cylinder) : 'so';
}

/** The first problem in full; the rest stand on the screen. */
function problems(lead: string, found: readonly Problem[]): string {
  const [first, ...rest] = found;
  if (first === undefined) return `${lead} Look it over again.`;
  const more = rest.length === 0 ? '' : `And ${cardinal(rest.length)} more on the screen.`;
  return lines(lead, sentence(first.sentence), more);
}
