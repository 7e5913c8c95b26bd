import { nextStage } from '../allowed';
import type { Command } from '../commands';
import { tidyNotes } from '../notes';
import { type JobState, setUpOf } from '../state';
import { chooseNext, decideChoose } from './choose';
import { decideCount } from './count';
import { type CommandOf, type Draft, happens, notNow } from './decision';
import { decideSeat, decideZero } from './ends';
import { decideDial, decideOpen, decidePushrod, decideRound, decideSetUp } from './job';
import { countByLanding, decideLand, landByCount, landingReading } from './land';
import { decideMoveReading, decideName } from './mend';
import {
  decideArrive,
  decideHandsClear,
  decideNext,
  decideOvershot,
  decideRepeat,
  decideSkip,
  decideTorqued,
} from './moves';
import { decideTakeBack } from './undo';

/** What an allowed command comes to, by its type. */
export function byType(state: JobState, command: Command): Draft {
  switch (command.type) {
    case 'openJob':
      return decideOpen(command);
    case 'changeSetUp':
      return decideSetUp(command);
    case 'startRound':
      return decideRound(state, command);
    case 'fitPushrod':
      return decidePushrod(state, command);
    case 'readDial':
      return decideDial(state, command);
    case 'cautionsHeard':
      return happens({ type: 'cautionsHeard' });
    case 'pushrodsLoose':
      return happens({ type: 'bledDown' });
    case 'handsClear':
      return decideHandsClear(state);
    case 'crankThere':
      return decideArrive(state);
    case 'overshot':
      return decideOvershot(state);
    case 'hold':
      return happens({ type: 'held' });
    case 'carryOn':
      return happens({ type: 'resumed' });
    case 'doubt':
      return happens({ type: 'doubted' });
    case 'note':
      return happens({ type: 'noted', notes: tidyNotes(command.notes) });
    case 'discard':
      return happens({ type: 'jobDiscarded' });
    case 'restore':
      return happens({ type: 'jobRestored' });
    case 'ask':
      return { kind: 'answer', about: command.about };
    case 'takeBack':
      return decideTakeBack(state, command);
    case 'advance':
      return advance(state, command);
    case 'torqued':
      return decideTorqued(state);
    case 'skip':
      return decideSkip(state);
    default:
      return onSetUp(state, command);
  }
}

type OnSetUp = CommandOf<
  | 'chooseValve'
  | 'next'
  | 'moveReading'
  | 'nameReading'
  | 'repeat'
  | 'loosening'
  | 'restart'
  | 'zero'
  | 'seat'
  | 'call'
  | 'step'
  | 'positionInTurn'
  | 'clock'
  | 'land'
>;

function onSetUp(state: JobState, command: OnSetUp): Draft {
  const setUp = setUpOf(state);
  const { open } = state;
  if (setUp === null) return notNow(state, command.type);
  switch (command.type) {
    case 'chooseValve':
      return decideChoose(state, setUp, command);
    case 'next':
      return decideNext(state, setUp, command);
    case 'moveReading':
      return decideMoveReading(state, setUp, command);
    case 'nameReading':
      return decideName(state, setUp, command);
    case 'repeat':
      return decideRepeat(state, setUp);
    case 'loosening':
      return open === null
        ? chooseNext(state, setUp, 'off')
        : happens({ type: 'valveChosen', valve: open.valve, direction: 'off', heading: null });
    case 'restart':
      return happens({ type: 'restarted', atZero: false });
    case 'zero':
      return open ? decideZero(state, open, command) : notNow(state, command.type);
    case 'seat':
      return open ? decideSeat(state, open, command) : notNow(state, command.type);
    case 'land': {
      const reading = landingReading(state);
      return reading ? decideLand(reading, command) : countByLanding(state, command);
    }
    case 'call':
    case 'step':
    case 'positionInTurn':
    case 'clock': {
      const reading = landingReading(state);
      return reading ? landByCount(state, reading, command) : decideCount(state, command);
    }
    default: {
      const never: never = command;
      return never;
    }
  }
}

/** The next stage, whatever it is: a held pedal, or 'go on'. */
function advance(state: JobState, command: CommandOf<'advance'>): Draft {
  const type = nextStage(state);
  switch (type) {
    case null:
      return notNow(state, 'advance');
    case 'seat':
      return byType(state, { ...command, type, loose: false });
    case 'next':
      return byType(state, { ...command, type, cylinder: false });
    default:
      return byType(state, { ...command, type });
  }
}
