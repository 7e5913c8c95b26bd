import { turn48 } from '#valvetrain';
import type { AskedFor } from '../commands';
import type { Decision } from '../decide/decision';
import type { JobEvent } from '../events';
import { figuresForReading, saidCount } from '../figures';
import { oneLength } from '../pushrodAnswer';
import { type JobState, readingById } from '../state';
import { cylinderSummaries, engineSummary, readingsOf } from '../summary';
import type { Announcement, Cue, Fact } from './announcement';
import { countCue } from './cues';
import { promptFor } from './prompt';
import { figuresNow, standingOf } from './standing';

type Timing = Announcement['timing'];

function tell(
  fact: Fact,
  keptThrough: number,
  cue: Cue | null = null,
  timing: Timing = 'at once',
): Announcement {
  return { fact, cue, timing, keptThrough, perishable: fact.kind === 'turn crank' };
}

/**
 * What one event of the log has to tell. A pure function of the state before, the event and the
 * state after, so that a log replays to the same announcements.
 */
export function announce(
  before: JobState,
  event: JobEvent,
  after: JobState,
): readonly Announcement[] {
  const { seq } = event;
  const prompt = () => {
    const fact = promptFor(after, before, true);
    return fact === null ? [] : [tell(fact, seq)];
  };
  switch (event.type) {
    case 'jobOpened':
      return [tell({ kind: 'job opened', name: event.setUp.name }, seq), ...prompt()];
    case 'cautionsHeard':
    case 'handsClear':
    case 'positionReached':
    case 'valveChosen':
    case 'repeatStarted':
      return prompt();
    case 'bledDown':
      return [tell({ kind: 'pushrods loose' }, seq, 'soft'), ...prompt()];
    case 'setupChanged':
      return [
        tell(
          { kind: 'set-up changed', appliesTo: event.appliesTo, readings: after.readings.length },
          seq,
        ),
      ];
    case 'roundStarted':
      return [tell({ kind: 'round started', purpose: event.purpose }, seq), ...prompt()];
    case 'pushrodFitted':
      return [tell({ kind: 'pushrod fitted', lengthMm: event.length?.mm ?? null }, seq)];
    case 'zeroTouched':
      return after.open?.direction === 'off' ? ended(after, seq) : started(after, seq);
    case 'seated':
      return after.open?.direction === 'off' ? started(after, seq) : ended(after, seq);
    case 'counted':
      return counted(before, event, after);
    case 'doubted':
      return [tell({ kind: 'doubted' }, 0, 'missed')];
    case 'askedBack':
      return [tell({ kind: 'asked back', question: event.question }, seq, 'missed')];
    case 'landed':
      return landed(event, after);
    case 'restarted':
      return [
        tell(
          { kind: 'restarted', atZero: event.atZero, direction: after.open?.direction ?? 'on' },
          seq,
          'back',
        ),
      ];
    case 'readingMoved':
    case 'valveNamed':
      return moved(before, event);
    case 'torqued':
      return [
        tell(
          { kind: 'torqued', valve: readingById(after, event.reading)?.valve ?? null },
          seq,
          'soft',
        ),
      ];
    case 'valveLeft':
      return left(before, event, after);
    case 'held':
      return [tell({ kind: 'held', standing: standingOf(before) }, seq, 'soft')];
    case 'resumed':
      return [tell({ kind: 'back at', standing: standingOf(after) }, seq, 'soft')];
    case 'takenBack':
      return takenBack(before, event, after);
    case 'jobDiscarded':
      return [tell({ kind: 'job discarded' }, seq)];
    case 'jobRestored':
      return [tell({ kind: 'job restored' }, seq)];
    default: {
      const never: never = event;
      return never;
    }
  }
}

function started(after: JobState, seq: number): Announcement[] {
  return [tell({ kind: 'start', direction: after.open?.direction ?? 'on' }, seq, 'zero')];
}

function counted(
  before: JobState,
  event: JobEvent & { type: 'counted' },
  after: JobState,
): Announcement[] {
  const figures = figuresNow(after);
  if (figures === null) return [];
  const was = figuresNow(before);
  const verdictChanged = was?.verdict !== figures.verdict || before.open?.count48 === 0;
  const timing = figures.pastTravel ? 'at once' : 'at a pause';
  return [
    tell(
      { kind: 'counted', count48: event.to48, figures, verdictChanged },
      event.seq,
      countCue(was, figures),
      timing,
    ),
  ];
}

function ended(after: JobState, seq: number): Announcement[] {
  const { open } = after;
  if (open === null) return [];
  if (open.phase === 'landing')
    return [tell({ kind: 'how far?', count48: open.count48 }, seq, 'seat')];
  return result(after, seq, 'seat');
}

/** The result line of the open valve's reading. */
function result(state: JobState, seq: number, cue: Cue | null): Announcement[] {
  const id = state.open?.reading ?? null;
  const reading = id === null ? undefined : readingById(state, id);
  if (reading === undefined) return [];
  const fact: Fact = {
    kind: 'read',
    valve: reading.valve,
    count48: saidCount(reading),
    landing: reading.kind === 'counted' ? reading.landing : null,
    figures: figuresForReading(state, reading),
    repeat: reading.valve === null ? 1 : readingsOf(state, reading.valve, reading.round).length,
  };
  return [tell(fact, seq, cue)];
}

function landed(event: JobEvent & { type: 'landed' }, after: JobState): Announcement[] {
  if (event.answer.told !== 'tapped') return result(after, event.seq, 'landing');
  const count48 = after.open?.count48 ?? turn48(0);
  return [
    tell(
      { kind: 'tapped', count48, past48: event.answer.past48 },
      event.seq,
      'landing',
      'at a pause',
    ),
  ];
}

function left(
  before: JobState,
  event: JobEvent & { type: 'valveLeft' },
  after: JobState,
): Announcement[] {
  const { seq } = event;
  const unsaid = before.open?.phase === 'landing' ? result(before, seq, null) : [];
  const skipped = event.skipped
    ? [tell({ kind: 'skipped', valve: before.open?.valve ?? null }, seq, 'soft')]
    : [];
  const fact = promptFor(after, before, true);
  return [
    ...unsaid,
    ...skipped,
    ...cylinderDone(before, event, after),
    ...(fact === null ? [] : [tell(fact, seq)]),
  ];
}

function cylinderDone(
  before: JobState,
  event: JobEvent & { type: 'valveLeft' },
  after: JobState,
): Announcement[] {
  if (event.next !== null || event.skipped) return [];
  const cylinders = cylinderSummaries(after);
  const cylinder = cylinders.find((one) => one.cylinder === before.open?.valve?.cylinder);
  const toGo = cylinders.filter(({ done }) => !done).length;
  if (cylinder === undefined || !cylinder.done) return [];
  return [tell({ kind: 'cylinder done', cylinder, left: toGo }, event.seq)];
}

function moved(
  before: JobState,
  event: JobEvent & { type: 'readingMoved' | 'valveNamed' },
): Announcement[] {
  const from =
    event.reading === 'open'
      ? (before.open?.valve ?? null)
      : (readingById(before, event.reading)?.valve ?? null);
  const to = event.type === 'valveNamed' ? event.valve : event.to;
  return [tell({ kind: 'moved', from, to }, event.seq, 'soft')];
}

function takenBack(
  before: JobState,
  event: JobEvent & { type: 'takenBack' },
  after: JobState,
): Announcement[] {
  const undone = before.asked?.seq === event.undoes ? undefined : before.past?.event;
  const fact: Fact = {
    kind: 'taken back',
    undone: undone?.type ?? 'question',
    undoneCount48: undone?.type === 'counted' ? undone.to48 : null,
    standing: standingOf(after),
    checkCrank: undone?.type === 'positionReached',
  };
  return [tell(fact, event.seq, 'back')];
}

/** What a decision without events has to tell: an answer, 'still four', a refusal. */
export function announceReply(
  state: JobState,
  decision: Exclude<Decision, { kind: 'events' }>,
): readonly Announcement[] {
  switch (decision.kind) {
    case 'refused':
      return [tell({ kind: 'refused', refusal: decision.refusal }, 0, 'refused')];
    case 'unchanged':
      return [tell({ kind: 'still', count48: decision.counted48 }, state.seq, 'soft')];
    case 'answer':
      return [tell(answerFact(state, decision.about), state.seq)];
    default: {
      const never: never = decision;
      return never;
    }
  }
}

function answerFact(state: JobState, about: AskedFor): Fact {
  switch (about) {
    case 'again':
    case 'where':
      return { kind: 'where', standing: standingOf(state) };
    case 'how sure':
      return { kind: 'how sure', standing: standingOf(state) };
    case 'left':
      return { kind: 'left', left: engineSummary(state).left, skipped: state.skipped };
    case 'summary':
      return {
        kind: 'summary',
        summary: engineSummary(state),
        cylinders: cylinderSummaries(state),
        oneLength: oneLength(state),
      };
    default: {
      const never: never = about;
      return never;
    }
  }
}

/** What the bench says on waking from a rest: where the builder stands, and a question still open (C13). */
export function announceReturn(state: JobState): readonly Announcement[] {
  const back = tell({ kind: 'back at', standing: standingOf(state) }, state.seq, 'soft');
  const open =
    state.asked === null
      ? []
      : [tell({ kind: 'asked back', question: state.asked.question }, state.seq)];
  return [back, ...open];
}
