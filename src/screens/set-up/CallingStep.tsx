import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { Tick } from '../shell/Tick';
import type { StrokeDegrees } from './draft';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';

const strokes: readonly { readonly value: `${StrokeDegrees}`; readonly degrees: StrokeDegrees }[] =
  [
    { value: '30', degrees: 30 },
    { value: '45', degrees: 45 },
    { value: '60', degrees: 60 },
    { value: '90', degrees: 90 },
  ];

/** How turns are called and who turns the crank. Folded: the usual way is set already. */
export function CallingStep({ form }: { readonly form: SetUpForm }) {
  const { draft, change, notes } = form;
  return (
    <Fold title={words.callingStep} now={words.callingNow(draft)}>
      <Choice
        field="calling"
        label={words.calling}
        value={draft.calling}
        notes={notes('calling')}
        options={(['quarters', 'turns', 'strokes'] as const).map((value) => ({
          value,
          label: words.callings[value],
        }))}
        onChange={(calling) => change({ calling })}
      />
      <Choice
        field="zeroFeel"
        label={words.zeroFeel}
        value={draft.zeroFeel}
        options={(['up-and-down play', 'spinning'] as const).map((value) => ({
          value,
          label: words.zeroFeels[value],
        }))}
        onChange={(zeroFeel) => change({ zeroFeel })}
      />
      {draft.calling === 'strokes' && (
        <Choice
          field="degrees"
          label={words.degrees}
          value={`${draft.degrees}`}
          options={strokes.map(({ value }) => ({ value, label: `${value}${words.degree}` }))}
          onChange={(value) =>
            change({ degrees: strokes.find((stroke) => stroke.value === value)?.degrees ?? 60 })
          }
        />
      )}
      <Choice
        field="hands"
        label={words.hands}
        value={draft.hands}
        options={[
          { value: 'alone', label: words.alone },
          { value: 'with helper', label: words.helper },
        ]}
        onChange={(hands) => change({ hands })}
      />
      <div className={styles.longTicks}>
        <Tick
          label={words.asksLanding}
          ticked={draft.asksLanding}
          onChange={(asksLanding) => change({ asksLanding })}
        />
        <Tick
          label={words.callsLastOnly}
          ticked={draft.callsLastOnly}
          onChange={(callsLastOnly) => change({ callsLastOnly })}
        />
        <Tick
          label={words.clock}
          ticked={draft.clock === 'mark'}
          onChange={(reads) => change({ clock: reads ? 'mark' : 'off' })}
        />
      </div>
    </Fold>
  );
}
