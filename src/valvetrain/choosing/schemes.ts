import type { Engine } from '../engine';
import type { ValveKind } from '../valves';
import type { ChoosableValve } from './valve';

/** How lengths may be dealt out to the valves. */
export type Scheme =
  | 'one for all'
  | 'by valve'
  | 'by bank'
  | 'by bank and valve'
  | 'fewest lengths';

/** The schemes with fixed groups, plainest first. */
export const fixedSchemes: readonly FixedScheme[] = [
  'one for all',
  'by valve',
  'by bank',
  'by bank and valve',
];

export type FixedScheme = Exclude<Scheme, 'fewest lengths'>;

/** What valves may be told apart by: their kind, their bank. */
export type Factor = 'valve' | 'bank';

/** A group of valves that get one length. Undefined: of any kind, of any bank. */
export interface GroupLabel {
  readonly valve?: ValveKind;
  readonly bank?: number;
}

export interface FixedGroup {
  readonly label: GroupLabel;
  readonly valves: readonly ChoosableValve[];
}

/** The factors a scheme tells valves apart by. */
export function factorsOf(scheme: FixedScheme): readonly Factor[] {
  switch (scheme) {
    case 'one for all':
      return [];
    case 'by valve':
      return ['valve'];
    case 'by bank':
      return ['bank'];
    case 'by bank and valve':
      return ['bank', 'valve'];
    default:
      return unknownScheme(scheme);
  }
}

/** The valves in groups told apart by the factors, in the order first met. */
export function grouped(
  valves: readonly ChoosableValve[],
  factors: readonly Factor[],
  engine: Pick<Engine, 'banks'>,
): readonly FixedGroup[] {
  const groups = new Map<string, { label: GroupLabel; valves: ChoosableValve[] }>();
  for (const valve of valves) {
    const label = labelOf(valve, factors, engine);
    const key = `${label.bank ?? ''} ${label.valve ?? ''}`;
    const group = groups.get(key) ?? { label, valves: [] };
    group.valves.push(valve);
    groups.set(key, group);
  }
  return [...groups.values()];
}

function labelOf(
  { id }: ChoosableValve,
  factors: readonly Factor[],
  engine: Pick<Engine, 'banks'>,
): GroupLabel {
  return {
    ...(factors.includes('valve') ? { valve: id.valve } : {}),
    ...(factors.includes('bank')
      ? { bank: engine.banks.findIndex((cylinders) => cylinders.includes(id.cylinder)) }
      : {}),
  };
}

function unknownScheme(scheme: never): never {
  throw new RangeError(`Unknown scheme: ${String(scheme)}.`);
}
