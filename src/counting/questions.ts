import type { Question } from './events';
import type { Asked, JobState } from './state';

/** How long a question asked back stays open, ms of the commands' clock (C5). */
export const QUESTION_OPEN_MS = 10_000;

/** Whether a question has not lapsed at this time, ms since 1970. */
export function isOpen(asked: Asked, at: number): boolean {
  return at - asked.at <= QUESTION_OPEN_MS;
}

/** The question still open at this time; null when none is, or it has lapsed. */
export function openQuestion({ asked }: JobState, at: number): Question | null {
  return asked !== null && isOpen(asked, at) ? asked.question : null;
}
