import {
  type Decision,
  figuresForReading,
  type JobEvent,
  type JobState,
  readingCount48,
  readingResolution48,
  stageOf,
} from '#counting';
import { type ValveId, valveKey } from '#valvetrain';
import { given, type Job, opened, ready, when } from '../given';
import { eightCylinders, THOU } from '../samples';
import type { Outcome, Row, Standing } from './row';

/** The job after a row's steps, with what the steps under `when` came to. */
export function played(row: Row): Job {
  const setUp = { ...eightCylinders, ...row.job?.setUp };
  const job = row.from === 'opened' ? opened(setUp) : ready(setUp);
  return when(given(job, row.given), ...row.when);
}

/** What the steps came to, in a table's terms. */
export function outcomesOf(decisions: readonly Decision[]): readonly Outcome[] {
  return decisions.flatMap((decision): readonly Outcome[] => {
    switch (decision.kind) {
      case 'events':
        return decision.events.map(outcomeOf);
      case 'refused':
        return [{ refused: decision.refusal.code }];
      case 'unchanged':
        return [{ still: decision.counted48 / 12 }];
      case 'answer':
        return [{ event: `answer: ${decision.about}` }];
      default: {
        const never: never = decision;
        return never;
      }
    }
  });
}

/** Only the facts of the present standing that a row asks about. */
export function standingLike(state: JobState, wanted: Standing): Standing {
  const standing = standingOf(state);
  return Object.fromEntries(
    Object.entries(standing).filter(([name]) => Object.hasOwn(wanted, name)),
  );
}

function outcomeOf(event: JobEvent): Outcome {
  switch (event.type) {
    case 'counted':
      return { counted: event.to48 / 12, how: event.how };
    case 'askedBack':
      return event.question.about === 'count'
        ? { askedBack: event.question.options.map((to48) => to48 / 12), why: event.question.why }
        : { asked: event.question.about };
    case 'landed':
      return { landed: event.answer.told, past: event.answer.past48 / 12 };
    default:
      return { event: event.type };
  }
}

function standingOf(state: JobState): Standing {
  const last = state.readings.at(-1);
  const valve: ValveId | null | undefined = state.open?.valve ?? last?.valve;
  const preload = last && figuresForReading(state, last).preloadMm;
  return {
    counted: (state.open?.count48 ?? 0) / 12,
    stage: stageOf(state),
    readings: state.readings.length,
    asking: state.asked !== null,
    ...(valve == null ? {} : { valve: valveKey(valve) }),
    ...(last?.kind === 'seated loose' ? { read: 'loose' } : {}),
    ...(last?.kind === 'counted'
      ? { read: readingCount48(last) / 12, resolves: readingResolution48(last) / 12 }
      : {}),
    ...(preload == null ? {} : { thou: Math.round(preload / THOU) }),
  };
}
