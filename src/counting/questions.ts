import type { Question } from './events';
import type { JobState } from './state';

/** How long a question asked back stays open, ms of the commands' clock (C5). */
export const QUESTION_OPEN_MS = 10_000;

/** The question still open at this time; null when none is, or it has lapsed. */
export function openQuestion(state: JobState, at: number): Question | null {
  if (state.asked === null) return null;
  return at - state.asked.at <= QUESTION_OPEN_MS ? state.asked.question : null;
}
