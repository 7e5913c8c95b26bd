import type { NamedWindow } from '#settings';
import { type OutOfScopeKind, startingSets } from '#valvetrain';
import { useSettings } from '../services';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { type OptionGroup, SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import { type GroupDraft, type GroupsBy, NOT_KNOWN } from './draft';
import {
  groupedBy,
  hasOwnFigures,
  showsWindow,
  withGroup,
  withLifter,
  withNamedGroup,
  withoutGroup,
  withWindow,
} from './groupChanges';
import { engineOf } from './readEngine';
import { startingSetOf, windowOf } from './readGroups';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';
import { WindowDrawing } from './WindowDrawing';
import { WindowFigures } from './WindowFigures';

/** Ahead of a kept window's name, where the list also has lifter kinds. */
const OWN = 'own ';

const notForThis: readonly OutOfScopeKind[] = ['solid lifters', 'converted-solid test lifters'];

function lifterGroups(windows: readonly NamedWindow[]): readonly OptionGroup[] {
  const own = windows.map(({ name }) => ({ value: `${OWN}${name}`, label: name }));
  return [
    ...(own.length === 0 ? [] : [{ label: words.ownWindows, options: own }]),
    {
      label: words.startingSets,
      options: startingSets.map(({ id, name }) => ({ value: id, label: name })),
    },
    { label: words.typedIn, options: [{ value: NOT_KNOWN, label: words.lifterNotKnown }] },
    {
      label: words.notForThis,
      options: notForThis.map((value) => ({ value, label: words.outOfScopeNames[value] })),
    },
  ];
}

/** Lifter kinds and their windows, one set or one for each group of valves. */
export function LifterStep({ form }: { readonly form: SetUpForm }) {
  const { draft, update, notes } = form;
  const banks = engineOf(draft, 'clockwise')?.banks.length ?? 0;
  const ways: readonly GroupsBy[] = [
    'all',
    'valve',
    ...(banks === 2 ? (['bank'] as const) : []),
    'cylinders',
    ...(draft.groupsBy === 'mixed' ? (['mixed'] as const) : []),
  ];
  return (
    <section className={styles.step} aria-labelledby="step-lifter">
      <h2 id="step-lifter">{words.lifterStep}</h2>
      {draft.groups.map((group, place) => (
        <GroupFields key={group.id} form={form} group={group} place={place} />
      ))}
      {draft.groupsBy === 'cylinders' && (
        <Action onPress={() => update(withNamedGroup)}>{words.anotherGroup}</Action>
      )}
      <Fold title={words.groupsFold} now={words.groupings[draft.groupsBy]}>
        <Choice
          field="groups"
          label={words.groupsBy}
          value={draft.groupsBy}
          notes={notes('groups')}
          options={ways.map((value) => ({ value, label: words.groupings[value] }))}
          onChange={(way) => update((before) => groupedBy(before, way))}
        />
      </Fold>
    </section>
  );
}

interface GroupProps {
  readonly form: SetUpForm;
  readonly group: GroupDraft;
  readonly place: number;
}

function GroupFields({ form, group, place }: GroupProps) {
  const { draft, update, leave, notes } = form;
  const { windows } = useSettings();
  const path = `groups.${place}`;
  const set = startingSetOf(group.lifter);
  const window = windowOf(draft, group);
  const several = draft.groups.length > 1;
  const own = windows.find((one) => showsWindow(draft, group, one.window));

  function choose(value: string): void {
    const chosen = windows.find(({ name }) => value === `${OWN}${name}`);
    update((before) =>
      chosen === undefined
        ? withLifter(before, place, value)
        : withWindow(before, place, chosen.window),
    );
    leave(`${path}.lifter`);
  }

  return (
    <div className={several ? styles.group : undefined}>
      {several && <h3>{words.groupName(group.members, true)}</h3>}
      {group.members.kind === 'cylinders' && (
        <NamedCylinders form={form} group={group} place={place} />
      )}
      <SelectField
        field={`${path}.lifter`}
        label={words.lifter}
        unchosen={words.choose}
        groups={lifterGroups(windows)}
        value={own === undefined ? group.lifter : `${OWN}${own.name}`}
        notes={notes(`${path}.lifter`)}
        onChange={choose}
      />
      {set === undefined || window === null ? (
        <p className={styles.quiet}>{words.noWindow}</p>
      ) : (
        <>
          <p className={styles.evidence}>
            {hasOwnFigures(draft, group) ? words.ownFigures : words.evidences[set.evidence]}
          </p>
          {set.wantsDialIndicator && <p>{words.wantsDial}</p>}
          <WindowDrawing window={window} units={draft.units} />
          <WindowFigures form={form} group={group} place={place} />
        </>
      )}
    </div>
  );
}

function NamedCylinders({ form, group, place }: GroupProps) {
  const { draft, update, leave, notes } = form;
  const field = `groups.${place}.cylinders`;
  const named = draft.groups.filter(({ members }) => members.kind === 'cylinders');
  return (
    <>
      <TextField
        field={field}
        label={words.groupCylinders}
        value={group.members.kind === 'cylinders' ? group.members.text : ''}
        notes={notes(field)}
        onChange={(text) =>
          update((before) => withGroup(before, place, { members: { kind: 'cylinders', text } }))
        }
        onLeave={() => leave(field)}
      />
      {named.length > 1 && (
        <Action onPress={() => update((before) => withoutGroup(before, place))}>
          {words.withoutGroup}
        </Action>
      )}
    </>
  );
}
