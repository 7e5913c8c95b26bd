import type { Fact } from '#counting';
import type { SayingContext } from '../../context';
import { cardinal, sayWhole } from '../numbers';
import { isFull, lines, sentence } from './pieces';

type CrankFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;
type Place = CrankFact<'hands clear?'> | CrankFact<'turn crank'>;

/** Said once a job, at most 25 words; the whole stands on the screen. */
export const cautions =
  'Battery off, plugs out, neutral, engine cold. Crank by hand, running direction only. ' +
  'Seat by quarters; heavy early, stop and wait. The rest on screen.';

/** 'To eight. Hands clear?' */
export function handsClear(fact: CrankFact<'hands clear?'>, context: SayingContext): string {
  return isFull(context)
    ? lines(sentence(fullPlace(fact)), 'Hands clear?')
    : lines(`To ${place(fact)}.`, 'Hands clear?');
}

/** The only line there is that tells the crank to be turned. */
export function turnCrank(fact: CrankFact<'turn crank'>, context: SayingContext): string {
  return isFull(context) ? fullTurn(fact, context) : shortTurn(fact, context);
}

/** Asked before the crank moves again. */
export const pushrodsLoose = 'Pushrods loose?';

function shortTurn(fact: CrankFact<'turn crank'>, context: SayingContext): string {
  const { turnDeg, companion } = fact;
  if (turnDeg !== null && Math.round(turnDeg) === 0)
    return lines(alone(context, place(fact)), 'Leave the crank.');
  const watch = companion === null ? '' : `Watch ${cardinal(companion)} cross.`;
  if (turnDeg === null) return lines(sentence(firstMove(fact, place(fact))), watch);
  return lines(alone(context, place(fact)), `Turn ${angle(turnDeg, context, '')}.`, watch);
}

/** Where to, when it was not said with 'hands clear?'. */
function alone({ hands }: SayingContext, name: string): string {
  return hands === 'alone' ? sentence(name) : '';
}

function fullTurn(fact: CrankFact<'turn crank'>, context: SayingContext): string {
  const { turnDeg, companion } = fact;
  const name = alone(context, fullPlace(fact));
  if (turnDeg !== null && Math.round(turnDeg) === 0)
    return lines(name, "Leave the crank where it stands. Say crank's there.");
  return lines(
    name,
    fullMove(fact, turnDeg, context),
    companion === null
      ? ''
      : sentence(`${cardinal(companion)} is its companion: watch its lifters cross`),
    "Say crank's there.",
  );
}

function fullMove(fact: Place, turnDeg: number | null, context: SayingContext): string {
  if (turnDeg === null) {
    const name = context.hands === 'alone' ? 'it' : place(fact);
    return sentence(`${firstMove(fact, name)}, in the running direction`);
  }
  return `Turn the crank ${angle(turnDeg, context, ' degrees')} in its running direction.`;
}

/** The first move of a job: from where, nobody knows yet. */
function firstMove({ position, index }: Place, name: string): string {
  if (position.cylinder === null) return `bring the crank to stop ${cardinal(index)}`;
  return `bring ${name} to firing top dead centre`;
}

/** An angle as said: past a whole turn, the turn and what is over. */
function angle(turnDeg: number, { numbers }: SayingContext, unit: string): string {
  const whole = Math.round(turnDeg);
  if (whole < 360) return `${sayWhole(whole, numbers)}${unit}`;
  const over = whole - 360;
  return over === 0
    ? 'one full turn'
    : `one full turn and ${sayWhole(over, numbers)}${unit === '' ? ' degrees' : unit}`;
}

function place({ position, index }: Place): string {
  return position.cylinder === null ? `stop ${cardinal(index)}` : cardinal(position.cylinder);
}

function fullPlace({ position, index, of }: Place): string {
  const cylinder = position.cylinder === null ? '' : `: cylinder ${cardinal(position.cylinder)}`;
  return `position ${cardinal(index)} of ${cardinal(of)}${cylinder}`;
}
