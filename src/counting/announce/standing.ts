import { turn48 } from '#valvetrain';
import { stageOf } from '../allowed';
import { type Figures, figuresForCount } from '../figures';
import { readingSaid48 } from '../readings';
import { type JobState, readingById, setUpOf } from '../state';
import { figuresForReading } from '../sure/readingFigures';
import type { Standing } from './announcement';

/** Where the builder stands in this state. */
export function standingOf(state: JobState): Standing {
  const { open } = state;
  const reading = open?.reading == null ? undefined : readingById(state, open.reading);
  const counted =
    reading?.kind === 'counted' && reading.landing !== null
      ? readingSaid48(reading)
      : open?.count48;
  return {
    stage: stageOf(state),
    valve: open?.valve ?? null,
    direction: open?.direction ?? 'on',
    count48: counted ?? turn48(0),
    figures: figuresNow(state),
    position: state.crank.at,
  };
}

/** The figures the open valve shows now; null with none open, or before it has started. */
export function figuresNow(state: JobState): Figures | null {
  const { open } = state;
  const setUp = setUpOf(state);
  if (open === null || setUp === null || open.phase === 'to start') return null;
  const reading = open.reading === null ? undefined : readingById(state, open.reading);
  if (reading !== undefined && open.phase === 'read') return figuresForReading(state, reading);
  const landed = reading?.kind === 'counted' ? (reading.landing?.past48 ?? 0) : 0;
  return figuresForCount(setUp, open.valve, open.count48 + landed);
}
