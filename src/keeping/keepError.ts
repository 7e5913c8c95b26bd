/**
 * Why a write did not hold: the disk is full, another window wrote first, a newer version of the app
 * has the store, or anything else.
 */
export type KeepFailure = 'full' | 'conflict' | 'superseded' | 'failed';

/** What this room rejects with. `cause` is the browser's own error, where there was one. */
export class KeepError extends Error {
  override readonly name = 'KeepError';
  constructor(
    readonly failure: KeepFailure,
    options?: ErrorOptions,
  ) {
    super(`The device did not keep or give up the log: ${failure}.`, options);
  }
}

/** A storage error as a KeepError, read by the names IndexedDB gives its errors. */
export function keepErrorFrom(error: unknown): KeepError {
  if (error instanceof KeepError) return error;
  const names = errorNames(error);
  if (names.includes('QuotaExceededError')) return new KeepError('full', { cause: error });
  if (names.includes('VersionError')) return new KeepError('superseded', { cause: error });
  if (names.includes('ConstraintError')) return new KeepError('conflict', { cause: error });
  return new KeepError('failed', { cause: error });
}

/** The connection was lost, not the write refused: worth opening again, once. */
export function connectionLost(error: unknown): boolean {
  const names = errorNames(error);
  const refused = ['QuotaExceededError', 'ConstraintError', 'KeepError'];
  const lost = ['DatabaseClosedError', 'InvalidStateError', 'UnknownError', 'AbortError'];
  return !names.some((name) => refused.includes(name)) && names.some((name) => lost.includes(name));
}

/** The error's name with those it wraps: a full disk shows only inside the abort it caused. */
function errorNames(error: unknown, depth = 0): readonly string[] {
  if (typeof error !== 'object' || error === null || depth > 4) return [];
  const own = 'name' in error && typeof error.name === 'string' ? [error.name] : [];
  const inner = 'inner' in error ? errorNames(error.inner, depth + 1) : [];
  const cause = 'cause' in error ? errorNames(error.cause, depth + 1) : [];
  const failures =
    'failures' in error && Array.isArray(error.failures)
      ? error.failures.flatMap((failure) => errorNames(failure, depth + 1))
      : [];
  return [...own, ...inner, ...cause, ...failures];
}
