import type { Fact } from '#counting';
import type { SayingContext } from '../../context';
import { cardinal, sayWhole } from '../numbers';
import { fullPlace, place } from './crankPlace';
import { isFull, lines, sentence } from './pieces';
import { proofWords } from './proof';

type CrankFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;
type Turn = CrankFact<'turn crank'>;

/** Said once a job, at most 25 words; the whole stands on the screen. */
export const cautions =
  'Battery off, plugs out, neutral, engine cold. Crank by hand, running direction only. ' +
  'Seat by quarters; heavy early, stop and wait. The rest on screen.';

/** 'To eight. Hands clear?' */
export function handsClear(fact: CrankFact<'hands clear?'>, context: SayingContext): string {
  const where = isFull(context) ? fullPlace(fact) : place(fact);
  if (fact.again) return lines(sentence(`round again to ${place(fact)}`), 'Hands clear?');
  return lines(sentence(isFull(context) ? where : `to ${where}`), 'Hands clear?');
}

/** The only line there is that tells the crank to be turned. */
export function turnCrank(fact: Turn, context: SayingContext): string {
  if (fact.again) return roundAgain(fact, context);
  return isFull(context) ? fullTurn(fact, context) : shortTurn(fact, context);
}

/** Asked before the crank moves again; with its proof where there is time. */
export function pushrodsLoose(context: SayingContext): string {
  return lines(
    'Pushrods loose?',
    isFull(context) ? 'Each turns in the fingers again once its lifter has bled down.' : '',
  );
}

/** Overshot: never back. */
function roundAgain(fact: Turn, context: SayingContext): string {
  return isFull(context)
    ? lines(
        'Go round again: two turns, in the running direction.',
        watched(fact, context),
        "Say crank's there.",
      )
    : lines('Go round again: two turns.', watched(fact, context));
}

function shortTurn(fact: Turn, context: SayingContext): string {
  const { turnDeg, first } = fact;
  if (isThere(fact)) return lines(alone(context, place(fact)), 'Leave the crank.');
  const watch = watched(fact, context);
  if (first !== undefined)
    return lines(`Bring the dots together, then turn ${angle(first.turnDeg, context, '')}.`, watch);
  if (turnDeg === null) return lines(sentence(firstMove(fact, place(fact))), watch);
  return lines(alone(context, place(fact)), `Turn ${angle(turnDeg, context, '')}.`, watch);
}

/** Where to, when it was not said with 'hands clear?'. */
function alone({ hands }: SayingContext, name: string): string {
  return hands === 'alone' ? sentence(name) : '';
}

function fullTurn(fact: Turn, context: SayingContext): string {
  const name = alone(context, fullPlace(fact));
  if (isThere(fact)) return lines(name, "Leave the crank where it stands. Say crank's there.");
  return lines(name, fullMove(fact, context), watched(fact, context), "Say crank's there.");
}

function isThere({ turnDeg }: Turn): boolean {
  return turnDeg !== null && Math.round(turnDeg) === 0;
}

function fullMove(fact: Turn, context: SayingContext): string {
  const { turnDeg, first } = fact;
  if (first !== undefined) {
    const on = angle(first.turnDeg, context, ' degrees');
    return `Bring the timing dots together, then turn the crank ${on} on in its running direction.`;
  }
  if (turnDeg === null) {
    const name = context.hands === 'alone' && !named(fact) ? 'it' : place(fact);
    return sentence(`${firstMove(fact, name)}, in the running direction`);
  }
  return `Turn the crank ${angle(turnDeg, context, ' degrees')} in its running direction.`;
}

/** The first move of a job: from where, nobody knows yet. */
function firstMove(fact: Turn, name: string): string {
  return named(fact)
    ? `bring the crank round to ${name}`
    : `bring ${name} to firing top dead centre`;
}

/** A position that is not one cylinder's firing TDC has to be named. */
function named({ position }: Turn): boolean {
  const { cylinder, valves } = position;
  return cylinder === null || valves.some((valve) => valve.cylinder !== cylinder);
}

/** What shows that it is there: the companion's lifters crossing, or another proof. */
function watched(fact: Turn, context: SayingContext): string {
  const { companion, proof } = fact;
  if (companion === null) return proof === undefined ? '' : proofWords(proof, context);
  if (!isFull(context)) return `Watch ${cardinal(companion)} cross.`;
  return named(fact)
    ? sentence(`watch ${cardinal(companion)}'s lifters cross`)
    : sentence(`${cardinal(companion)} is its companion: watch its lifters cross`);
}

/** An angle as said: past a whole turn, the turn and what is over. */
function angle(turnDeg: number, { numbers }: SayingContext, unit: string): string {
  const whole = Math.round(turnDeg);
  if (whole < 360) return `${sayWhole(whole, numbers)}${unit}`;
  const over = whole - 360;
  if (over === 0) return 'one full turn';
  if (over === 360) return 'two full turns';
  return `one full turn and ${sayWhole(over, numbers)}${unit === '' ? ' degrees' : unit}`;
}
