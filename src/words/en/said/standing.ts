import type { Fact, Standing } from '#counting';
import type { SayingContext } from '../../context';
import { cardinal, sayClock } from '../numbers';
import { countWithUnit, countWords, figureWithUnit, figureWords, verdictWords } from './figures';
import { capital, commas, isFull, lines, sentence, valveName, valveOf } from './pieces';
import { repeatedWords } from './repeated';
import { giveOrTake, otherwise, provenWords, unprovenSoFar } from './sure';

type StandingFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** 'One intake, three counted. Socket at nine.' */
export function where({ standing }: StandingFact<'where'>, context: SayingContext): string {
  const { stage, valve, count48, figures, direction } = standing;
  const name = isFull(context) ? valveOf(valve) : valveName(valve);
  switch (stage) {
    case 'counting':
      return lines(sentence(`${name}, ${countedSo(standing, context)}`), socket(standing));
    case 'to start':
      return sentence(
        direction === 'on' ? `${name}, not at zero yet` : `${name}, still on its stand`,
      );
    case 'landing':
      return lines(sentence(`${name}, seated at ${countWords(count48, context)}`), 'How far?');
    case 'read': {
      const figure = figures === null ? '' : figureWithUnit(figures, context);
      const verdict = verdictWords(figures?.verdict ?? null);
      return sentence(commas(name, `read at ${countWords(count48, context)}`, figure, verdict));
    }
    default:
      return between(standing);
  }
}

/** 'Back at one intake, four and a half. Socket at half past one. Moved? Say start this valve over.' */
export function backAt({ standing }: StandingFact<'back at'>, context: SayingContext): string {
  const { stage, valve, count48 } = standing;
  const name = valveName(valve);
  const count = countWords(count48, context);
  switch (stage) {
    case 'counting':
      return lines(
        sentence(`Back at ${name}, ${count}`),
        socket(standing),
        'Moved? Say start this valve over.',
      );
    case 'landing':
      return lines(sentence(`Back at ${name}, seated at ${count}`), 'How far?');
    case 'to start':
      return sentence(`Back at ${name}, ${notBegun(standing)}`);
    case 'read':
      return sentence(`Back at ${name}, read at ${count}`);
    default:
      return lines('Back.', between(standing));
  }
}

/** 'Taken back. Four, seventy-eight.': what came back. */
export function takenBack(fact: StandingFact<'taken back'>, context: SayingContext): string {
  const { standing, undone } = fact;
  const check = fact.checkCrank ? 'Check where the crank is.' : '';
  if (undone === 'question') {
    return standing.stage === 'counting'
      ? sentence(`still ${countWords(standing.count48, context)}`)
      : 'As before.';
  }
  const thing = things[undone];
  if (thing !== undefined) return lines(`Taken back: ${thing}.`, check);
  return lines('Taken back.', cameBack(fact, context), check);
}

/** What a take-back undid, where no count or valve comes back by it. */
const things: Partial<Record<StandingFact<'taken back'>['undone'], string>> = {
  setupChanged: 'the set-up',
  roundStarted: 'the new round',
  pushrodFitted: 'the test pushrod',
  valveNamed: "the valve's name",
  readingMoved: "the valve's name",
  torqued: 'torqued',
  dialRead: 'the dial reading',
};

function cameBack(
  { standing, undone }: StandingFact<'taken back'>,
  context: SayingContext,
): string {
  const { stage, valve, count48, figures } = standing;
  const count = countWords(count48, context);
  const figure = figures === null ? '' : figureWords(figures, context);
  const sameValve = undone === 'counted' || undone === 'seated' || undone === 'landed';
  const name = sameValve ? '' : valveName(valve);
  switch (stage) {
    case 'counting':
      return sentence(count48 === 0 ? commas(name, 'at zero') : commas(name, count, figure));
    case 'landing':
      return lines(sentence(commas(name, `seated at ${count}`)), 'How far?');
    case 'to start':
      return sentence(`${valveName(valve)}, ${notBegun(standing)}`);
    case 'read':
      return sentence(commas(name, `read at ${count}`, figure));
    default:
      return between(standing);
  }
}

/** 'Holding at four.' */
export function held({ standing }: StandingFact<'held'>, context: SayingContext): string {
  const at = standing.stage === 'counting' ? ` at ${countWords(standing.count48, context)}` : '';
  return lines(`Holding${at}.`, isFull(context) ? 'Carry on when ready.' : '');
}

/** The figure of the reading open now, what it is good for, and what would settle it. */
export function howSure(fact: StandingFact<'how sure'>, context: SayingContext): string {
  const { standing, repeated } = fact;
  const { stage, figures } = standing;
  switch (stage) {
    case 'counting':
      return 'To the last mark passed.';
    case 'landing':
      return 'To a whole quarter, until you say how far.';
    case 'read':
      return figures?.sure == null
        ? 'Nothing measured here to be sure of.'
        : lines(
            repeated === null || repeated.readings < 2
              ? sentence(figureWithUnit(figures, context))
              : repeatedWords(repeated, context),
            giveOrTake(figures.sure, context),
            figures.verdict === null ? '' : provenWords(figures.sure),
            otherwise(figures.sure.settling),
          );
    default:
      return unprovenSoFar(fact);
  }
}

function countedSo(standing: Standing, context: SayingContext): string {
  const { count48, figures } = standing;
  if (count48 === 0) return standing.direction === 'on' ? 'at zero' : 'just off its stand';
  if (!isFull(context)) return `${countWords(count48, context)} counted`;
  const figure = figures === null ? '' : figureWithUnit(figures, context);
  return commas(`${countWithUnit(count48, context)} counted`, figure);
}

/** Where the mark set at twelve should stand now. */
function socket({ count48, direction }: Standing): string {
  return sentence(`Socket at ${sayClock(count48, direction)}`);
}

function notBegun({ direction }: Standing): string {
  return direction === 'on' ? 'before zero' : 'still on its stand';
}

/** Between valves. Never an instruction for the crank: it may have been long ago. */
function between({ stage, position }: Standing): string {
  switch (stage) {
    case 'not opened':
      return 'No job open.';
    case 'discarded':
      return 'This job is discarded.';
    case 'held':
      return 'Holding. Carry on when ready.';
    case 'cautions':
      return 'Cautions to be heard.';
    case 'pushrods loose':
      return 'Waiting for loose pushrods.';
    case 'hands clear':
      return lines('Waiting for hands clear.', stood(position));
    case 'turning':
      return lines('Waiting for the crank.', stood(position));
    case 'choose valve':
      return lines('No valve chosen.', stood(position));
    case 'all read':
      return 'All read.';
    case 'to start':
    case 'counting':
    case 'landing':
    case 'read':
      return '';
    default: {
      const never: never = stage;
      return never;
    }
  }
}

function stood(position: Standing['position']): string {
  if (position === null || position.cylinder === null) return '';
  return capital(`last at ${cardinal(position.cylinder)}.`);
}
