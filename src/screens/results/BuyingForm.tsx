import { useId, useState } from 'react';
import { buyingOf, type JobState, setUpOf } from '#counting';
import { caption, type Units } from '#words';
import { useServices, useSettings } from '../services';
import { longUnit } from '../set-up/draftText';
import { EndsFields } from '../set-up/EndsFields';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import field from '../shell/field.module.css';
import { submitFromScreen } from '../shell/submit';
import { TextField } from '../shell/TextField';
import { type BuyingDraft, buyingDraft, type OfferKind, readBuying } from './buyingDraft';
import { orderWords as words } from './orderWords';

const kinds: readonly OfferKind[] = ['25', '50', 'mm', 'any', 'stock'];

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** What lengths can be had: a grid or a stock list, how they are stated, and spares. */
export function BuyingForm({ job, units }: Props) {
  const setUp = setUpOf(job);
  const buying = setUp === null ? null : buyingOf(setUp);
  if (setUp === null || buying === null) return null;
  return (
    <Fold title={words.buying}>
      <Form
        key={`${units} ${JSON.stringify(buying)}`}
        job={job}
        start={buyingDraft(buying, units)}
      />
    </Fold>
  );
}

function Form({ job, start }: { readonly job: JobState; readonly start: BuyingDraft }) {
  const { bench } = useServices();
  const settings = useSettings();
  const { units } = settings;
  const [draft, setDraft] = useState(start);
  const [wrong, setWrong] = useState('');
  const stockId = useId();
  const change = (changes: Partial<BuyingDraft>) => setDraft({ ...draft, ...changes });
  const unit = longUnit(units);

  function keep(): void {
    const setUp = setUpOf(job);
    const read = readBuying(draft, units);
    if (!read.ok) {
      setWrong(read.sentence);
      return;
    }
    if (setUp === null) return;
    const changed = { ...setUp, buying: read.buying };
    const refused = submitFromScreen(bench, {
      type: 'changeSetUp',
      setUp: changed,
      appliesTo: 'all',
    });
    const line = (one: NonNullable<typeof refused>[number]) =>
      caption(one, { ...settings, hands: 'alone', unkept: false });
    setWrong(refused === null ? '' : refused.map(line).join(' ') || words.refused);
  }

  return (
    <>
      <Choice
        field="offer"
        label={words.offer}
        value={draft.kind}
        options={kinds.map((value) => ({ value, label: words.offers[value] }))}
        onChange={(kind) => change({ kind })}
      />
      {draft.kind === 'mm' && (
        <TextField
          field="step"
          label={words.step}
          unit={words.mm}
          figures
          value={draft.step}
          onChange={(step) => change({ step })}
        />
      )}
      {draft.kind === 'stock' ? (
        <>
          <label className={field.label} htmlFor={stockId}>
            {words.stock}
          </label>
          <textarea
            id={stockId}
            className={field.input}
            rows={5}
            value={draft.stock}
            placeholder={words.stockHint[units]}
            onChange={(typed) => change({ stock: typed.target.value })}
          />
        </>
      ) : (
        <TextField
          field="offset"
          label={words.offset}
          hint={words.offsetHint}
          unit={unit}
          figures
          value={draft.offset}
          onChange={(offset) => change({ offset })}
        />
      )}
      <TextField
        field="spares"
        label={words.spares}
        figures
        value={draft.spares}
        onChange={(spares) => change({ spares })}
      />
      <Choice
        field="offerConvention"
        label={words.convention}
        value={draft.convention}
        options={(['tip to tip', 'full ball'] as const).map((value) => ({
          value,
          label: words.conventions[value],
        }))}
        onChange={(convention) => change({ convention })}
      />
      <Fold title={words.ends}>
        <EndsFields ends={draft.ends} unit={unit} onChange={(ends) => change({ ends })} />
      </Fold>
      {wrong !== '' && <p role="alert">{wrong}</p>}
      <Action onPress={keep}>{words.keepBuying}</Action>
    </>
  );
}
