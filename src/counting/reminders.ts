import { sameValve, type ValveId } from '#valvetrain';
import { isOpen } from './questions';
import type { JobState } from './state';
import { cylinderSummaries } from './summary';
import { valvesLeft } from './walk';
import { offBaseNow } from './walk/offBase';

/** Something the bench should not let be forgotten. */
export type Reminder =
  | { readonly kind: 'question open' }
  | { readonly kind: 'count doubtful' }
  | { readonly kind: 'lifters pressed in' }
  | { readonly kind: 'skipped valves'; readonly valves: readonly ValveId[] }
  /** Counted with the valve on a ramp, or too near one, by the timing as it is known now. */
  | { readonly kind: 'off base circle'; readonly valves: readonly ValveId[] }
  | { readonly kind: 'unnamed readings'; readonly count: number }
  | { readonly kind: 'not torqued'; readonly count: number };

/**
 * What stands open now, most pressing first. `at` is the wall clock, ms; without it a question is
 * taken to be open still.
 */
export function reminders(state: JobState, at?: number): readonly Reminder[] {
  const { asked } = state;
  const found: Reminder[] = [];
  if (asked !== null && (at === undefined || isOpen(asked, at)))
    found.push({ kind: 'question open' });
  if (state.open?.doubtful) found.push({ kind: 'count doubtful' });
  if (state.crank.loaded) found.push({ kind: 'lifters pressed in' });
  const left = valvesLeft(state);
  const skipped = state.skipped.filter((id) => left.some((other) => sameValve(other, id)));
  if (skipped.length > 0) found.push({ kind: 'skipped valves', valves: skipped });
  const off = offBaseNow(state).map(({ valve }) => valve);
  if (off.length > 0) found.push({ kind: 'off base circle', valves: off });
  const unnamed = state.readings.filter(({ valve }) => valve === null).length;
  if (unnamed > 0) found.push({ kind: 'unnamed readings', count: unnamed });
  const loose = left.length === 0 ? notTorqued(state) : 0;
  if (loose > 0) found.push({ kind: 'not torqued', count: loose });
  return found;
}

/** Valves of this round whose standing reading has not been torqued since. */
function notTorqued(state: JobState): number {
  return cylinderSummaries(state)
    .flatMap(({ lines }) => lines)
    .filter(({ reading }) => reading !== null && !reading.torqued).length;
}
