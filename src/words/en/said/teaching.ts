import type { Fact, Question } from '#counting';

/** One sentence more at the teaching level. None between counts: there is no time. */
export function teaching(fact: Fact): string {
  switch (fact.kind) {
    case 'hands clear?':
      return 'Answer only with every hand off the engine.';
    case 'turn crank':
      return 'A few degrees either way do no harm; overshot, go round again, never back.';
    case 'pushrods loose?':
      return 'Five to ten minutes is one published figure; time alone is no proof.';
    case 'valve':
      if (fact.checking) return 'Zero lash is where the up and down play has just gone.';
      return fact.direction === 'on'
        ? 'Zero lash is where the up and down play has just gone.'
        : 'The first of it is only bolt stretch.';
    case 'start':
      return 'Call or press each mark as it passes.';
    case 'asked back':
      return isNumber(fact.question) ? 'A number is the count itself, not one more.' : '';
    case 'how far?':
      return 'Nothing, a bit past, half or just shy; each tap is a quarter of a quarter.';
    case 'read':
      // A checking pushrod is opened under a rocker already torqued down.
      return fact.figures.lengthMm === undefined
        ? 'Tightening on to torque adds no preload, so it is never counted.'
        : 'Screw it right in again before the next valve.';
    case 'restarted':
      return 'What was counted before stays in the log.';
    case 'taken back':
      return 'Take back again to go further.';
    case 'all read':
      return fact.order?.kind !== 'lengths'
        ? ''
        : 'A length to order is no leave to start: recheck clearances first.';
    default:
      return '';
  }
}

function isNumber(question: Question): boolean {
  return question.about === 'count' && (question.why === 'goes back' || question.why === 'jumps');
}
