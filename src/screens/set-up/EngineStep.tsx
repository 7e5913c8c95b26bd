import { engines, type Numbering } from '#valvetrain';
import { Choice } from '../shell/Choice';
import { type OptionGroup, SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import { NOT_KNOWN } from './draft';
import { NumberingPlan } from './NumberingPlan';
import { engineOf } from './readEngine';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';
import { walkWords } from './walkWords';

const engineGroups: readonly OptionGroup[] = [
  ...[...new Set(engines.map(words.presetLayout))].map((label) => ({
    label,
    options: engines
      .filter((preset) => words.presetLayout(preset) === label)
      .map(({ id, name }) => ({ value: id, label: name })),
  })),
  {
    label: words.typedIn,
    options: [
      { value: 'typed', label: words.engineTyped },
      { value: NOT_KNOWN, label: words.engineNotKnown },
    ],
  },
  {
    label: words.notForThis,
    options: [{ value: 'overhead cam', label: words.outOfScopeNames['overhead cam'] }],
  },
];

/** Layout, firing order and running direction, with the plan to hold against the real engine. */
export function EngineStep({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes } = form;
  const engine = engineOf(draft, draft.direction === '' ? 'clockwise' : draft.direction);
  const drawn = engine?.banks.some((bank) => bank.length > 0) ? engine : null;
  const described = draft.engine !== '' && draft.engine !== NOT_KNOWN && engine !== null;
  return (
    <section className={styles.step} aria-labelledby="step-engine">
      <h2 id="step-engine">{words.engineStep}</h2>
      <SelectField
        field="engine"
        label={words.engine}
        unchosen={words.choose}
        groups={engineGroups}
        value={draft.engine}
        notes={notes('engine')}
        onChange={(value) => {
          change({ engine: value, which: 'all', picked: [], oneCylinder: '' });
          leave('engine');
        }}
      />
      <div className={drawn ? styles.beside : undefined}>
        <div>
          {draft.engine === 'typed' && <TypedEngine form={form} />}
          {engine?.banks.length === 2 && draft.numbering !== 'typed' && (
            <Choice
              field="firstBank"
              label={words.firstBank}
              value={draft.firstBank}
              options={[
                { value: 'left', label: words.left },
                { value: 'right', label: words.right },
              ]}
              onChange={(firstBank) => change({ firstBank })}
            />
          )}
          {described && (
            <>
              <Choice
                field="direction"
                label={words.direction}
                value={draft.direction}
                notes={notes('direction')}
                options={[
                  { value: 'clockwise', label: words.clockwise },
                  { value: 'anticlockwise', label: words.anticlockwise },
                ]}
                onChange={(direction) => change({ direction })}
              />
              <Choice
                field="seenFrom"
                label={words.seenFrom}
                value={draft.seenFrom}
                options={[
                  { value: 'front', label: words.front },
                  { value: 'rear', label: words.rear },
                ]}
                onChange={(seenFrom) => change({ seenFrom })}
              />
            </>
          )}
        </div>
        {drawn && <NumberingPlan engine={drawn} direction={draft.direction} />}
      </div>
    </section>
  );
}

function TypedEngine({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes } = form;
  return (
    <>
      <div className={styles.row}>
        <TextField
          field="cylinders"
          label={words.cylinders}
          figures
          value={draft.cylinders}
          notes={notes('cylinders')}
          onChange={(cylinders) => change({ cylinders })}
          onLeave={() => leave('cylinders')}
        />
        <TextField
          field="order"
          label={words.order}
          hint={words.orderHint}
          value={draft.order}
          notes={notes('order')}
          onChange={(order) => change({ order })}
          onLeave={() => leave('order')}
        />
      </div>
      <Choice
        field="layout"
        label={words.layout}
        value={draft.layout}
        options={(['inline', 'V', 'flat', 'other'] as const).map((value) => ({
          value,
          label: words.layouts[value],
        }))}
        onChange={(layout) =>
          change({ layout, numbering: layout === 'inline' ? 'in line' : draft.numbering })
        }
      />
      <SelectField
        field="numbering"
        label={words.numbering}
        value={draft.numbering}
        notes={notes('numbering')}
        groups={[
          {
            label: '',
            options: (['in line', 'by bank', 'alternating', 'typed'] as const).map((value) => ({
              value,
              label: words.numberings[value],
            })),
          },
        ]}
        onChange={(value) => change({ numbering: numberingNamed(value) })}
      />
      {draft.numbering === 'typed' && (
        <TextField
          field="banks"
          label={words.banks}
          hint={words.banksHint}
          value={draft.banks}
          notes={notes('banks')}
          onChange={(banks) => change({ banks })}
          onLeave={() => leave('banks')}
        />
      )}
      <Choice
        field="firing"
        label={walkWords.firing}
        value={draft.firing}
        options={(['evenly', 'typed'] as const).map((value) => ({
          value,
          label: walkWords.firings[value],
        }))}
        onChange={(firing) => change({ firing })}
      />
      {draft.firing === 'typed' && (
        <TextField
          field="firingAngles"
          label={walkWords.firingAngles}
          hint={walkWords.firingHint}
          value={draft.firingAngles}
          notes={notes('firingAngles')}
          onChange={(firingAngles) => change({ firingAngles })}
          onLeave={() => leave('firingAngles')}
        />
      )}
    </>
  );
}

function numberingNamed(value: string): Numbering {
  const all: readonly Numbering[] = ['in line', 'by bank', 'alternating', 'typed'];
  return all.find((one) => one === value) ?? 'in line';
}
