import { valveKey, valvesOf } from '#valvetrain';
import { Choice } from '../shell/Choice';
import { Field } from '../shell/Field';
import { Fold } from '../shell/Fold';
import { TextField } from '../shell/TextField';
import { Tick } from '../shell/Tick';
import { engineOf } from './readEngine';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';
import type { SetUpForm } from './useSetUpForm';

/** Which of the engine's valves this job counts. Folded: mostly all of them. */
export function ScopeStep({ form }: { readonly form: SetUpForm }) {
  const { draft, change, leave, notes, read } = form;
  const engine = engineOf(draft, 'clockwise');
  if (engine === null) return null;
  const all = valvesOf({ cylinders: engine.firingOrder.length });
  const count = draft.which === 'all' ? all.length : (read.setUp?.scope.length ?? null);
  const now = count === null ? undefined : words.scopeNow(count);
  return (
    <Fold title={words.scopeFold} {...(now ? { now } : {})}>
      <Choice
        field="which"
        label={words.which}
        value={draft.which}
        options={[
          { value: 'all', label: words.whichAll },
          { value: 'one cylinder', label: words.whichOne },
          { value: 'picked', label: words.whichPicked },
        ]}
        onChange={(which) => change({ which })}
      />
      {draft.which === 'one cylinder' && (
        <TextField
          field="oneCylinder"
          label={words.oneCylinder}
          figures
          value={draft.oneCylinder}
          notes={notes('oneCylinder')}
          onChange={(oneCylinder) => change({ oneCylinder })}
          onLeave={() => leave('oneCylinder')}
        />
      )}
      {draft.which === 'picked' && (
        <Field field="picked" notes={notes('picked')}>
          <fieldset className={styles.ticks}>
            <legend>{words.picked}</legend>
            {all.map((id) => {
              const key = valveKey(id);
              const ticked = draft.picked.includes(key);
              return (
                <Tick
                  key={key}
                  label={words.valve(id.cylinder, id.valve)}
                  ticked={ticked}
                  onChange={(tick) =>
                    change({
                      picked: tick
                        ? [...draft.picked, key]
                        : draft.picked.filter((other) => other !== key),
                    })
                  }
                />
              );
            })}
          </fieldset>
        </Field>
      )}
    </Fold>
  );
}
