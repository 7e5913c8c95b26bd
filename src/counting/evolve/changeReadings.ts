import type { ValveId } from '#valvetrain';
import type { Reading } from '../readings';
import type { JobState } from '../state';
import { earlierReading } from './earlierReading';

/** The state with one reading changed; nothing happens when there is no such reading. */
export function withReading(
  state: JobState,
  id: number,
  change: (reading: Reading) => Reading,
): JobState {
  if (!state.readings.some((reading) => reading.id === id)) return state;
  return {
    ...state,
    readings: state.readings.map((reading) => (reading.id === id ? change(reading) : reading)),
  };
}

/** A reading gets its name; the open valve too when the reading is its own. */
export function named(state: JobState, id: number, valve: ValveId): JobState {
  const { open } = state;
  const renamed = withReading(state, id, (reading) => ({ ...reading, valve }));
  return open?.reading === id ? { ...renamed, open: { ...open, valve } } : renamed;
}

/** The open valve, or a reading, goes to the valve it really was. */
export function moved(state: JobState, which: number | 'open', to: ValveId): JobState {
  if (which !== 'open') return withReadingMoved(state, which, to);
  const { open } = state;
  if (open === null) return state;
  if (open.reading !== null) {
    return { ...withReadingMoved(state, open.reading, to), open: { ...open, valve: to } };
  }
  return { ...state, open: { ...open, valve: to, repeatOf: earlierReading(state, to) } };
}

function withReadingMoved(state: JobState, id: number, to: ValveId): JobState {
  const repeatOf = earlierReading(state, to, id);
  return withReading(state, id, (reading) => ({ ...reading, valve: to, repeatOf }));
}
