import type {
  AdjusterKind,
  EngineLayout,
  Evidence,
  Numbering,
  OutOfScopeKind,
  ValveKind,
} from '#valvetrain';
import type { Draft, GroupsBy, MembersDraft, WindowDraft } from './draft';

export const layouts: Readonly<Record<EngineLayout, string>> = {
  inline: 'Inline',
  V: 'V',
  flat: 'Flat',
  other: 'Other',
};

export const numberings: Readonly<Record<Numbering, string>> = {
  'in line': 'In line, front to rear',
  'by bank': 'By bank: one bank, then the other',
  alternating: 'Alternately: odd on one bank, even on the other',
  typed: 'Bank by bank, typed in',
};

export const turns: Readonly<Record<Draft['turns'], string>> = {
  pivot: 'The bolt or nut that holds the rocker’s pivot',
  'pushrod-end screw': 'A screw in the pushrod end of the rocker',
  'valve-end screw': 'A screw in the valve end of the rocker',
  'shared rocker shaft or bridge': 'One shaft or bridge that holds several rockers',
};

export const outOfScopeNames: Readonly<Record<OutOfScopeKind, string>> = {
  'solid lifters': 'Solid lifters',
  'overhead cam': 'Overhead cam',
  'shared rocker shaft or bridge': 'Shared rocker shaft or bridge',
  'converted-solid test lifters': 'Test lifters converted to solid',
};

export const valves: Readonly<Record<ValveKind, string>> = { intake: 'intake', exhaust: 'exhaust' };

export const windowFigures: Readonly<Record<keyof WindowDraft, string>> = {
  travel: 'Plunger travel',
  keepTop: 'Keep-out at the top',
  keepBottom: 'Keep-out at the bottom',
  usableMin: 'Usable from',
  usableMax: 'Usable to',
  preferredMin: 'Preferred from',
  preferredMax: 'Preferred to',
};

export const groupings: Readonly<Record<GroupsBy, string>> = {
  all: 'One kind for all valves',
  valve: 'Intakes and exhausts differ',
  bank: 'The banks differ',
  cylinders: 'Some cylinders differ',
  mixed: 'As they were set before',
};

export const evidences: Readonly<Record<Evidence, string>> = {
  published: 'Published for most engines: confirm against the lifter maker’s own figures',
  'common practice': 'Common practice: confirm against the lifter maker’s own figures',
};

export const kinds: Readonly<Record<AdjusterKind, string>> = {
  pivot: 'The pivot goes down by the pitch, and the lever adds the pitch divided by the ratio.',
  'pushrod-end screw': 'The screw moves the pushrod by its pitch; the lever adds nothing.',
  'valve-end screw': 'The screw moves the pushrod by its pitch divided by the ratio.',
};

/** 'V8', 'Inline 6', '5 cylinders'. */
export function layoutName(layout: EngineLayout, cylinders: number): string {
  if (layout === 'other') return `${cylinders} cylinders`;
  return layout === 'V' ? `V${cylinders}` : `${layouts[layout]} ${cylinders}`;
}

/** What a group of valves is called; 'all' is the rest where there are several. */
export function membersName(members: MembersDraft, several: boolean): string {
  switch (members.kind) {
    case 'all':
      return several ? 'The rest' : 'All valves';
    case 'valve':
      return members.valve === 'intake' ? 'Intakes' : 'Exhausts';
    case 'bank':
      return members.bank === 0 ? 'Left bank' : 'Right bank';
    case 'cylinders':
      return members.text.trim() === '' ? 'Named cylinders' : `Cylinders ${members.text.trim()}`;
    default: {
      const never: never = members;
      return never;
    }
  }
}
