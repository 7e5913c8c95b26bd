import { walkMethods } from '#valvetrain';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import type { WalkDraft } from './crankDraft';
import styles from './set-up.module.css';
import type { SetUpForm } from './useSetUpForm';
import { WalkPreview } from './WalkPreview';
import { walkWords as words } from './walkWords';

/** How the crank is walked, and the stops that comes to. Folded: one stop a cylinder is set already. */
export function WalkStep({ form }: { readonly form: SetUpForm }) {
  const { draft, read, update, leave, notes } = form;
  const { walk } = draft;
  function onWalk(changes: Partial<WalkDraft>): void {
    update((before) => ({ ...before, walk: { ...before.walk, ...changes } }));
    leave('walk.method');
  }
  return (
    <Fold title={words.step} now={words.now(walk.method, read.plan?.positions.length || null)}>
      <SelectField
        field="walk.method"
        label={words.method}
        value={walk.method}
        notes={notes('walk.method')}
        groups={[
          {
            label: '',
            options: walkMethods.map((value) => ({ value, label: words.methods[value] })),
          },
        ]}
        onChange={(value) => {
          const method = walkMethods.find((one) => one === value);
          if (method !== undefined) onWalk({ method });
        }}
      />
      <p className={styles.quiet}>{words.hints[walk.method]}</p>
      <TextField
        field="walk.margin"
        label={words.margin}
        hint={words.marginHint}
        unit={words.unit}
        figures
        value={walk.margin}
        notes={notes('walk.margin')}
        onChange={(margin) => onWalk({ margin })}
        onLeave={() => leave('walk.margin')}
      />
      {walk.method === 'fewest stops' && <FewestFields form={form} onWalk={onWalk} />}
      <WalkPreview plan={read.plan} />
    </Fold>
  );
}

interface FewestProps {
  readonly form: SetUpForm;
  readonly onWalk: (changes: Partial<WalkDraft>) => void;
}

function FewestFields({ form, onWalk }: FewestProps) {
  const { walk } = form.draft;
  return (
    <>
      <Choice
        field="walk.at"
        label={words.at}
        value={walk.at}
        options={(['TDCs', 'any angle', 'marked'] as const).map((value) => ({
          value,
          label: words.ats[value],
        }))}
        onChange={(at) => onWalk({ at })}
      />
      {walk.at === 'marked' && (
        <TextField
          field="walk.marks"
          label={words.marks}
          hint={words.marksHint}
          value={walk.marks}
          notes={form.notes('walk.marks')}
          onChange={(marks) => onWalk({ marks })}
          onLeave={() => form.leave('walk.marks')}
        />
      )}
      {walk.at === 'any angle' && (
        <Choice
          field="walk.prefer"
          label={words.prefer}
          value={walk.prefer}
          options={(['most margin', 'pistons away from TDC'] as const).map((value) => ({
            value,
            label: words.prefers[value],
          }))}
          onChange={(prefer) => onWalk({ prefer })}
        />
      )}
    </>
  );
}
