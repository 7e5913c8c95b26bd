import {
  type Engine,
  type GroupMembers,
  groupProblems,
  type OutOfScopeKind,
  outOfScope,
  outOfScopeKinds,
  type StartingSet,
  startingSets,
  type ValveGroup,
  type Window,
  windowProblems,
} from '#valvetrain';
import {
  type Draft,
  type GroupDraft,
  type MembersDraft,
  NOT_KNOWN,
  type WindowDraft,
} from './draft';
import { numbersIn, readLength, shortUnit } from './draftText';
import { asFormProblems, type FormProblem, refusedField } from './formProblem';
import { notANumber } from './readAdjuster';
import { setUpWords as words } from './setUpWords';

export interface GroupsRead {
  readonly groups: readonly ValveGroup[];
  readonly problems: readonly FormProblem[];
}

/** Window figures by the field they are typed in. */
const figureOf: Readonly<Record<keyof WindowDraft, Exclude<keyof Window, 'lifter'>>> = {
  travel: 'plungerTravelMm',
  keepTop: 'keepOutTopMm',
  keepBottom: 'keepOutBottomMm',
  usableMin: 'usableMinMm',
  usableMax: 'usableMaxMm',
  preferredMin: 'preferredMinMm',
  preferredMax: 'preferredMaxMm',
};

export const windowFields: readonly (keyof WindowDraft)[] = [
  'travel',
  'keepTop',
  'keepBottom',
  'usableMin',
  'usableMax',
  'preferredMin',
  'preferredMax',
];

/** The valve groups of a draft: none where every lifter is left out. */
export function readGroups(draft: Draft, engine: Engine | null): GroupsRead {
  const known = draft.groups.filter(({ lifter }) => lifter !== NOT_KNOWN);
  if (known.length === 0) return { groups: [], problems: [] };
  const reads = draft.groups.map((group, place) => readGroup(draft, group, place));
  const groups = reads.flatMap(({ group }) => group ?? []);
  const problems = reads.flatMap((read) => read.problems);
  if (engine === null || groups.length < draft.groups.length) return { groups, problems };
  return {
    groups,
    problems: [...problems, ...asFormProblems(groupProblems(groups, engine), () => 'groups')],
  };
}

/** The starting set of a lifter kind, where one is chosen. */
export function startingSetOf(lifter: string): StartingSet | undefined {
  return startingSets.find(({ id }) => id === lifter);
}

export function outOfScopeLifter(lifter: string): OutOfScopeKind | undefined {
  return outOfScopeKinds.find((kind) => kind === lifter);
}

/** What a window comes to as typed, for drawing; NaN where a figure is not there yet. */
export function windowOf(draft: Draft, group: GroupDraft): Window | null {
  const set = startingSetOf(group.lifter);
  if (set === undefined) return null;
  const figure = (field: keyof WindowDraft) => {
    const read = readLength(group.window[field], shortUnit(draft.units), draft.remembered);
    return read.kind === 'value' ? read.value : Number.NaN;
  };
  return {
    lifter: set.window.lifter,
    plungerTravelMm: figure('travel'),
    keepOutTopMm: figure('keepTop'),
    keepOutBottomMm: figure('keepBottom'),
    usableMinMm: figure('usableMin'),
    usableMaxMm: figure('usableMax'),
    preferredMinMm: figure('preferredMin'),
    preferredMaxMm: figure('preferredMax'),
  };
}

function readGroup(
  draft: Draft,
  group: GroupDraft,
  place: number,
): { group: ValveGroup | null; problems: readonly FormProblem[] } {
  const path = `groups.${place}`;
  const window = windowOf(draft, group);
  if (window === null) {
    const kind = outOfScopeLifter(group.lifter);
    const sentence =
      kind !== undefined
        ? outOfScope(kind)
        : group.lifter === NOT_KNOWN
          ? words.problems.lifterOfOthers
          : words.problems.lifterMissing;
    return { group: null, problems: [refusedField(`${path}.lifter`, sentence)] };
  }
  const typed = windowFields.flatMap((field) =>
    notANumber(
      `${path}.${field}`,
      group.window[field],
      readLength(group.window[field], shortUnit(draft.units), draft.remembered),
    ),
  );
  const found = asFormProblems(windowProblems(window), (figure) => {
    const field = windowFields.find((one) => figureOf[one] === figure);
    return `${path}.${field ?? 'lifter'}`;
  }).filter(({ field }) => !typed.some((problem) => problem.field === field));
  const named = memberProblems(group, path);
  const problems = [...named, ...typed, ...found];
  return {
    group: {
      id: group.id,
      name: words.groupName(group.members, draft.groups.length > 1),
      window,
      members: membersOf(group.members),
    },
    problems,
  };
}

function memberProblems(group: GroupDraft, path: string): readonly FormProblem[] {
  if (group.members.kind !== 'cylinders') return [];
  const cylinders = numbersIn(group.members.text);
  if (cylinders.length > 0 && cylinders.every((cylinder) => Number.isInteger(cylinder))) return [];
  return [refusedField(`${path}.cylinders`, words.problems.cylindersMissing)];
}

function membersOf(members: MembersDraft): GroupMembers {
  return members.kind === 'cylinders'
    ? { kind: 'cylinders', cylinders: numbersIn(members.text).filter(Number.isInteger) }
    : members;
}
