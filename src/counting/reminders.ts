import type { ValveId } from '#valvetrain';
import { sameValve } from '#valvetrain';
import type { JobState } from './state';
import { valvesLeft } from './walk';

/** Something the bench should not let be forgotten. */
export type Reminder =
  | { readonly kind: 'question open' }
  | { readonly kind: 'count doubtful' }
  | { readonly kind: 'lifters pressed in' }
  | { readonly kind: 'skipped valves'; readonly valves: readonly ValveId[] }
  | { readonly kind: 'unnamed readings'; readonly count: number }
  | { readonly kind: 'not torqued'; readonly count: number };

/** What stands open now, most pressing first. */
export function reminders(state: JobState): readonly Reminder[] {
  const found: Reminder[] = [];
  if (state.asked !== null) found.push({ kind: 'question open' });
  if (state.open?.doubtful) found.push({ kind: 'count doubtful' });
  if (state.crank.loaded) found.push({ kind: 'lifters pressed in' });
  const left = valvesLeft(state);
  const skipped = state.skipped.filter((id) => left.some((other) => sameValve(other, id)));
  if (skipped.length > 0) found.push({ kind: 'skipped valves', valves: skipped });
  const unnamed = state.readings.filter(({ valve }) => valve === null).length;
  if (unnamed > 0) found.push({ kind: 'unnamed readings', count: unnamed });
  const loose = state.readings.filter(({ torqued }) => !torqued).length;
  if (loose > 0 && left.length === 0) found.push({ kind: 'not torqued', count: loose });
  return found;
}
