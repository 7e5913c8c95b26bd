import { turn48 } from '#valvetrain';
import type { JobEvent } from '../events';
import { saidCount } from '../figures';
import { type JobState, readingById } from '../state';
import { cylinderSummaries, readingsOf, valveLine } from '../summary';
import { figuresForReading } from '../sure/readingFigures';
import { settlesMost, unprovenValves } from '../sure/unproven';
import type { Announcement, Cue } from './announcement';
import { countCue } from './cues';
import { foretoldOf } from './foretold';
import { checkingOf } from './prompt';
import { repeatedOf } from './repeated';
import { figuresNow } from './standing';
import { tell } from './tell';

/** Zero, or the seat a count off starts from. */
export function started(after: JobState, seq: number): readonly Announcement[] {
  return [
    tell(
      { kind: 'start', direction: after.open?.direction ?? 'on', ...checkingOf(after) },
      seq,
      'zero',
    ),
  ];
}

/** A count, said when the builder pauses; past the plunger's travel, at once. */
export function counted(
  before: JobState,
  { seq, to48 }: JobEvent & { type: 'counted' },
  after: JobState,
): readonly Announcement[] {
  const figures = figuresNow(after);
  if (figures === null) return [];
  const was = figuresNow(before);
  const verdictChanged = was?.verdict !== figures.verdict || before.open?.count48 === 0;
  return [
    tell(
      { kind: 'counted', count48: to48, figures, verdictChanged },
      seq,
      countCue(was, figures),
      figures.pastTravel ? 'at once' : 'at a pause',
    ),
  ];
}

/** The count is over: 'how far?', or the result where that is known or not asked. */
export function ended(after: JobState, seq: number): readonly Announcement[] {
  const { open } = after;
  if (open === null) return [];
  return open.phase === 'landing'
    ? [tell({ kind: 'how far?', count48: open.count48, ...checkingOf(after) }, seq, 'seat')]
    : result(after, seq, 'seat');
}

/** 'How far?' answered; a tap may be followed by more, so its result waits. */
export function landed(
  { seq, answer }: JobEvent & { type: 'landed' },
  after: JobState,
): readonly Announcement[] {
  if (answer.told !== 'tapped') return result(after, seq, 'landing');
  const count48 = after.open?.count48 ?? turn48(0);
  const fact = { kind: 'tapped', count48, past48: answer.past48 } as const;
  return [tell(fact, seq, 'landing', 'at a pause')];
}

/** So many valves that can't be told are each said; one more is said with what settles most, then a tone. */
export const SAID_UNPROVEN = 3;

/** The result line of the open valve's reading; none while it has no reading. */
export function result(state: JobState, seq: number, cue: Cue | null): readonly Announcement[] {
  const id = state.open?.reading ?? null;
  const reading = id === null ? undefined : readingById(state, id);
  if (reading === undefined) return [];
  const { valve, round } = reading;
  const repeated = valve === null ? null : repeatedOf(valveLine(state, valve, round));
  const isFirst = state.readings.length === 1 && reading.kind === 'counted';
  const figures = figuresForReading(state, reading);
  const judged = cylinderSummaries(state).flatMap(({ lines }) => lines);
  const stands = repeated?.figures ?? figures;
  const unproven = stands.sure?.against ? Math.max(1, unprovenValves(judged).length) : 0;
  return [
    tell(
      {
        kind: 'read',
        valve,
        count48: saidCount(reading),
        landing: reading.kind === 'counted' ? reading.landing : null,
        figures,
        repeat: valve === null ? 1 : readingsOf(state, valve, round).length,
        unproven,
        settlesMost: unproven === 0 ? null : settlesMost(judged),
        ...(repeated === null ? {} : { repeated }),
        ...(valve === null ? {} : foretoldOf(state, valve)),
        ...(isFirst && figures.preloadMm !== null ? { bias: true } : {}),
      },
      seq,
      unproven > SAID_UNPROVEN ? 'unproven' : cue,
    ),
  ];
}
