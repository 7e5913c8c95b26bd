/** 'refused' can't be used as it stands; 'odd' may be right and is asked back once. */
export type Severity = 'refused' | 'odd';

/** One thing wrong with a figure, as a value: nothing here is thrown. */
export interface Problem {
  /** The property the sentence is about, as the type spells it: 'pitchMm', 'firingOrder'. */
  readonly field: string;
  /** Stable name of the finding, for tests and for telling two findings on one field apart. */
  readonly code: string;
  readonly severity: Severity;
  /** What is wrong and what would be right, fit to be shown and spoken. */
  readonly sentence: string;
}

/** A problem that can't be accepted. */
export function refused(field: string, code: string, sentence: string): Problem {
  return { field, code, severity: 'refused', sentence };
}

/** A problem to be asked back: unusual, but some engine may be built so. */
export function odd(field: string, code: string, sentence: string): Problem {
  return { field, code, severity: 'odd', sentence };
}

/** Whether any of the problems forbids going on. */
export function hasRefusal(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'refused');
}
