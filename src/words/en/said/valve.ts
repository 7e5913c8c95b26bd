import type { Fact } from '#counting';
import type { SayingContext } from '../../context';
import { capital, isFull, lines, sentence, valveName, valveOf } from './pieces';

type ValveFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** 'Eight exhaust.', and 'Intake.' for the next on the same cylinder. */
export function valve(fact: ValveFact<'valve'>, context: SayingContext): string {
  const off = fact.direction === 'off';
  const again = fact.repeat ? ' again' : '';
  if (!isFull(context)) {
    const short = fact.valve !== null && fact.sameCylinder && !fact.repeat;
    const name = short ? (fact.valve?.valve ?? '') : valveName(fact.valve);
    return sentence(`${name}${again}${off ? ', counting off' : ''}`);
  }
  const name = capital(valveOf(fact.valve));
  if (fact.checking)
    return `${name}: rocker torqued down, checking pushrod screwed right in, then say zero.`;
  if (off) return `${name}, counting off: loosen until the rocker just leaves its stand.`;
  return fact.repeat
    ? `${name} again: back it off, then run it down to zero lash.`
    : `${name}: run it down to zero lash.`;
}

/** The count may begin: a tick says it when terse. */
export function start(fact: ValveFact<'start'>, context: SayingContext): string {
  if (!isFull(context)) return '';
  if (fact.checking) return 'Closed. Open it, counting turns, to zero lash.';
  return fact.direction === 'on'
    ? 'Zero. Mark the socket at twelve.'
    : 'Off its stand. Mark the socket at twelve, count to first play.';
}

export function skipped(fact: ValveFact<'skipped'>, context: SayingContext): string {
  return isFull(context)
    ? `${capital(valveOf(fact.valve))} skipped: it comes back at the end.`
    : 'Skipped.';
}

export function restarted(fact: ValveFact<'restarted'>, context: SayingContext): string {
  if (fact.atZero)
    return isFull(context) ? 'Zero again. Mark the socket at twelve.' : 'Zero again.';
  if (!isFull(context)) return 'From the start.';
  return fact.direction === 'on'
    ? 'From the start: back it off, then run it down to zero lash.'
    : 'From the start: snug it down, then loosen until the rocker just leaves its stand.';
}

export function moved(fact: ValveFact<'moved'>, context: SayingContext): string {
  const full = isFull(context) && fact.from !== null;
  return lines(
    sentence(
      full ? `${valveName(fact.from)} is now ${valveName(fact.to)}` : `now ${valveName(fact.to)}`,
    ),
    offBase(fact, context),
  );
}

/** Its new name says that it was not shut, or hardly, where the crank stood. */
function offBase({ offBaseDeg }: ValveFact<'moved'>, context: SayingContext): string {
  if (offBaseDeg === undefined) return '';
  const where = offBaseDeg > 0 ? 'Too near its ramp' : 'Not shut';
  return `${where} where the crank stood${isFull(context) ? ': count it again' : ''}.`;
}

export function torqued(fact: ValveFact<'torqued'>, context: SayingContext): string {
  return isFull(context) ? `${capital(valveOf(fact.valve))} torqued.` : '';
}
