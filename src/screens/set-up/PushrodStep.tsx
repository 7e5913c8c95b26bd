import { Choice } from '../shell/Choice';
import { TextField } from '../shell/TextField';
import { longUnit } from './draftText';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';

/** The pushrod fitted for the test and how its length was taken. */
export function PushrodStep({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes } = form;
  return (
    <section className={styles.step} aria-labelledby="step-pushrod">
      <h2 id="step-pushrod">{words.pushrodStep}</h2>
      <TextField
        field="pushrod"
        label={words.pushrod}
        hint={words.pushrodHint[draft.units]}
        unit={words.unit[longUnit(draft.units)]}
        figures
        value={draft.pushrod}
        notes={notes('pushrod')}
        onChange={(pushrod) => change({ pushrod })}
        onLeave={() => {
          if (draft.pushrod.trim() !== '') leave('pushrod');
        }}
      />
      <Choice
        field="convention"
        label={words.convention}
        value={draft.convention}
        options={(['tip to tip', 'full ball'] as const).map((value) => ({
          value,
          label: words.conventions[value],
        }))}
        onChange={(convention) => change({ convention })}
      />
    </section>
  );
}
