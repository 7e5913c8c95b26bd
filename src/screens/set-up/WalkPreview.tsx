import type { CrankPlan } from '#counting';
import { describeProof } from '#valvetrain';
import styles from './set-up.module.css';
import { walkWords as words } from './walkWords';

/** The stops of the walk as set up so far: what is counted at each, and the least margin. */
export function WalkPreview({ plan }: { readonly plan: CrankPlan | null }) {
  if (plan === null || plan.positions.length === 0)
    return <p className={styles.quiet}>{words.noPlan}</p>;
  return (
    <>
      <table className={styles.stops}>
        <caption>{words.plan}</caption>
        <thead>
          <tr>
            <th scope="col">{words.stop}</th>
            <th scope="col">{words.count}</th>
            <th scope="col">{words.least}</th>
          </tr>
        </thead>
        <tbody>
          {plan.positions.map(({ position, proof, leastMarginDeg }, place) => (
            <tr key={position.angleDeg}>
              <th scope="row">{place + 1}</th>
              <td>
                <strong>{words.countAt(position.valves)}</strong>
                <span>{describeProof(proof)}</span>
              </td>
              <td>{words.deg(leastMarginDeg)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{words.whole(plan)}</p>
    </>
  );
}
