import { startingSets } from '#valvetrain';
import { longUnit, shortUnit } from '../set-up/draftText';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import styles from './before.module.css';
import { withLifterKind } from './planChanges';
import type { PlanDraft } from './planDraft';
import { planWords as words } from './planWords';
import type { PlanForm } from './usePlanForm';

type TextName = 'ratio' | 'ratioGive' | 'present' | 'preload' | 'preloadGive' | 'target';

/** The engine as it is: its rockers, its pushrod, its preload, and the preload wanted. */
export function EnginePart({ form }: { readonly form: PlanForm }) {
  const { draft, change, update } = form;
  const long = words.unit[longUnit(draft.units)];
  const short = words.unit[shortUnit(draft.units)];
  return (
    <>
      <section className={styles.step} aria-labelledby="plan-engine">
        <h2 id="plan-engine">{words.engineStep}</h2>
        <div className={styles.row}>
          <Text form={form} name="ratio" label={words.ratio} />
          <Text form={form} name="ratioGive" label={words.ratioGive} />
        </div>
        <p className={styles.quiet}>{words.ratioHint}</p>
        <Text
          form={form}
          name="present"
          label={words.present}
          hint={words.presentHint[draft.units]}
          unit={long}
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
        <Ends form={form} />
      </section>
      <section className={styles.step} aria-labelledby="plan-preload">
        <h2 id="plan-preload">{words.preloadStep}</h2>
        <div className={styles.row}>
          <Text form={form} name="preload" label={words.preload} unit={short} />
          <Text form={form} name="preloadGive" label={words.preloadGive} unit={short} />
        </div>
        <p className={styles.quiet}>{words.preloadHint}</p>
        <SelectField
          field="lifter"
          label={words.lifter}
          unchosen={words.choose}
          groups={[
            {
              label: '',
              options: startingSets.map(({ id, name }) => ({ value: id, label: name })),
            },
            { label: '', options: [{ value: 'other', label: words.otherLifter }] },
          ]}
          value={draft.lifter}
          onChange={(lifter) => update((before) => withLifterKind(before, lifter))}
        />
        <Text form={form} name="target" label={words.target} hint={words.targetHint} unit={short} />
        <p className={styles.quiet}>
          {startingSets.find(({ id }) => id === draft.lifter)?.basis ?? ''}
        </p>
      </section>
    </>
  );
}

interface TextProps {
  readonly form: PlanForm;
  readonly name: TextName;
  readonly label: string;
  readonly hint?: string;
  readonly unit?: string;
}

function Text({ form, name, label, hint, unit }: TextProps) {
  const { draft, change, leave, notes } = form;
  const changed = (text: string): Partial<PlanDraft> => ({ [name]: text });
  return (
    <TextField
      field={name}
      label={label}
      figures
      value={draft[name]}
      notes={notes(name)}
      onChange={(text) => change(changed(text))}
      onLeave={() => leave(name)}
      {...(hint === undefined ? {} : { hint })}
      {...(unit === undefined ? {} : { unit })}
    />
  );
}

function Ends({ form }: { readonly form: PlanForm }) {
  const { draft, change, leave, notes } = form;
  return (
    <Fold title={words.endsFold}>
      <div className={styles.row}>
        {draft.ends.map((text, at) => {
          const label = at % 2 === 0 ? words.ball(words.end(at)) : words.hole(words.end(at));
          return (
            <TextField
              key={label}
              // The one sentence about all four stands under the last.
              field={at === 3 ? 'ends' : `ends.${at}`}
              label={label}
              unit={words.unit[longUnit(draft.units)]}
              figures
              value={text}
              notes={at === 3 ? notes('ends') : []}
              onChange={(typed) => {
                const [a, b, c, d] = draft.ends.map((was, end) => (end === at ? typed : was));
                change({ ends: [a ?? '', b ?? '', c ?? '', d ?? ''] });
              }}
              onLeave={() => leave('ends')}
            />
          );
        })}
      </div>
    </Fold>
  );
}
