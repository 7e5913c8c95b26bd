import type { ValveId } from '#valvetrain';
import { finalLineOf } from '../order/finalCheck';
import type { JobState } from '../state';
import type { Foretold } from './announcement';

/** What a reading of a final check is held against; nothing in other rounds, or where nothing was predicted. */
export function foretoldOf(state: JobState, valve: ValveId): { readonly foretold?: Foretold } {
  const line = finalLineOf(state, valve);
  if (line?.predicted == null || line.agreement === null) return {};
  return {
    foretold: { preloadMm: line.predicted.preloadMm, agreement: line.agreement },
  };
}
