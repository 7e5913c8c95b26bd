import { threads } from '#valvetrain';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { type OptionGroup, SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import { type Draft, NOT_KNOWN } from './draft';
import { withCounts } from './draftChanges';
import { shortUnit } from './draftText';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';
import { WhyThisFigure } from './WhyThisFigure';

const threadGroups: readonly OptionGroup[] = [
  ...(['metric', 'unified'] as const).map((system) => ({
    label: words[system],
    options: threads
      .filter((thread) => thread.system === system)
      .map(({ id, name }) => ({ value: id, label: name })),
  })),
  {
    label: words.typedIn,
    options: [
      { value: 'pitch', label: words.threadPitch },
      { value: 'tpi', label: words.threadTpi },
      { value: NOT_KNOWN, label: words.threadNotKnown },
    ],
  },
];

const turnsInScope: readonly Draft['turns'][] = ['pivot', 'pushrod-end screw', 'valve-end screw'];

/** What is counted; then thread, ratio and what turns: what one quarter turn comes to. */
export function RockerStep({ form }: { readonly form: SetUpForm }) {
  const { draft, update } = form;
  return (
    <section className={styles.step} aria-labelledby="step-rocker">
      <h2 id="step-rocker">{words.rockerStep}</h2>
      <Choice
        field="counts"
        label={words.counts}
        value={draft.counts}
        options={(['fastener', 'checking pushrod'] as const).map((value) => ({
          value,
          label: words.countsBy[value],
        }))}
        onChange={(counts) => update((before) => withCounts(before, counts))}
      />
      {draft.counts === 'fastener' ? <Fastener form={form} /> : <p>{words.countsHint}</p>}
    </section>
  );
}

function Fastener({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes } = form;
  return (
    <>
      <Choice
        field="rockers"
        label={words.rockers}
        value={draft.rockers}
        options={[
          { value: 'bolt-down', label: words.boltDown },
          { value: 'adjustable', label: words.adjustable },
        ]}
        onChange={(rockers) => change({ rockers })}
      />
      <SelectField
        field="turns"
        label={words.turnsLabel}
        value={draft.turns}
        notes={notes('turns')}
        groups={[
          { label: '', options: turnsInScope.map(turnsOption) },
          { label: words.notForThis, options: [turnsOption('shared rocker shaft or bridge')] },
        ]}
        onChange={(value) => {
          const all = [...turnsInScope, 'shared rocker shaft or bridge'] as const;
          change({ turns: all.find((one) => one === value) ?? 'pivot' });
          leave('turns');
        }}
      />
      <div className={styles.row}>
        <SelectField
          field="thread"
          label={words.thread}
          unchosen={words.choose}
          groups={threadGroups}
          value={draft.thread}
          notes={notes('thread')}
          onChange={(thread) => {
            change({ thread });
            leave('thread');
          }}
        />
        {draft.thread === 'pitch' && (
          <TextField
            field="pitch"
            label={words.pitch}
            figures
            unit={words.unit.mm}
            value={draft.pitch}
            notes={notes('pitch')}
            onChange={(pitch) => change({ pitch })}
            onLeave={() => leave('pitch')}
          />
        )}
        {draft.thread === 'tpi' && (
          <TextField
            field="tpi"
            label={words.tpi}
            figures
            value={draft.tpi}
            notes={notes('tpi')}
            onChange={(tpi) => change({ tpi })}
            onLeave={() => leave('tpi')}
          />
        )}
        {draft.thread !== NOT_KNOWN && (
          <TextField
            field="ratio"
            label={words.ratio}
            hint={words.ratioHint}
            figures
            value={draft.ratio}
            notes={notes('ratio')}
            onChange={(ratio) => change({ ratio })}
            onLeave={() => leave('ratio')}
          />
        )}
      </div>
      {draft.thread !== NOT_KNOWN && (
        <>
          <Fold title={words.finerFold}>
            <div className={styles.row}>
              <TextField
                field="lean"
                label={words.lean}
                hint={words.leanHint}
                unit={words.degree}
                figures
                value={draft.lean}
                notes={notes('lean')}
                onChange={(lean) => change({ lean })}
                onLeave={() => leave('lean')}
              />
              <TextField
                field="measured"
                label={words.measured}
                hint={words.measuredHint}
                unit={words.unit[shortUnit(draft.units)]}
                figures
                value={draft.measured}
                notes={notes('measured')}
                onChange={(measured) => change({ measured })}
                onLeave={() => leave('measured')}
              />
            </div>
          </Fold>
          <WhyThisFigure draft={draft} />
        </>
      )}
    </>
  );
}

function turnsOption(value: Draft['turns']) {
  return { value, label: words.turns[value] };
}
