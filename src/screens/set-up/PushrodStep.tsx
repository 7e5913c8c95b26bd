import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { TextField } from '../shell/TextField';
import { longUnit, shortUnit } from './draftText';
import { EndsFields } from './EndsFields';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';

/** The pushrod fitted for the test, or the checking pushrod, and how its length was taken. */
export function PushrodStep({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes } = form;
  const unit = words.unit[longUnit(draft.units)];
  const known = draft.ends.every((text) => text.trim() !== '');
  return (
    <section className={styles.step} aria-labelledby="step-pushrod">
      <h2 id="step-pushrod">{words.pushrodSteps[draft.counts]}</h2>
      {draft.counts === 'fastener' ? (
        <TextField
          field="pushrod"
          label={words.pushrod}
          hint={words.pushrodHint[draft.units]}
          unit={unit}
          figures
          value={draft.pushrod}
          notes={notes('pushrod')}
          onChange={(pushrod) => change({ pushrod })}
          onLeave={() => {
            if (draft.pushrod.trim() !== '') leave('pushrod');
          }}
        />
      ) : (
        <CheckingFields form={form} />
      )}
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
      <Fold
        title={words.ends}
        open={notes('ends.0').length > 0}
        {...(known ? { now: `${draft.ends.join(', ')} ${unit}` } : {})}
      >
        <EndsFields
          ends={draft.ends}
          unit={unit}
          notes={notes}
          onLeave={leave}
          onChange={(ends) => change({ ends })}
        />
      </Fold>
    </section>
  );
}

function CheckingFields({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes } = form;
  return (
    <>
      <TextField
        field="closed"
        label={words.closed}
        hint={words.closedHint[draft.units]}
        unit={words.unit[longUnit(draft.units)]}
        figures
        value={draft.closed}
        notes={notes('closed')}
        onChange={(closed) => change({ closed })}
        onLeave={() => leave('closed')}
      />
      <TextField
        field="perTurn"
        label={words.turnOpens}
        hint={words.turnOpensHint}
        unit={words.unit[shortUnit(draft.units)]}
        figures
        value={draft.perTurn}
        notes={notes('perTurn')}
        onChange={(perTurn) => change({ perTurn })}
        onLeave={() => leave('perTurn')}
      />
    </>
  );
}
