import { Action } from '../shell/Action';
import { Fold } from '../shell/Fold';
import { TextField } from '../shell/TextField';
import type { GroupDraft } from './draft';
import { shortUnit } from './draftText';
import { hasOwnFigures, withGroup, withStartingFigures } from './groupChanges';
import { KeepWindow } from './KeepWindow';
import { startingSetOf, windowFields } from './readGroups';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';

interface Props {
  readonly form: SetUpForm;
  readonly group: GroupDraft;
  readonly place: number;
}

/** The seven figures of one group's window, what they rest on, and keeping them under a name. */
export function WindowFigures({ form, group, place }: Props) {
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
      <KeepWindow form={form} group={group} place={place} />
    </Fold>
  );
}
