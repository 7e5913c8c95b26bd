import { useEffect } from 'react';
import { useStore } from 'zustand';
import { shown } from '#words';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { Tick } from '../shell/Tick';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

const meanings: Readonly<Record<string, string>> = shown.keys;

/** The keys as they now are, and learning the pedal by pressing it. */
export function KeysPart() {
  const { settings, keys, learnPedal, stopLearning, forgetKeys } = useServices();
  const { keysOn, keys: learnedKeys } = useSettings();
  const { strip, learning } = useStore(keys);
  useEffect(() => stopLearning, [stopLearning]);
  return (
    <section className={styles.part} aria-labelledby="part-keys">
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
      <table className={styles.strip}>
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
