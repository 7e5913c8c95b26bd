import { useState } from 'react';
import { useStore } from 'zustand';
import { sayEar } from '#words';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { Tick } from '../shell/Tick';
import { RecordingPart } from './RecordingPart';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

const EARS = ['automatic', 'browser', 'offline', 'none'] as const;

/** How the app listens, and what it may do for it. */
export function EarPart() {
  const { settings, ear, learnListen, earLog, save, go } = useServices();
  const { whichEar, earOnWaking, listens, carrier, mayLeave, measuresRoom, keys } = useSettings();
  const { state, why } = useStore(ear);
  const [noLog, setNoLog] = useState(false);
  function saveLog(): void {
    const log = earLog();
    setNoLog(log === '');
    if (log !== '') save('turncaller-ear-log.json', log);
  }
  return (
    <section className={styles.part} aria-labelledby="part-ear">
      <h2 id="part-ear">{words.ear}</h2>
      <p className={styles.quiet}>{words.earLead}</p>
      {state === 'dead' && <p role="status">{sayEar({ state, why, count48: null })}</p>}
      <Choice
        field="which-ear"
        label={words.whichEar}
        value={whichEar}
        options={EARS.map((value) => ({ value, label: words.ears[value] }))}
        onChange={(chosen) => settings.change({ whichEar: chosen })}
      />
      <Choice
        field="listens"
        label={words.listens}
        value={listens}
        options={[
          { value: 'open', label: words.listensOpen },
          { value: 'while held', label: words.listensHeld },
        ]}
        onChange={(chosen) => settings.change({ listens: chosen })}
      />
      {listens === 'while held' && keys?.listen === undefined ? (
        <p className={styles.quiet}>{words.noListenKey}</p>
      ) : null}
      <div className={styles.ticks}>
        <Tick
          label={words.earOnWaking}
          ticked={earOnWaking}
          onChange={(on) => settings.change({ earOnWaking: on })}
        />
        <Tick
          label={words.carrier}
          ticked={carrier}
          onChange={(on) => settings.change({ carrier: on })}
        />
        <Tick
          label={words.mayLeave}
          ticked={mayLeave}
          onChange={(on) => settings.change({ mayLeave: on })}
        />
        <Tick
          label={words.measuresRoom}
          ticked={measuresRoom}
          onChange={(on) => settings.change({ measuresRoom: on })}
        />
      </div>
      <div className={styles.buttons}>
        <Action onPress={() => go({ screen: 'sound-check' })}>{words.soundCheck}</Action>
        <Action onPress={learnListen}>{words.learnListen}</Action>
        <Action onPress={saveLog}>{words.saveEarLog}</Action>
      </div>
      <RecordingPart />
      {noLog ? <p role="status">{words.noEarLog}</p> : null}
    </section>
  );
}
