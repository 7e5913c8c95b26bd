import { cylinderNumbers, type Engine } from './engine';
import { listFigure } from './figures';
import { type Problem, refused } from './problems';
import { type ValveId, type ValveKind, valvesOf } from './valves';
import type { Window } from './windows';

/** Which valves a group takes in. A bank is an index into the engine's banks, 0 first. */
export type GroupMembers =
  | { readonly kind: 'all' }
  | { readonly kind: 'valve'; readonly valve: ValveKind }
  | { readonly kind: 'bank'; readonly bank: number }
  | { readonly kind: 'cylinders'; readonly cylinders: readonly number[] };

/** Valves whose lifters share a window. */
export interface ValveGroup {
  readonly id: string;
  readonly name: string;
  readonly window: Window;
  readonly members: GroupMembers;
}

/** Most specific first. */
const precedence: readonly GroupMembers['kind'][] = ['cylinders', 'bank', 'valve', 'all'];

/**
 * The group a valve belongs to, undefined if none takes it in. Where several do, the most specific
 * wins: named cylinders, then a bank, then intakes or exhausts, then all; of two alike the first
 * listed, which `groupProblems` refuses beforehand.
 */
export function groupOf(
  id: ValveId,
  groups: readonly ValveGroup[],
  engine: Pick<Engine, 'banks'>,
): ValveGroup | undefined {
  return precedence
    .map((kind) =>
      groups.find((group) => group.members.kind === kind && takesIn(group.members, id, engine)),
    )
    .find((group) => group !== undefined);
}

/**
 * What is wrong with a set of groups on an engine: a valve in none, a valve claimed by two equally
 * specific groups, a bank or cylinder the engine hasn't got, an id used twice. The windows
 * themselves are `windowProblems`' matter.
 */
export function groupProblems(groups: readonly ValveGroup[], engine: Engine): readonly Problem[] {
  return [
    ...sameIdProblems(groups),
    ...groups.flatMap((group) => memberProblems(group, engine)),
    ...claimProblems(groups, engine),
  ];
}

function takesIn(members: GroupMembers, id: ValveId, engine: Pick<Engine, 'banks'>): boolean {
  switch (members.kind) {
    case 'all':
      return true;
    case 'valve':
      return members.valve === id.valve;
    case 'bank':
      return engine.banks[members.bank]?.includes(id.cylinder) ?? false;
    case 'cylinders':
      return members.cylinders.includes(id.cylinder);
    default:
      return unknownMembers(members);
  }
}

function sameIdProblems(groups: readonly ValveGroup[]): readonly Problem[] {
  return groups
    .filter((group, place) => groups.findIndex((other) => other.id === group.id) < place)
    .map((group) =>
      refused('groups', 'same id', `Two valve groups are marked ${group.id}: each needs its own.`),
    );
}

function memberProblems(group: ValveGroup, engine: Engine): readonly Problem[] {
  const { members } = group;
  if (members.kind === 'bank' && engine.banks[members.bank] === undefined) {
    return [
      refused(
        'groups',
        'no such bank',
        `The group ${group.name} is for a bank this engine hasn’t got: it has ${engine.banks.length}.`,
      ),
    ];
  }
  if (members.kind !== 'cylinders') return [];
  const all = cylinderNumbers(engine.cylinders);
  const strangers = members.cylinders.filter((cylinder) => !all.includes(cylinder));
  if (strangers.length === 0) return [];
  return [
    refused(
      'groups',
      'no such cylinder',
      `The group ${group.name} names cylinder ${listFigure(strangers)}, but this engine’s cylinders are 1 to ${engine.cylinders}.`,
    ),
  ];
}

function claimProblems(groups: readonly ValveGroup[], engine: Engine): readonly Problem[] {
  const valves = valvesOf({ cylinders: cylinderNumbers(engine.cylinders).length });
  const orphan = valves.find((id) => groupOf(id, groups, engine) === undefined);
  const found: Problem[] = [];
  if (orphan !== undefined) {
    found.push(
      refused(
        'groups',
        'valve in no group',
        `The ${orphan.valve} of cylinder ${orphan.cylinder} is in no valve group: put it in one, or add a group for all valves.`,
      ),
    );
  }
  for (const id of valves) {
    const winner = groupOf(id, groups, engine);
    const rivals = groups.filter(
      ({ members }) => members.kind === winner?.members.kind && takesIn(members, id, engine),
    );
    if (rivals.length > 1) {
      found.push(
        refused(
          'groups',
          'valve in two groups',
          `The ${id.valve} of cylinder ${id.cylinder} is in ${listFigure(rivals.map((rival) => rival.name))} alike: leave it in one.`,
        ),
      );
      break;
    }
  }
  return found;
}

function unknownMembers(members: never): never {
  throw new RangeError(`Unknown members: ${JSON.stringify(members)}.`);
}
