import { sameValve, type ValveId } from '#valvetrain';
import { type JobState, readingById } from '../state';
import { offBase, offBaseNow, openOffBase } from '../walk/offBase';

/** Valves whose reading was taken off base circle; nothing while there are none. */
export function offBaseFact(state: JobState): { readonly offBase?: readonly ValveId[] } {
  return valvesIn(offBaseNow(state).map(({ valve }) => valve));
}

/** Those that were well enough placed by the set-up before. Each is told once. */
export function newlyOffBase(
  before: JobState,
  after: JobState,
): { readonly offBase?: readonly ValveId[] } {
  const was = offBaseNow(before).map(({ valve }) => valve);
  const now = offBaseNow(after).map(({ valve }) => valve);
  return valvesIn(now.filter((valve) => !was.some((other) => sameValve(other, valve))));
}

/** How near its ramp a valve was counted that only now has this name; nothing where that is well. */
export function movedOffBase(
  after: JobState,
  which: number | 'open',
): { readonly offBaseDeg?: number } {
  const reading = which === 'open' ? after.open?.reading : which;
  const counted = reading == null ? undefined : readingById(after, reading);
  const found = counted === undefined ? openOffBase(after) : offBase(after, counted);
  return found === null ? {} : { offBaseDeg: found.marginDeg };
}

function valvesIn(valves: readonly ValveId[]): { readonly offBase?: readonly ValveId[] } {
  return valves.length === 0 ? {} : { offBase: valves };
}
