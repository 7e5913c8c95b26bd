import { type CrankPosition, type JobState, samePosition, setUpOf, walkOf } from '#counting';
import { type ValveId, valveKey } from '#valvetrain';
import { benchWords } from './benchWords';

/** A position of the crank in a word or two: 'cylinder 8', '8 intake', 'stop 2'. */
export function stopNamed(job: JobState, position: CrankPosition): string {
  const { cylinder, valves } = position;
  if (cylinder !== null && valves.every((valve) => valve.cylinder === cylinder))
    return benchWords.cylinder(cylinder);
  const [valve, ...others] = valves;
  if (valve !== undefined && others.length === 0) return valveKey(valve);
  const setUp = setUpOf(job);
  const walk = setUp === null ? [] : walkOf(setUp);
  return benchWords.stop(walk.findIndex((other) => samePosition(other, position)) + 1);
}

/** The valves of a position that is not one cylinder's own, to be counted there. */
export function toCount({ valves }: CrankPosition): string {
  const first = valves[0];
  if (first === undefined || valves.every(({ cylinder }) => cylinder === first.cylinder)) return '';
  const named = (kind: ValveId['valve']) =>
    valves.filter(({ valve }) => valve === kind).map(({ cylinder }) => cylinder);
  return benchWords.countThere(named('exhaust'), named('intake'));
}
