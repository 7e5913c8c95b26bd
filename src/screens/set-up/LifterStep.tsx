import { type OutOfScopeKind, startingSets } from '#valvetrain';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { type OptionGroup, SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import { type GroupDraft, type GroupsBy, NOT_KNOWN } from './draft';
import {
  groupedBy,
  hasOwnFigures,
  withGroup,
  withLifter,
  withStartingFigures,
} from './draftChanges';
import { shortUnit } from './draftText';
import { engineOf } from './readEngine';
import { startingSetOf, windowFields, windowOf } from './readGroups';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';
import { WindowDrawing } from './WindowDrawing';

const notForThis: readonly OutOfScopeKind[] = ['solid lifters', 'converted-solid test lifters'];

const lifterGroups: readonly OptionGroup[] = [
  { label: '', options: startingSets.map(({ id, name }) => ({ value: id, label: name })) },
  { label: words.typedIn, options: [{ value: NOT_KNOWN, label: words.lifterNotKnown }] },
  {
    label: words.notForThis,
    options: notForThis.map((value) => ({ value, label: words.outOfScopeNames[value] })),
  },
];

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
  const path = `groups.${place}`;
  const set = startingSetOf(group.lifter);
  const window = windowOf(draft, group);
  const several = draft.groups.length > 1;
  return (
    <div className={several ? styles.group : undefined}>
      {several && <h3>{words.groupName(group.members, true)}</h3>}
      {group.members.kind === 'cylinders' && (
        <TextField
          field={`${path}.cylinders`}
          label={words.groupCylinders}
          value={group.members.text}
          notes={notes(`${path}.cylinders`)}
          onChange={(text) =>
            update((before) => withGroup(before, place, { members: { kind: 'cylinders', text } }))
          }
          onLeave={() => leave(`${path}.cylinders`)}
        />
      )}
      <SelectField
        field={`${path}.lifter`}
        label={words.lifter}
        unchosen={words.choose}
        groups={lifterGroups}
        value={group.lifter}
        notes={notes(`${path}.lifter`)}
        onChange={(lifter) => {
          update((before) => withLifter(before, place, lifter));
          leave(`${path}.lifter`);
        }}
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

function WindowFigures({ form, group, place }: GroupProps) {
  const { draft, update, leave, notes } = form;
  const path = `groups.${place}`;
  const unit = words.unit[shortUnit(draft.units)];
  const troubled = windowFields.some((field) => notes(`${path}.${field}`).length > 0);
  return (
    <Fold title={words.windowFold} open={troubled}>
      <p>{words.windowUnit(unit)}</p>
      <div className={styles.windowFigures}>
        {windowFields.map((field) => (
          <TextField
            key={field}
            field={`${path}.${field}`}
            label={words.windowFigures[field]}
            unit={unit}
            figures
            value={group.window[field]}
            notes={notes(`${path}.${field}`)}
            onChange={(text) =>
              update((before) =>
                withGroup(before, place, { window: { ...group.window, [field]: text } }),
              )
            }
            onLeave={() => windowFields.forEach((one) => void leave(`${path}.${one}`))}
          />
        ))}
      </div>
      <p className={styles.quiet}>{startingSetOf(group.lifter)?.basis}</p>
      {hasOwnFigures(draft, group) && (
        <Action onPress={() => update((before) => withStartingFigures(before, place))}>
          {words.putStarting}
        </Action>
      )}
    </Fold>
  );
}
