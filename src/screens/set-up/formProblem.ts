import { type Problem, parseValveKey, type ValveId } from '#valvetrain';

/** Something wrong or odd about one field of the form. */
export interface FormProblem {
  /** The field it stands beside, as the form names it. */
  readonly field: string;
  readonly severity: 'refused' | 'odd';
  readonly sentence: string;
}

export function refusedField(field: string, sentence: string): FormProblem {
  return { field, severity: 'refused', sentence };
}

export function oddField(field: string, sentence: string): FormProblem {
  return { field, severity: 'odd', sentence };
}

/** Findings of the trade, put beside the form's own fields. */
export function asFormProblems(
  problems: readonly Problem[],
  fieldOf: (field: string) => string,
): readonly FormProblem[] {
  return problems.map(({ field, severity, sentence }) => ({
    field: fieldOf(field),
    severity,
    sentence,
  }));
}

/** Valves named by keys; what is no key is left out. */
export function valvesNamed(keys: readonly string[]): readonly ValveId[] {
  return keys.flatMap((key) => parseValveKey(key) ?? []);
}
