/** What the walk of the crank has to say, written out here with nothing of the app's. */

import type { Valve } from './figures';
import { capital, spelled } from './spelled';

const THERE = "Say crank's there.";

/** A place of the walk: its number, of how many, and the valves to be counted there. */
export interface PlaceSaid {
  readonly nth: number;
  readonly of: number;
  readonly valves: readonly Valve[];
}

const listOf = (cylinders: readonly number[]) => {
  const names = cylinders.map(spelled);
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
};

/** At the plain talk level. */
export const crankLines = {
  /** 'Position two of eight: cylinder eight.', or the valves to be counted there. */
  place({ nth, of, valves }: PlaceSaid): string {
    const at = `Position ${spelled(nth)} of ${spelled(of)}`;
    const cylinders = [...new Set(valves.map(({ cylinder }) => cylinder))];
    const [valve] = valves;
    if (valve !== undefined && valves.length === 1)
      return `${at}: ${valve.kind} of ${spelled(valve.cylinder)}.`;
    if (cylinders.length === 1) return `${at}: cylinder ${listOf(cylinders)}.`;
    const kinds = (['exhaust', 'intake'] as const).map((kind) => {
      const numbers = valves.filter((one) => one.kind === kind).map(({ cylinder }) => cylinder);
      return `${kind}s of ${listOf(numbers)}`;
    });
    return `${at}: ${kinds.join(', ')}.`;
  },
  handsClear: 'Hands clear?',
  firstTo: (name: string) => `Bring the crank round to ${name}, in the running direction.`,
  firstTdc: (name: string) => `Bring ${name} to firing top dead centre, in the running direction.`,
  /** So far on, crank degrees under a turn, or one whole turn. */
  turn: (deg: number) =>
    `Turn the crank ${deg === 360 ? 'one full turn' : `${spelled(deg)} degrees`} in its running direction.`,
  again: 'Go round again: two turns, in the running direction.',
  crossing: (cylinder: number) => `Watch ${spelled(cylinder)}'s lifters cross.`,
  companion: (cylinder: number) =>
    `${capital(spelled(cylinder))} is its companion: watch its lifters cross.`,
  watching: (cylinder: number) =>
    `${capital(spelled(cylinder))}'s intake opens, then shuts: its piston's next time up is the place.`,
  exhaustOpening: (cylinder: number) =>
    `Stop as ${spelled(cylinder)}'s exhaust just starts to open.`,
  intakeClosing: (cylinder: number) => `Stop when ${spelled(cylinder)}'s intake is nearly shut.`,
  there: THERE,
  loose: 'Pushrods loose? Each turns in the fingers again once its lifter has bled down.',
};

/** Several sentences as one line. */
export function line(...sentences: readonly string[]): string {
  return sentences.join(' ');
}
