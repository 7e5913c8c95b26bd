import { CHECKING_PER_TURN_MM } from '#valvetrain';
import type { Units } from '#words';
import { type Draft, emptyGroup, type GroupDraft, type GroupsBy, type WindowDraft } from './draft';
import { windowDraft } from './draftFrom';
import { lengthText, longUnit, memoryKey, readLength, shortUnit, type TextUnit } from './draftText';
import { startingSetOf, windowFields } from './readGroups';

/** The draft with every length written in other units; a text that is no length stays as typed. */
export function inUnits(draft: Draft, units: Units): Draft {
  if (draft.units === units) return draft;
  const remembered: Record<string, number> = {};
  const rewrite = (text: string, from: TextUnit, to: TextUnit): string => {
    const read = readLength(text, from, draft.remembered);
    if (read.kind !== 'value') return text;
    const shown = lengthText(read.value, to);
    remembered[memoryKey(shown, to)] = read.value;
    return shown;
  };
  const short = (text: string) => rewrite(text, shortUnit(draft.units), shortUnit(units));
  const long = (text: string) => rewrite(text, longUnit(draft.units), longUnit(units));
  const [a, b, c, d] = draft.ends;
  return {
    ...draft,
    measured: short(draft.measured),
    pushrod: long(draft.pushrod),
    closed: long(draft.closed),
    perTurn: short(draft.perTurn),
    ends: [long(a), long(b), long(c), long(d)],
    groups: draft.groups.map((group) => ({ ...group, window: eachField(group.window, short) })),
    remembered,
    units,
  };
}

/** The draft with another thing counted; a checking pushrod is called in whole turns. */
export function withCounts(draft: Draft, counts: Draft['counts']): Draft {
  if (draft.counts === counts) return draft;
  if (counts === 'fastener') return { ...draft, counts, calling: 'quarters' };
  const usual = lengthText(CHECKING_PER_TURN_MM, shortUnit(draft.units));
  const perTurn = draft.perTurn.trim() === '' ? usual : draft.perTurn;
  return { ...draft, counts, rockers: 'bolt-down', calling: 'turns', perTurn };
}

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
  if (set === undefined) return draft;
  const unit = shortUnit(draft.units);
  const remembered = { ...draft.remembered };
  const window = windowDraft(set.window, (mm) => {
    const text = lengthText(mm, unit);
    remembered[memoryKey(text, unit)] = mm;
    return text;
  });
  return withGroup({ ...draft, remembered }, place, { window });
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

function eachField(window: WindowDraft, change: (text: string) => string): WindowDraft {
  return {
    travel: change(window.travel),
    keepTop: change(window.keepTop),
    keepBottom: change(window.keepBottom),
    usableMin: change(window.usableMin),
    usableMax: change(window.usableMax),
    preferredMin: change(window.preferredMin),
    preferredMax: change(window.preferredMax),
  };
}
