import { useState } from 'react';
import { LONGEST_WINDOW_NAME, withNamedWindow } from '#settings';
import { hasRefusal, windowProblems } from '#valvetrain';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { TextField } from '../shell/TextField';
import type { GroupDraft } from './draft';
import { showsWindow } from './groupChanges';
import { windowOf } from './readGroups';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';

interface Props {
  readonly form: SetUpForm;
  readonly group: GroupDraft;
  readonly place: number;
}

/** Keeps a group's figures on this device under a name, or forgets those that are. */
export function KeepWindow({ form, group, place }: Props) {
  const { settings } = useServices();
  const { windows } = useSettings();
  const [name, setName] = useState('');
  const [told, setTold] = useState('');
  const { draft } = form;
  const window = windowOf(draft, group);
  const kept = windows.find((one) => showsWindow(draft, group, one.window));

  function keep(): void {
    if (name.trim() === '' || name.trim().length > LONGEST_WINDOW_NAME)
      setTold(words.windowNameMissing(LONGEST_WINDOW_NAME));
    else if (window === null || hasRefusal(windowProblems(window))) setTold(words.windowUnsound);
    else {
      settings.change({ windows: withNamedWindow(windows, name, window) });
      setName('');
      setTold('');
    }
  }

  if (kept !== undefined) {
    return (
      <div className={styles.note}>
        <p>{words.windowKept(kept.name)}</p>
        <Action onPress={() => settings.change({ windows: windows.filter((one) => one !== kept) })}>
          {words.forgetWindow(kept.name)}
        </Action>
      </div>
    );
  }
  return (
    <>
      <TextField
        field={`window-name-${place}`}
        label={words.windowName}
        hint={words.windowNameHint}
        value={name}
        notes={told === '' ? [] : [{ sentence: told }]}
        onChange={setName}
      />
      <Action onPress={keep}>{words.keepWindow}</Action>
    </>
  );
}
