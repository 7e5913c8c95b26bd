import { inConvention } from '#valvetrain';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { TextField } from '../shell/TextField';
import { lengthText, longUnit, shortUnit } from './draftText';
import { EndsFields } from './EndsFields';
import { readPushrods } from './readPushrod';
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
          onLeave={(field) => {
            // What is missing among the four is told once the last is left.
            if (field === 'ends.3') leave('ends.0');
          }}
          onChange={(ends) => change({ ends })}
        />
        <BothWays form={form} />
      </Fold>
    </section>
  );
}

/** The length by the other convention, once balls and holes are known. */
function BothWays({ form }: { readonly form: SetUpForm }) {
  const { draft } = form;
  const unit = longUnit(draft.units);
  const { testPushrod, checking, buying, problems } = readPushrods(draft);
  const ends = buying?.ends ?? null;
  const mm = checking?.closedMm ?? testPushrod?.mm;
  if (ends === null || mm === undefined || problems.length > 0) return null;
  const { convention } = draft;
  const other = convention === 'full ball' ? 'tip to tip' : 'full ball';
  const length = inConvention({ mm, convention }, other, ends).mm;
  return (
    <p role="status">
      {words.bothWays(
        `${lengthText(mm, unit)} ${words.unit[unit]} ${convention}`,
        `${lengthText(length, unit)} ${words.unit[unit]} ${other}`,
      )}
    </p>
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
