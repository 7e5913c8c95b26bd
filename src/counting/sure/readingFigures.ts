import type { Figures } from '../figures';
import type { Reading } from '../readings';
import { type JobState, setUpAt } from '../state';
import { meanOf } from './meanOf';

/** Figures for one reading on the set-up it was taken on, or the one later applied to it. */
export function figuresForReading(
  state: JobState,
  reading: Reading,
  onSetUp = reading.setUp,
): Figures {
  const setUp = setUpAt(state, onSetUp);
  return setUp === null ? NOTHING : meanOf(setUp, reading).figures;
}

const NOTHING: Figures = {
  preloadMm: null,
  verdict: null,
  window: null,
  pastTravel: false,
  sure: null,
};
