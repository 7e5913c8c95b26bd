import styles from './crank.module.css';
import type { CylinderNow, ValveNow } from './crankNow';
import { crankWords as words } from './crankWords';
import { MotionMark } from './MotionMark';

/** The picture as a table: every piston and every valve, in firing order. */
export function ValveTable({ cylinders }: { readonly cylinders: readonly CylinderNow[] }) {
  return (
    <table className={styles.table}>
      <caption>{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{words.columns.cylinder}</th>
          <th scope="col">{words.columns.piston}</th>
          <th scope="col">{words.columns.exhaust}</th>
          <th scope="col">{words.columns.intake}</th>
        </tr>
      </thead>
      <tbody>
        {cylinders.map(({ cylinder, piston, exhaust, intake }) => (
          <tr key={cylinder} data-cylinder={cylinder}>
            <th scope="row">{cylinder}</th>
            <td>{words.piston(piston)}</td>
            <Valve now={exhaust} />
            <Valve now={intake} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Valve({ now }: { readonly now: ValveNow }) {
  return (
    <td className={now.countable ? styles.countable : undefined}>
      <span className={styles.state}>
        <MotionMark motion={now.motion} />
        <strong>{words.motions[now.motion]}</strong>
      </span>
      <span className={styles.under}>{words.offRamp(now.marginDeg)}</span>
      <span className={styles.under}>{now.countable ? words.countable : words.notCountable}</span>
    </td>
  );
}
