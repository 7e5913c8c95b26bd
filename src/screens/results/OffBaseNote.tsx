import { type JobState, offBase, type Reading } from '#counting';
import { offBaseWords as words } from './offBaseWords';
import styles from './results.module.css';

interface Props {
  readonly job: JobState;
  readonly reading: Reading;
}

/** Says of a reading that it was counted where its valve was not well on base circle. */
export function OffBaseNote({ job, reading }: Props) {
  const found = offBase(job, reading);
  if (found === null) return null;
  return (
    <span className={styles.under} data-off-base="">
      {found.marginDeg > 0
        ? words.near(found.marginDeg, found.wantedDeg)
        : words.off(-found.marginDeg)}
    </span>
  );
}
