import { shown } from '#words';
import styles from './cautions.module.css';

/** The cautions in full, once a job, in place of the dial. */
export function Cautions() {
  return (
    <section className={styles.cautions} aria-label={shown.stages.cautions}>
      <div className={styles.columns}>
        {shown.cautions.map(({ heading, sentences }) => (
          <div key={heading} className={styles.caution}>
            <h2>{heading}</h2>
            {sentences.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
        ))}
      </div>
    </section>
  );
}
