import { useEffect } from 'react';
import { useStore } from 'zustand';
import { sayEar } from '#words';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { Page } from '../shell/Page';
import { CheckVerdict } from './CheckVerdict';
import styles from './sound-check.module.css';
import { soundCheckWords as words } from './soundCheckWords';

/** A check of the room and the builder's voice, answered without a hand. */
export function SoundCheckScreen() {
  const { soundCheck, go } = useServices();
  const { state, kept, unkept } = useStore(soundCheck.store);
  const under = state === 'fetching' || state === 'running';
  // Elsewhere nothing tells that it listens.
  useEffect(() => soundCheck.stop, [soundCheck]);
  return (
    <Page title={words.title}>
      <p>{words.lead}</p>
      <p>{words.keeps}</p>
      <Asked />
      <CheckVerdict />
      <div className={styles.buttons}>
        {under ? (
          <Action onPress={soundCheck.stop}>{words.stop}</Action>
        ) : (
          <Action main onPress={soundCheck.start}>
            {state === 'idle' ? words.begin : words.again}
          </Action>
        )}
        <Action onPress={() => go({ screen: 'settings' })}>{words.toSettings}</Action>
      </div>
      {unkept && <p role="alert">{words.unkept}</p>}
      <div className={styles.kept}>
        <p>{kept ? words.kept : words.forgotten}</p>
        {kept && !under ? (
          <div className={styles.buttons}>
            <Action onPress={soundCheck.forget}>{words.forget}</Action>
          </div>
        ) : null}
      </div>
    </Page>
  );
}

/** What the builder is to say now, large enough to be read from the bench. */
function Asked() {
  const { soundCheck } = useServices();
  const { state, phase, asked, done, of, fetched, why } = useStore(soundCheck.store);
  switch (state) {
    case 'idle':
    case 'over':
      return null;
    case 'failed':
      return (
        <p role="alert">
          {words.failed(sayEar({ state: 'dead', why: why ?? 'unknown', count48: null }))}
        </p>
      );
    case 'fetching':
      return (
        <p className={styles.asked} role="status">
          {fetched === null || fetched >= 1
            ? words.opening
            : words.fetching(Math.floor(fetched * 100))}
        </p>
      );
    case 'running':
      return (
        <div className={styles.asked} role="status">
          <p>{phase === 'room' ? words.quiet : words.say}</p>
          {asked === null ? null : <p className={styles.word}>{asked}</p>}
          <p>{words.progress(done, of)}</p>
        </div>
      );
    default: {
      const never: never = state;
      return never;
    }
  }
}
