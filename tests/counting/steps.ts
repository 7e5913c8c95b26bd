import type { By, CommandBody, LandingWord, SetUp } from '#counting';
import { turn48, type ValveKind } from '#valvetrain';
import type { Step } from './given';
import { eightCylinders, exhaust, intake } from './samples';
import { quartersText } from './text';

type Count = 'call' | 'turns';

/** A command with the words a table shows for it, by voice unless said otherwise. */
export function say(text: string, body: CommandBody, by: By = 'voice'): Step {
  return { text, kind: 'command', body, by };
}

/** The same, in an utterance that began so long before it was heard. */
export function heard(id: string, agoMs: number, step: Step): Step {
  if (step.kind !== 'command') return step;
  const began = agoMs > 1000 ? `, begun ${agoMs / 1000} s before` : '';
  return { ...step, text: `${step.text} (utterance ${id}${began})`, utterance: { id, agoMs } };
}

/** A spoken number, in quarters. */
export function call(quarters: number, how: Count = 'call'): Step {
  const to48 = turn48(quarters * 12);
  return how === 'call'
    ? say(`'${quartersText(to48)}'`, { type: 'call', to48, form: 'bare' })
    : say(`'${quarters / 4} turns'`, { type: 'call', to48, form: 'turns' });
}

/** A called number of some other unit: strokes, or turns. */
export function callOf(number: string, to48: number): Step {
  return say(`'${number}'`, { type: 'call', to48: turn48(to48), form: 'bare' });
}

export const press: Step = say('a press', { type: 'step', size: 'step' }, 'pedal');
export const half: Step = say("'another half'", { type: 'step', size: 'half quarter' });
export const oneMore: Step = say("'one more'", { type: 'step', size: 'step' });

export function position(
  words: 'quarter turn' | 'half turn' | 'three quarters of a turn' | 'full turn',
): Step {
  const quarters = ['quarter turn', 'half turn', 'three quarters of a turn', 'full turn'];
  const within48 = turn48(12 * (quarters.indexOf(words) + 1));
  return say(`'${words}'`, { type: 'positionInTurn', within48 });
}

const hours = [
  'twelve',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
] as const;

export function oclock(hour: (typeof hours)[number]): Step {
  return say(`'${hour} o'clock'`, { type: 'clock', mark48: turn48(4 * hours.indexOf(hour)) });
}

export const zero: Step = say("'zero lash'", { type: 'zero' });
export const seat: Step = say("'rocker seated'", { type: 'seat', loose: false });
export const seatKey: Step = say('seat by key', { type: 'seat', loose: false }, 'key');
export const seatedLoose: Step = say("'seated loose'", { type: 'seat', loose: true });
export const loosening: Step = say("'loosening'", { type: 'loosening' });
export const takeBack: Step = say("'take it back'", { type: 'takeBack' });
export const restart: Step = say("'start this valve over'", { type: 'restart' });
export const repeat: Step = say("'count it again'", { type: 'repeat' });
export const next: Step = say("'next valve'", { type: 'next', cylinder: false });
export const nextCylinder: Step = say("'next cylinder'", { type: 'next', cylinder: true });
export const skip: Step = say("'skip this valve'", { type: 'skip' });
export const torqued: Step = say("'torqued down'", { type: 'torqued' });
export const pushrodsLoose: Step = say("'bled down'", { type: 'pushrodsLoose' });
export const handsClear: Step = say("'hands clear'", { type: 'handsClear' });
export const crankThere: Step = say("'crank's there'", { type: 'crankThere' });
export const cautionsHeard: Step = say('cautions heard', { type: 'cautionsHeard' }, 'key');
export const advance: Step = say('a held pedal', { type: 'advance' }, 'pedal');
export const hold: Step = say("'hold on'", { type: 'hold' });
export const carryOn: Step = say("'carry on'", { type: 'carryOn' });
export const overlap: Step = say("speech over the app's voice", { type: 'doubt' });
export const reload: Step = { text: 'the log is read again', kind: 'reload' };

export function wait(seconds: number): Step {
  return { text: `${seconds} s go by`, kind: 'wait', ms: seconds * 1000 };
}

export function land(word: LandingWord, ofQuarters?: number): Step {
  const of48 = ofQuarters === undefined ? undefined : turn48(ofQuarters * 12);
  const named = of48 === undefined ? '' : ` ${word === 'just shy' ? 'of ' : ''}${ofQuarters}`;
  return say(`'${word}${named}'`, {
    type: 'land',
    word,
    ...(of48 === undefined ? {} : { of48 }),
  });
}

export function goTo(cylinder: number, valve?: ValveKind): Step {
  const named = valve === undefined ? '' : `, ${valve}`;
  return say(`'go to cylinder ${cylinder}${named}'`, {
    type: 'chooseValve',
    cylinder,
    ...(valve === undefined ? {} : { valve }),
  });
}

export function wrongCylinder(cylinder: number): Step {
  return say(`'wrong cylinder, it's ${cylinder}'`, { type: 'moveReading', cylinder });
}

export const wrongValve: Step = say("'wrong valve'", { type: 'moveReading', valve: 'other' });

export function nameReading(reading: number, cylinder: number, valve: ValveKind): Step {
  const id = valve === 'intake' ? intake(cylinder) : exhaust(cylinder);
  return say(
    `the reading is named ${cylinder} ${valve}`,
    { type: 'nameReading', reading, valve: id },
    'touch',
  );
}

export function changeSetUp(
  text: string,
  changes: Partial<SetUp>,
  appliesTo: 'all' | 'from here' = 'all',
  from: SetUp = eightCylinders,
): Step {
  const setUp = { ...from, ...changes };
  return say(`${text}, ${appliesTo}`, { type: 'changeSetUp', setUp, appliesTo }, 'touch');
}
