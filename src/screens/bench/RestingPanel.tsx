import { announceReturn, setUpOf } from '#counting';
import { type SayingContext, say } from '#words';
import { useBench, useSettings } from '../services';
import { benchWords } from './benchWords';
import styles from './panels.module.css';

/** The bench at rest: where the builder stands, and that the next press counts nothing (C13). */
export function RestingPanel() {
  const job = useBench((state) => state.job);
  const { level, units, numbers, lengths } = useSettings();
  const setUp = setUpOf(job);
  const context: SayingContext = {
    level,
    units,
    numbers,
    lengths,
    hands: setUp?.hands ?? 'alone',
    unkept: false,
    calling: setUp?.calling.way ?? 'quarters',
  };
  return (
    <section className={styles.resting}>
      <p className={styles.restLine}>{benchWords.rest}</p>
      <p className={styles.restCounts}>{benchWords.restCounts}</p>
      <p className={styles.restWhere}>
        {announceReturn(job)
          .map((told) => say(told, context))
          .join(' ')}
      </p>
    </section>
  );
}
