import { allowed, nextStage, stageOf } from '../allowed';
import type { Command, CommandType } from '../commands';
import { EVENT_VERSION, type EventBody, type JobEvent } from '../events';
import { lengthProblems, setUpProblems } from '../setUpProblems';
import { type JobState, type OpenValve, setUpOf } from '../state';
import { nextStop } from '../walk';
import { decideCall, decideClock, decidePosition, decideStep } from './count';
import { askBack, type Decision, type Draft, happens, refuse } from './decision';
import {
  decideLand,
  decideSeat,
  decideZero,
  landAtClock,
  landAtCount,
  landByTap,
  landingReading,
} from './ends';
import {
  decideArrive,
  decideChoose,
  decideMoveReading,
  decideName,
  decideNext,
  decideRepeat,
  decideSkip,
  decideTorqued,
} from './moves';
import { decideTakeBack, replacesOwnCount } from './undo';

/**
 * What a command comes to in this state: events to append, an answer, or a refusal with what its
 * words need. Pure; the command carries its own clock. Never throws.
 */
export function decide(state: JobState, command: Command): Decision {
  const draft = draftFor(state, command);
  if (draft.kind !== 'events') return draft;
  return {
    kind: 'events',
    events: draft.bodies.map((body, i) => enveloped(state, command, body, i)),
  };
}

function enveloped(state: JobState, command: Command, body: EventBody, i: number): JobEvent {
  return {
    jobId: command.type === 'openJob' ? command.jobId : state.jobId,
    seq: state.seq + 1 + i,
    v: EVENT_VERSION,
    at: command.at,
    by: command.by,
    ...(command.utterance === undefined ? {} : { utterance: command.utterance.id }),
    ...body,
  };
}

function draftFor(state: JobState, command: Command): Draft {
  const late = lateCount(state, command);
  if (late !== null) return late;
  if (!allowed(state).includes(command.type)) return notNow(state, command.type);
  return (
    replacesOwnCount(state, command, (before) => byType(before, command)) ?? byType(state, command)
  );
}

/** A count that began before the seat it arrives after is asked, whatever was said since (C11). */
function lateCount(state: JobState, command: Command): Draft | null {
  const open = state.open;
  if (command.type !== 'call' || command.utterance === undefined || open === null) return null;
  if (open.endedAt === null || command.utterance.beganAt >= open.endedAt) return null;
  return askBack({
    about: 'count',
    why: 'began before the seat',
    counted48: open.count48,
    options: [command.to48],
    by: 'number',
  });
}

function notNow(state: JobState, command: CommandType): Draft {
  return refuse({
    code: 'not now',
    command,
    stage: stageOf(state),
    count48: state.open?.count48 ?? null,
    direction: state.open?.direction ?? 'on',
    hands: setUpOf(state)?.hands ?? 'alone',
  });
}

function byType(state: JobState, command: Command): Draft {
  switch (command.type) {
    case 'openJob': {
      const problems = setUpProblems(command.setUp).filter(
        ({ severity }) => severity === 'refused',
      );
      if (problems.length > 0) return refuse({ code: 'bad set-up', problems });
      return happens({ type: 'jobOpened', setUp: command.setUp, app: command.app });
    }
    case 'changeSetUp': {
      const problems = setUpProblems(command.setUp).filter(
        ({ severity }) => severity === 'refused',
      );
      if (problems.length > 0) return refuse({ code: 'bad set-up', problems });
      return happens({ type: 'setupChanged', setUp: command.setUp, appliesTo: command.appliesTo });
    }
    case 'startRound':
      return happens({
        type: 'roundStarted',
        number: state.round.number + 1,
        purpose: command.purpose,
      });
    case 'fitPushrod': {
      const problems = command.length === null ? [] : lengthProblems(command.length);
      if (problems.length > 0) return refuse({ code: 'bad length', problems });
      return happens({ type: 'pushrodFitted', length: command.length });
    }
    case 'cautionsHeard':
      return happens({ type: 'cautionsHeard' });
    case 'pushrodsLoose':
      return happens({ type: 'bledDown' });
    case 'hold':
      return happens({ type: 'held' });
    case 'carryOn':
      return happens({ type: 'resumed' });
    case 'doubt':
      return happens({ type: 'doubted' });
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
    case 'repeat':
      return decideRepeat(state);
    case 'nameReading':
      return decideName(state, command);
    case 'handsClear': {
      const stop = nextStop(state);
      return stop === null
        ? refuse({ code: 'nothing left here' })
        : happens({ type: 'handsClear', position: stop.position });
    }
    case 'crankThere':
      return decideArrive(state);
    case 'skip':
      return decideSkip(state);
    case 'next':
      return decideNext(state, command);
    default:
      return onValve(state, command);
  }
}

type ValveCommand = Extract<
  Command,
  {
    type:
      | 'chooseValve'
      | 'moveReading'
      | 'loosening'
      | 'restart'
      | 'zero'
      | 'seat'
      | 'call'
      | 'step'
      | 'positionInTurn'
      | 'clock'
      | 'land';
  }
>;

function onValve(state: JobState, command: ValveCommand): Draft {
  const setUp = setUpOf(state);
  if (setUp === null) return notNow(state, command.type);
  if (command.type === 'chooseValve') return decideChoose(state, setUp, command);
  if (command.type === 'moveReading') return decideMoveReading(state, setUp, command);
  const open = state.open;
  if (open === null) return notNow(state, command.type);
  const reading = open.phase === 'landing' ? landingReading(state) : undefined;
  switch (command.type) {
    case 'loosening':
      return happens({ type: 'valveChosen', valve: open.valve, direction: 'off', heading: null });
    case 'restart':
      return happens({ type: 'restarted', atZero: false });
    case 'zero':
      return decideZero(state, open, command);
    case 'seat':
      return seatOrRefuse(state, open, command);
    case 'call':
      return reading
        ? landAtCount(reading, command.to48)
        : decideCall({ state, setUp, open }, command);
    case 'step':
      return reading ? landByTap(reading) : decideStep({ state, setUp, open }, command);
    case 'clock':
      return reading ? landAtClock(reading, command) : decideClock({ state, setUp, open }, command);
    case 'positionInTurn':
      return decidePosition({ state, setUp, open }, command);
    case 'land':
      return reading ? decideLand(reading, command) : notNow(state, command.type);
    default: {
      const never: never = command;
      return never;
    }
  }
}

function seatOrRefuse(
  state: JobState,
  open: OpenValve,
  command: Extract<Command, { type: 'seat' }>,
): Draft {
  const before = open.phase === 'to start' && open.direction === 'on';
  return before && !command.loose ? notNow(state, command.type) : decideSeat(state, open, command);
}

/** The next stage, whatever it is: a held pedal, or 'go on'. */
function advance(state: JobState, command: Command): Draft {
  const { at, by } = command;
  const type = nextStage(state);
  switch (type) {
    case null:
      return notNow(state, 'advance');
    case 'seat':
      return byType(state, { type, loose: false, at, by });
    case 'next':
      return byType(state, { type, cylinder: false, at, by });
    case 'carryOn':
    case 'cautionsHeard':
    case 'pushrodsLoose':
    case 'handsClear':
    case 'crankThere':
    case 'chooseValve':
    case 'zero':
      return byType(state, { type, at, by });
    default:
      return notNow(state, type);
  }
}
