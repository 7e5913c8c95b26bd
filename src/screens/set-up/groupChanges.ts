import { startingSets, type Window } from '#valvetrain';
import { type Draft, emptyGroup, type GroupDraft, type GroupsBy } from './draft';
import { lengthText, memoryKey, shortUnit } from './draftText';
import { windowDraft } from './groupsDraft';
import { startingSetOf, windowFields } from './readGroups';

/** The draft with one group changed. */
export function withGroup(draft: Draft, place: number, change: Partial<GroupDraft>): Draft {
  return {
    ...draft,
    groups: draft.groups.map((group, at) => (at === place ? { ...group, ...change } : group)),
  };
}

/**
 * Chooses a group's lifter kind. Its starting figures are put in unless the builder has typed
 * figures of their own, which stay.
 */
export function withLifter(draft: Draft, place: number, lifter: string): Draft {
  const group = draft.groups[place];
  if (group === undefined) return draft;
  const chosen = withGroup(draft, place, { lifter });
  return hasOwnFigures(draft, group) ? chosen : withStartingFigures(chosen, place);
}

/** Puts a lifter kind's starting figures in, over whatever stands there. */
export function withStartingFigures(draft: Draft, place: number): Draft {
  const set = startingSetOf(draft.groups[place]?.lifter ?? '');
  return set === undefined ? draft : withWindow(draft, place, set.window);
}

/** Puts a window's figures in, and the lifter kind they are for, over whatever stands there. */
export function withWindow(draft: Draft, place: number, window: Window): Draft {
  const unit = shortUnit(draft.units);
  const remembered = { ...draft.remembered };
  const figures = windowDraft(window, (mm) => {
    const text = lengthText(mm, unit);
    remembered[memoryKey(text, unit)] = mm;
    return text;
  });
  const lifter = startingSets.find((set) => set.window.lifter === window.lifter)?.id ?? '';
  return withGroup({ ...draft, remembered }, place, { window: figures, lifter });
}

/** Whether a group's fields show this window, figure for figure. */
export function showsWindow(draft: Draft, group: GroupDraft, window: Window): boolean {
  const unit = shortUnit(draft.units);
  const shown = windowDraft(window, (mm) => lengthText(mm, unit));
  return (
    startingSetOf(group.lifter)?.window.lifter === window.lifter &&
    windowFields.every((field) => group.window[field].trim() === shown[field])
  );
}

/** One more group of named cylinders, like the first, ahead of the rest of the valves. */
export function withNamedGroup(draft: Draft): Draft {
  const [first] = draft.groups;
  if (first === undefined) return draft;
  const numbers = Array.from({ length: draft.groups.length + 1 }, (_, at) => `named-${at + 1}`);
  const id = numbers.find((one) => draft.groups.every((group) => group.id !== one)) ?? first.id;
  const another: GroupDraft = { ...first, id, members: { kind: 'cylinders', text: '' } };
  return { ...draft, groups: [...draft.groups.slice(0, -1), another, ...draft.groups.slice(-1)] };
}

/** The draft without one of its groups. */
export function withoutGroup(draft: Draft, place: number): Draft {
  return { ...draft, groups: draft.groups.filter((_, at) => at !== place) };
}

/** Whether a group's figures are the builder's own: typed, and not those of its starting set. */
export function hasOwnFigures(draft: Draft, group: GroupDraft): boolean {
  const set = startingSetOf(group.lifter);
  const unit = shortUnit(draft.units);
  const starting = set && windowDraft(set.window, (mm) => lengthText(mm, unit));
  return windowFields.some((field) => {
    const text = group.window[field].trim();
    return text !== '' && text !== starting?.[field];
  });
}

/** Parts the valves into groups in another way; the first group's lifter and figures go to each. */
export function groupedBy(draft: Draft, groupsBy: GroupsBy): Draft {
  const first = draft.groups[0] ?? emptyGroup('all', { kind: 'all' });
  const like = (id: string, members: GroupDraft['members']): GroupDraft => ({
    ...first,
    id,
    members,
  });
  switch (groupsBy) {
    case 'all':
      return { ...draft, groupsBy, groups: [like('all', { kind: 'all' })] };
    case 'valve':
      return {
        ...draft,
        groupsBy,
        groups: [
          like('intakes', { kind: 'valve', valve: 'intake' }),
          like('exhausts', { kind: 'valve', valve: 'exhaust' }),
        ],
      };
    case 'bank':
      return {
        ...draft,
        groupsBy,
        groups: [
          like('bank-1', { kind: 'bank', bank: 0 }),
          like('bank-2', { kind: 'bank', bank: 1 }),
        ],
      };
    case 'cylinders':
      return {
        ...draft,
        groupsBy,
        groups: [like('named', { kind: 'cylinders', text: '' }), like('rest', { kind: 'all' })],
      };
    case 'mixed':
      return draft;
    default: {
      const never: never = groupsBy;
      return never;
    }
  }
}
