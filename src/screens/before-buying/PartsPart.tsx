import { longUnit, shortUnit } from '../set-up/draftText';
import { Choice } from '../shell/Choice';
import { Field } from '../shell/Field';
import { TextField } from '../shell/TextField';
import { Tick } from '../shell/Tick';
import styles from './before.module.css';
import { withPart } from './planChanges';
import { isSized, type PartId, partIds } from './planDraft';
import { planWords as words } from './planWords';
import type { PlanForm } from './usePlanForm';

/** What changes: a tick for each part, and its figures where it is ticked. */
export function PartsPart({ form }: { readonly form: PlanForm }) {
  const { draft, update, notes } = form;
  return (
    <section className={styles.step} aria-labelledby="plan-parts">
      <h2 id="plan-parts">{words.partsStep}</h2>
      <Field field="parts" notes={notes('parts')}>
        <fieldset className={styles.ticks}>
          <legend>{words.partsField}</legend>
          {partIds.map((part) => (
            <Tick
              key={part}
              label={words.parts[part].tick}
              ticked={draft.parts[part].changes}
              onChange={(changes) => update((before) => withPart(before, part, { changes }))}
            />
          ))}
        </fieldset>
      </Field>
      {partIds
        .filter((part) => draft.parts[part].changes)
        .map((part) => (
          <PartFields key={part} form={form} part={part} />
        ))}
    </section>
  );
}

type Typed = 'was' | 'willBe' | 'amount' | 'give';

function PartFields({ form, part }: { readonly form: PlanForm; readonly part: PartId }) {
  const { draft, change } = form;
  const asked = words.parts[part];
  const headed = `plan-${part.replace(' ', '-')}`;
  const figures: readonly Typed[] = isSized(part) ? ['was', 'willBe'] : ['amount'];
  return (
    <section className={styles.part} aria-labelledby={headed}>
      <h3 id={headed}>{asked.name}</h3>
      <div className={styles.row}>
        {figures.map((typed) => (
          <Figure key={typed} form={form} part={part} typed={typed} />
        ))}
        <Figure form={form} part={part} typed="give" />
      </div>
      <p className={styles.quiet}>{asked.hint}</p>
      {part === 'valve tip' && (
        <Choice
          field="pivot"
          label={words.pivot}
          value={draft.pivot}
          options={(['fixed', 'raised to match'] as const).map((value) => ({
            value,
            label: words.pivots[value],
          }))}
          onChange={(pivot) => change({ pivot })}
        />
      )}
    </section>
  );
}

interface FigureProps {
  readonly form: PlanForm;
  readonly part: PartId;
  readonly typed: Typed;
}

function Figure({ form, part, typed }: FigureProps) {
  const { draft, update, leave, notes } = form;
  const asked = words.parts[part];
  const label = typed === 'give' ? words.give : (asked[typed] ?? asked.name);
  const isSize = typed === 'was' || typed === 'willBe';
  const field = `part.${part}.${typed}`;
  return (
    <TextField
      field={field}
      label={label}
      unit={words.unit[isSize ? longUnit(draft.units) : shortUnit(draft.units)]}
      figures
      value={draft.parts[part][typed]}
      notes={notes(field)}
      onChange={(text) => update((before) => withPart(before, part, { [typed]: text }))}
      onLeave={() => leave(field)}
    />
  );
}
