import type { AskedFor } from '../commands';
import type { Decision } from '../decide/decision';
import { orderTold } from '../order/orderTold';
import { isOpen } from '../questions';
import type { JobState } from '../state';
import { cylinderSummaries, engineSummary, valveLine } from '../summary';
import { distrusted } from '../sure/distrusted';
import { settlesMost } from '../sure/unproven';
import type { Announcement, Fact } from './announcement';
import { offBaseFact } from './offBaseTold';
import { repeatedOf } from './repeated';
import { standingOf } from './standing';
import { tell } from './tell';

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

/**
 * What the bench says on waking from a rest: where the builder stands, and a question still open
 * (C13, C5). `at` is the wall clock, ms; without it a question is taken to be open still.
 */
export function announceReturn(state: JobState, at?: number): readonly Announcement[] {
  const back = tell({ kind: 'back at', standing: standingOf(state) }, state.seq, 'soft');
  const { asked } = state;
  if (asked === null || (at !== undefined && !isOpen(asked, at))) return [back];
  return [back, tell({ kind: 'asked back', question: asked.question }, state.seq)];
}

function answerFact(state: JobState, about: AskedFor): Fact {
  switch (about) {
    case 'again':
    case 'where':
      return { kind: 'where', standing: standingOf(state) };
    case 'how sure':
      return howSure(state);
    case 'left':
      return { kind: 'left', left: engineSummary(state).left, skipped: state.skipped };
    case 'summary':
      return {
        kind: 'summary',
        summary: engineSummary(state),
        cylinders: cylinderSummaries(state),
        order: orderTold(state),
        distrusted: distrusted(state),
        ...offBaseFact(state),
      };
    default: {
      const never: never = about;
      return never;
    }
  }
}

/** What stands for the valve read last here, or between valves the round so far. */
function howSure(state: JobState): Fact {
  const standing = standingOf(state);
  const { valve, stage } = standing;
  const line = stage === 'read' && valve !== null ? valveLine(state, valve) : null;
  return {
    kind: 'how sure',
    standing: line?.figures == null ? standing : { ...standing, figures: line.figures },
    repeated: line && repeatedOf(line),
    summary: engineSummary(state),
    settlesMost: settlesMost(cylinderSummaries(state).flatMap(({ lines }) => lines)),
  };
}
