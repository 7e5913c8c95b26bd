import { type GroupMembers, startingSets, type ValveGroup, type Window } from '#valvetrain';
import {
  type Draft,
  emptyGroup,
  type GroupDraft,
  type GroupsBy,
  type MembersDraft,
  NOT_KNOWN,
} from './draft';

/** The groups of a set-up as the form shows them; `write` writes a length in mm into a field. */
export function groupsDraft(
  groups: readonly ValveGroup[],
  write: (mm: number) => string,
): Pick<Draft, 'groups' | 'groupsBy'> {
  if (groups.length === 0) {
    const group = { ...emptyGroup('all', { kind: 'all' }), lifter: NOT_KNOWN };
    return { groupsBy: 'all', groups: [group] };
  }
  return {
    groupsBy: groupsByOf(groups.map(({ members }) => members.kind)),
    groups: groups.map((group) => groupDraft(group, write)),
  };
}

function groupsByOf(kinds: readonly GroupMembers['kind'][]): GroupsBy {
  const [first, ...rest] = kinds;
  if (first === 'all' && rest.length === 0) return 'all';
  if (first === 'valve' && rest.join(' ') === 'valve') return 'valve';
  if (first === 'bank' && rest.join(' ') === 'bank') return 'bank';
  const named = kinds.slice(0, -1);
  const restIsAll = kinds.at(-1) === 'all';
  return restIsAll && named.every((kind) => kind === 'cylinders') ? 'cylinders' : 'mixed';
}

function groupDraft(group: ValveGroup, write: (mm: number) => string): GroupDraft {
  return {
    id: group.id,
    members: membersDraft(group.members),
    lifter: startingSets.find(({ window }) => window.lifter === group.window.lifter)?.id ?? '',
    window: windowDraft(group.window, write),
  };
}

/** A window as its seven fields show it. */
export function windowDraft(window: Window, write: (mm: number) => string): GroupDraft['window'] {
  return {
    travel: write(window.plungerTravelMm),
    keepTop: write(window.keepOutTopMm),
    keepBottom: write(window.keepOutBottomMm),
    usableMin: write(window.usableMinMm),
    usableMax: write(window.usableMaxMm),
    preferredMin: write(window.preferredMinMm),
    preferredMax: write(window.preferredMaxMm),
  };
}

function membersDraft(members: GroupMembers): MembersDraft {
  return members.kind === 'cylinders'
    ? { kind: 'cylinders', text: members.cylinders.join(', ') }
    : members;
}
