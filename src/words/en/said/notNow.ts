import type { CommandType, Refusal, Stage } from '#counting';
import { type CountContext, countWords } from './figures';
import { capital } from './pieces';

type NotNow = Extract<Refusal, { code: 'not now' }>;

/** A known command at the wrong time: what is in the way, and what to do next. */
export function notNow(refusal: NotNow, context: CountContext): string {
  const own = byCommand(refusal);
  return own ?? byStage(refusal, context);
}

/** Commands whose refusal depends on more than the stage. Undefined: the stage says it all. */
function byCommand({ command, stage, direction, hands }: NotNow): string | undefined {
  if (stage === 'not opened' || stage === 'discarded' || stage === 'held') return undefined;
  switch (command) {
    case 'openJob':
      return 'A job is open already. Close it first.';
    case 'restore':
      return 'This job is not discarded. Carry on.';
    case 'carryOn':
      return 'Not holding. Carry on as you were.';
    case 'cautionsHeard':
      return 'Cautions are heard already. Carry on.';
    case 'handsClear':
      if (stage === 'cautions' || stage === 'pushrods loose') return undefined;
      if (hands === 'alone')
        return 'Hands clear is for two. Alone, only say when the crank is there.';
      return 'Hands clear is asked before the crank moves. Wait for the question.';
    case 'crankThere':
      return arrived(stage);
    case 'overshot':
      return overshot(stage);
    case 'land':
      if (stage === 'read') return 'Landing is told already. Take it back to change it.';
      return stage === 'counting' ? 'Not seated yet. Say rocker seated first.' : undefined;
    case 'hold':
      return stage === 'cautions' ? 'Nothing to hold yet. Cautions first.' : undefined;
    case 'zero':
    case 'restart':
      if (stage === 'landing' || stage === 'read') {
        return 'This valve is seated. To start afresh, say count it again.';
      }
      return undefined;
    case 'loosening':
      return stage === 'counting' ? 'Already counting. Start this valve over first.' : undefined;
    case 'seat':
      if (stage === 'landing') return 'Seated already. Say how far, or go on.';
      return stage === 'to start' && direction === 'off' ? leaveStand : undefined;
    default:
      return undefined;
  }
}

const leaveStand =
  'Still on its stand. Loosen until the rocker just leaves it, then say rocker seated.';

function arrived(stage: Stage): string | undefined {
  switch (stage) {
    case 'to start':
    case 'counting':
    case 'landing':
    case 'read':
      return 'The crank is where it should be. Carry on with this valve.';
    case 'all read':
      return 'All are read: the crank can stay.';
    default:
      return undefined;
  }
}

function overshot(stage: Stage): string | undefined {
  switch (stage) {
    case 'hands clear':
      return 'Hands first. Say hands clear, and the way round is named.';
    case 'choose valve':
    case 'read':
    case 'landing':
    case 'counting':
      return 'The crank is not on its way. Start this valve over or count it again instead.';
    case 'all read':
      return 'All are read: the crank can stay.';
    default:
      return undefined;
  }
}

const counts: readonly CommandType[] = ['call', 'step', 'positionInTurn', 'clock', 'land'];

function byStage({ command, stage, count48, direction }: NotNow, context: CountContext): string {
  switch (stage) {
    case 'not opened':
      return 'No job open. Open one first.';
    case 'discarded':
      return 'This job is discarded. Restore it first.';
    case 'held':
      return 'Holding. Carry on first.';
    case 'cautions':
      return 'Cautions first. Read them, then say cautions heard.';
    case 'pushrods loose':
      return 'Lifters are pressed in. Feel the pushrods, then say pushrods loose.';
    case 'hands clear':
      return 'Hands first. Say hands clear.';
    case 'turning':
      return "Crank's not there yet. Say crank's there once it is.";
    case 'choose valve':
      return 'No valve chosen. Name one first, or go on.';
    case 'to start':
      return direction === 'off'
        ? leaveStand
        : 'Not at zero yet. Run the rocker down and say zero lash.';
    case 'counting': {
      const so =
        count48 === null || count48 === 0
          ? 'Counting.'
          : `${capital(countWords(count48, context))} counted.`;
      return `${so} ${direction === 'off' ? 'Finish at zero lash, or skip this valve.' : 'Seat the rocker first, or skip this valve.'}`;
    }
    case 'landing':
      return counts.includes(command)
        ? 'Seated. Say only how far past the last mark.'
        : 'Seated. Say how far, or go on to the next valve.';
    case 'read':
      return 'This valve is read. Go on to the next, or say count it again.';
    case 'all read':
      return 'All are read. Say count it again, or name a valve.';
    default: {
      const never: never = stage;
      return never;
    }
  }
}
