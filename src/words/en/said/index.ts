import type { Fact } from '#counting';
import type { SayingContext } from '../../context';
import { sayEar } from '../heard/earNotice';
import * as count from './count';
import * as crank from './crank';
import * as job from './job';
import { lines } from './pieces';
import { refused } from './refused';
import * as result from './result';
import { soundCheck } from './soundCheck';
import * as standing from './standing';
import * as summary from './summary';
import { teaching } from './teaching';
import * as valve from './valve';

/** The spoken line of a fact; empty where a tick says it all. */
export function said(fact: Fact, context: SayingContext): string {
  const line = lineOf(fact, context);
  return line !== '' && context.level === 'teaching' ? lines(line, teaching(fact)) : line;
}

function lineOf(fact: Fact, context: SayingContext): string {
  switch (fact.kind) {
    case 'job opened':
      return job.opened(fact, context);
    case 'cautions':
      return crank.cautions;
    case 'hands clear?':
      return crank.handsClear(fact, context);
    case 'turn crank':
      return crank.turnCrank(fact, context);
    case 'pushrods loose?':
      return crank.pushrodsLoose(context);
    case 'pushrods loose':
    case 'doubted':
      return '';
    case 'valve':
      return valve.valve(fact, context);
    case 'start':
      return valve.start(fact, context);
    case 'counted':
      return count.counted(fact, context);
    case 'still':
      return count.still(fact, context);
    case 'asked back':
      return count.askedBack(fact, context);
    case 'how far?':
      return count.howFar(fact, context);
    case 'tapped':
      return count.tapped(fact, context);
    case 'read':
      return result.read(fact, context);
    case 'dial read':
      return result.dialRead(fact, context);
    case 'cylinder done':
      return result.cylinderDone(fact, context);
    case 'all read':
      return summary.allRead(fact, context);
    case 'skipped':
      return valve.skipped(fact, context);
    case 'restarted':
      return valve.restarted(fact, context);
    case 'moved':
      return valve.moved(fact, context);
    case 'torqued':
      return valve.torqued(fact, context);
    case 'taken back':
      return standing.takenBack(fact, context);
    case 'held':
      return standing.held(fact, context);
    case 'back at':
      return standing.backAt(fact, context);
    case 'where':
      return standing.where(fact, context);
    case 'left':
      return summary.left(fact, context);
    case 'summary':
      return summary.summaryRead(fact, context);
    case 'how sure':
      return standing.howSure(fact, context);
    case 'set-up changed':
      return job.setUpChanged(fact, context);
    case 'round started':
      return job.roundStarted(fact);
    case 'pushrod fitted':
      return job.pushrodFitted(fact, context);
    case 'job discarded':
      return job.discarded(context);
    case 'job restored':
      return 'Job restored.';
    case 'refused':
      return refused(fact.refusal, context);
    case 'not kept':
      return job.notKept(fact, context);
    case 'kept again':
      return 'Kept again.';
    case 'read only':
      return job.readOnly(fact, context);
    case 'ear':
    case 'ear lost':
      return sayEar(fact);
    case 'sound check':
      return soundCheck(fact.step);
    case 'no voice':
      return 'No voice here: ticks and captions only.';
    default: {
      const never: never = fact;
      return never;
    }
  }
}
