import type { Fact } from '#counting';
import type { ValveId, ValveKind } from '#valvetrain';
import { cardinal } from '../numbers';
import { commas, listed, valveName, valveOf } from './pieces';

/** A fact about a position of the walk. */
export type Place = Extract<Fact, { kind: 'hands clear?' | 'turn crank' }>;

/** A position in a word or two: its cylinder, its only valve, or its place in the walk. */
export function place(fact: Place): string {
  const { position, index } = fact;
  if (ofOneCylinder(fact)) return cardinal(position.cylinder ?? index);
  const [valve, ...others] = valvesOf(fact);
  return valve !== undefined && others.length === 0 ? valveName(valve) : `stop ${cardinal(index)}`;
}

/** 'position two of eight: cylinder eight', or the valves to be counted there. */
export function fullPlace(fact: Place): string {
  const { position, index, of } = fact;
  const at = `position ${cardinal(index)} of ${cardinal(of)}`;
  if (ofOneCylinder(fact)) return `${at}: cylinder ${cardinal(position.cylinder ?? index)}`;
  const valves = valvesOf(fact);
  return valves.length === 0 ? at : `${at}: ${valvesWords(valves)}`;
}

/** 'exhaust of one', 'exhausts of one and three, intakes of one and two'. */
function valvesWords(valves: readonly ValveId[]): string {
  const [valve] = valves;
  if (valve !== undefined && valves.length === 1) return valveOf(valve);
  const kind = (of: ValveKind) => {
    const cylinders = valves.filter((id) => id.valve === of).map(({ cylinder }) => cylinder);
    const names = cylinders.map((cylinder) => cardinal(cylinder));
    return names.length === 0 ? '' : `${of}${names.length === 1 ? '' : 's'} of ${listed(names)}`;
  };
  return commas(kind('exhaust'), kind('intake'));
}

/** Both valves of the cylinder at its firing TDC, and no others: the cylinder's name says it all. */
function ofOneCylinder({ position }: Place): boolean {
  const { cylinder, valves } = position;
  return cylinder !== null && valves.every((valve) => valve.cylinder === cylinder);
}

function valvesOf({ count, position }: Place): readonly ValveId[] {
  return count ?? position.valves;
}
