import { type CrankPosition, type JobState, samePosition, setUpOf, walkOf } from '#counting';
import type { ValveId, ValveKind } from '#valvetrain';
import { benchWords } from './benchWords';

/** A position of the crank in a figure and a word: 8 'cylinder', 8 'intake', 2 'stop'. */
export interface StopName {
  /** '–' for a place the walk no longer has. */
  readonly figure: string;
  readonly word: 'cylinder' | ValveKind | 'stop';
}

export function stopName(job: JobState, position: CrankPosition): StopName {
  const { cylinder, valves } = position;
  if (cylinder !== null && valves.every((valve) => valve.cylinder === cylinder))
    return { figure: String(cylinder), word: 'cylinder' };
  const [valve, ...others] = valves;
  if (valve !== undefined && others.length === 0)
    return { figure: String(valve.cylinder), word: valve.valve };
  const setUp = setUpOf(job);
  const walk = setUp === null ? [] : walkOf(setUp);
  const place = walk.findIndex((other) => samePosition(other, position)) + 1;
  return { figure: place === 0 ? '–' : String(place), word: 'stop' };
}

/** The same as one name: 'cylinder 8', '8 intake', 'stop 2'. */
export function stopNamed(job: JobState, position: CrankPosition): string {
  const { figure, word } = stopName(job, position);
  return benchWords.stopNamed(figure, word);
}

/** The valves of a position that is not one cylinder's own, to be counted there. */
export function toCount({ valves }: CrankPosition): string {
  const first = valves[0];
  if (first === undefined || valves.every(({ cylinder }) => cylinder === first.cylinder)) return '';
  const named = (kind: ValveId['valve']) =>
    valves.filter(({ valve }) => valve === kind).map(({ cylinder }) => cylinder);
  return benchWords.countThere(named('exhaust'), named('intake'));
}
