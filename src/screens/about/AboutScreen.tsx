import { useStore } from 'zustand';
import { shown } from '#words';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { Page } from '../shell/Page';
import styles from './about.module.css';
import { aboutWords as words } from './aboutWords';

/** What this is, which build, what the browser has, the cautions in full, and the licences. */
export function AboutScreen() {
  const { build, features, device, diagnostics, save, go } = useServices();
  const { offline, store, lasting } = useStore(device.store);
  return (
    <Page title={words.title}>
      <p className={styles.what}>{words.what}</p>
      <p>{words.privacy}</p>
      <section className={styles.part} aria-labelledby="about-practice">
        <h2 id="about-practice">{words.practice}</h2>
        <p>{words.practiceIs}</p>
        <Action onPress={() => go({ screen: 'practice' })}>{words.practise}</Action>
      </section>
      <dl className={styles.build}>
        <dt>{words.version}</dt>
        <dd>{build.version}</dd>
        <dt>{words.commit}</dt>
        <dd>{build.commit}</dd>
      </dl>
      <section className={styles.part} aria-labelledby="about-device">
        <h2 id="about-device">{words.device}</h2>
        <dl className={styles.build}>
          <dt>{words.offlineIs}</dt>
          <dd>{words.offline[offline]}</dd>
          <dt>{words.keptIs}</dt>
          <dd>{words.store[store]}</dd>
          <dt>{words.lastingIs}</dt>
          <dd>{words.lasting[lasting]}</dd>
        </dl>
      </section>
      <section className={styles.part} aria-labelledby="about-cautions">
        <h2 id="about-cautions">{words.cautions}</h2>
        {shown.cautions.map(({ heading, sentences }) => (
          <div key={heading} className={styles.caution}>
            <h3>{heading}</h3>
            <ul>
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </div>
        ))}
      </section>
      <section className={styles.part} aria-labelledby="about-features">
        <h2 id="about-features">{words.features}</h2>
        <table className={styles.features}>
          <thead>
            <tr>
              <th scope="col">{words.feature}</th>
              <th scope="col">{words.here}</th>
              <th scope="col">{words.without}</th>
            </tr>
          </thead>
          <tbody>
            {features.map(({ name, here, without }) => (
              <tr key={name} data-here={here}>
                <th scope="row">{name}</th>
                <td>{here ? words.yes : words.no}</td>
                <td>{without}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section className={styles.part} aria-labelledby="about-diagnostics">
        <h2 id="about-diagnostics">{words.diagnostics}</h2>
        <p>{words.diagnosticsAre}</p>
        <Action
          onPress={() => void diagnostics().then((text) => save(words.diagnosticsFile, text))}
        >
          {words.saveDiagnostics}
        </Action>
      </section>
      <section className={styles.part} aria-labelledby="about-licence">
        <h2 id="about-licence">{words.licence}</h2>
        <p>{words.licenceIs}</p>
        <p>
          <a className={styles.link} href={words.noticesFile}>
            {words.notices}
          </a>
        </p>
      </section>
    </Page>
  );
}
