import { stageOf } from '../allowed';
import type { JobEvent } from '../events';
import { type JobState, readingById } from '../state';
import { valveLine } from '../summary';
import { figuresForReading } from '../sure/readingFigures';
import type { Announcement } from './announcement';
import { counted, ended, landed, started } from './count';
import { foretoldOf } from './foretold';
import { left } from './leaving';
import { movedOffBase, newlyOffBase } from './offBaseTold';
import { promptFor } from './prompt';
import { repeatedOf } from './repeated';
import { standingOf } from './standing';
import { takenBack } from './takenBack';
import { tell } from './tell';

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
  switch (event.type) {
    case 'jobOpened':
      return [tell({ kind: 'job opened', name: event.setUp.name }, seq), ...prompt()];
    case 'cautionsHeard':
    case 'handsClear':
    case 'positionReached':
    case 'overshot':
      return prompt();
    case 'bledDown':
      return [
        tell({ kind: 'pushrods loose' }, seq, 'soft'),
        ...(stageOf(before) === 'pushrods loose' ? prompt() : []),
      ];
    case 'setupChanged': {
      const { appliesTo } = event;
      const readings = after.readings.length;
      return [
        tell({ kind: 'set-up changed', appliesTo, readings, ...newlyOffBase(before, after) }, seq),
      ];
    }
    case 'roundStarted':
      return [
        ...left(before, event, after),
        tell({ kind: 'round started', purpose: event.purpose }, seq),
        ...prompt(),
      ];
    case 'pushrodFitted':
      return [fitted(event)];
    case 'dialRead':
      return dialRead(event, after);
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
    case 'restarted': {
      const direction = after.open?.direction ?? 'on';
      return [tell({ kind: 'restarted', atZero: event.atZero, direction }, seq, 'back')];
    }
    case 'readingMoved':
    case 'valveNamed':
      return moved(before, event, after);
    case 'torqued': {
      const valve = readingById(after, event.reading)?.valve ?? null;
      return [tell({ kind: 'torqued', valve }, seq, 'soft')];
    }
    case 'valveChosen':
    case 'repeatStarted':
    case 'valveLeft':
      return [...left(before, event, after), ...prompt()];
    case 'held':
      return [tell({ kind: 'held', standing: standingOf(before) }, seq, 'soft')];
    case 'resumed':
      return [tell({ kind: 'back at', standing: standingOf(after) }, seq, 'soft')];
    case 'takenBack':
      return [takenBack(before, event, after)];
    case 'noted':
      return [];
    case 'jobDiscarded':
      return [tell({ kind: 'job discarded' }, seq)];
    case 'jobRestored':
      return [tell({ kind: 'job restored' }, seq)];
    default: {
      const never: never = event;
      return never;
    }
  }

  function prompt(): readonly Announcement[] {
    const fact = promptFor(after, before);
    return fact === null ? [] : [tell(fact, seq)];
  }
}

function fitted({ seq, length, valves }: JobEvent & { type: 'pushrodFitted' }): Announcement {
  const some = valves === undefined ? {} : { valves: valves.length };
  return tell({ kind: 'pushrod fitted', lengthMm: length?.mm ?? null, ...some }, seq);
}

function dialRead(
  { seq, valve }: JobEvent & { type: 'dialRead' },
  after: JobState,
): readonly Announcement[] {
  const reading = readingById(after, seq);
  if (reading === undefined) return [];
  const figures = figuresForReading(after, reading);
  const repeated = repeatedOf(valveLine(after, valve));
  const foretold = foretoldOf(after, valve);
  return [tell({ kind: 'dial read', valve, figures, repeated, ...foretold }, seq, 'seat')];
}

function moved(
  before: JobState,
  event: JobEvent & { type: 'readingMoved' | 'valveNamed' },
  after: JobState,
): readonly Announcement[] {
  const from =
    event.reading === 'open' ? before.open?.valve : readingById(before, event.reading)?.valve;
  const to = event.type === 'valveNamed' ? event.valve : event.to;
  const placed = movedOffBase(after, event.reading);
  return [tell({ kind: 'moved', from: from ?? null, to, ...placed }, event.seq, 'soft')];
}
