import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { shown } from '#words';
import { type KeyAct, useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { SelectField } from '../shell/SelectField';
import { Tick } from '../shell/Tick';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

const meanings: Readonly<Record<string, string>> = shown.keys;

const ACTS: readonly KeyAct[] = [
  'one more',
  'half',
  'next stage',
  'zero',
  'seat and accept',
  'take back',
  'say again',
  'ear',
];

/** The keys as they now are, and learning the pedal by pressing it. */
export function KeysPart() {
  const { settings, keys, learnPedal, learnKey, stopLearning, forgetKeys } = useServices();
  const { keysOn, keys: learnedKeys } = useSettings();
  const { strip, learning, needsStageKey } = useStore(keys);
  const [act, setAct] = useState<KeyAct>('next stage');
  useEffect(() => stopLearning, [stopLearning]);
  return (
    <section className={`${styles.part} ${styles.keys}`} aria-labelledby="part-keys">
      <h2 id="part-keys">{words.keys}</h2>
      <Tick
        label={words.keysOn}
        ticked={keysOn}
        onChange={(on) => settings.change({ keysOn: on })}
      />
      {learning !== null && (
        <div className={styles.learning} role="status">
          <p>{learning.sentence}</p>
          {learning.problems.map((problem) => (
            <p key={problem}>{problem}</p>
          ))}
        </div>
      )}
      <div className={styles.buttons}>
        {learning === null ? (
          <Action main onPress={learnPedal}>
            {words.learn}
          </Action>
        ) : (
          <Action onPress={stopLearning}>{learning.done ? words.learned : words.stop}</Action>
        )}
        <Action disabled={learnedKeys === null} onPress={forgetKeys}>
          {words.forget}
        </Action>
      </div>
      {needsStageKey && <p role="status">{words.needsStageKey}</p>}
      <SelectField
        field="key-act"
        label={words.learnAnother}
        value={act}
        groups={[
          { label: '', options: ACTS.map((value) => ({ value, label: shown.keys[value] })) },
        ]}
        onChange={(value) => setAct(ACTS.find((one) => one === value) ?? act)}
      />
      <div className={styles.buttons}>
        <Action onPress={() => learnKey(act)}>{words.learnKey}</Action>
        <Action onPress={() => window.print()}>{words.printStrip}</Action>
      </div>
      <table className={styles.strip} data-paper="">
        <caption>{words.strip}</caption>
        <thead>
          <tr>
            <th scope="col">{words.key}</th>
            <th scope="col">{words.does}</th>
          </tr>
        </thead>
        <tbody>
          {strip.map(({ meaning, label }) => (
            <tr key={meaning}>
              <td>{label}</td>
              <td>{meanings[meaning] ?? meaning}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
