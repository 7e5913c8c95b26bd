import type { ReactNode } from 'react';
import { TextField } from '../shell/TextField';
import { UnitsChoice } from '../shell/UnitsChoice';
import { CallingStep } from './CallingStep';
import { CamStep } from './CamStep';
import { inUnits } from './draftChanges';
import { EngineStep } from './EngineStep';
import { LifterStep } from './LifterStep';
import { PushrodStep } from './PushrodStep';
import { RockerStep } from './RockerStep';
import { ScopeStep } from './ScopeStep';
import { ScreenStep } from './ScreenStep';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';
import { WalkStep } from './WalkStep';

interface Props {
  readonly form: SetUpForm;
  /** What ends the form: the buttons. */
  readonly children: ReactNode;
}

/** The whole form, and at its end what is missing. */
export function SetUpFields({ form, children }: Props) {
  const { draft, change, update, place } = form;
  return (
    <div ref={place}>
      <UnitsChoice
        value={draft.units}
        onChange={(units) => update((before) => inUnits(before, units))}
      />
      <section className={styles.step} aria-labelledby="step-job">
        <h2 id="step-job">{words.jobStep}</h2>
        <TextField
          field="name"
          label={words.name}
          hint={words.nameHint}
          value={draft.name}
          onChange={(name) => change({ name })}
        />
      </section>
      <EngineStep form={form} />
      <ScopeStep form={form} />
      <RockerStep form={form} />
      <LifterStep form={form} />
      <PushrodStep form={form} />
      <CamStep form={form} />
      <WalkStep form={form} />
      <CallingStep form={form} />
      <ScreenStep />
      <section className={styles.end} aria-live="polite">
        <Missing form={form} />
        {children}
      </section>
    </div>
  );
}

function Missing({ form }: { readonly form: SetUpForm }) {
  const { read, asked, goTo } = form;
  if (!asked) return null;
  if (read.problems.length === 0) return <p>{words.ready}</p>;
  return (
    <div className={styles.missing}>
      <p>{words.missing(read.problems.length)}</p>
      <ul>
        {read.problems.map(({ field, sentence }) => (
          <li key={`${field} ${sentence}`}>
            <button type="button" className={styles.toField} onClick={() => goTo(field)}>
              {sentence}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
