import { expansionPerK, type HotEstimate } from '#valvetrain';
import type { Units } from '#words';
import styles from './before.module.css';
import { amountUnit, pushrodText, signedAmount } from './planFigures';
import { planWords as words } from './planWords';

interface Props {
  readonly estimate: HotEstimate;
  readonly units: Units;
}

/** What grows, what was assumed of it, and what it does to the preload. */
export function HotTable({ estimate, units }: Props) {
  const { assumptions, byStackMm, byPushrodMm, byStemMm } = estimate;
  const { stack, pushrod, stem } = assumptions;
  return (
    <table className={styles.terms}>
      <caption>{words.hotTable}</caption>
      <thead>
        <tr>
          <th scope="col">{words.hotColumns.piece}</th>
          <th scope="col" className={styles.words}>
            {words.hotColumns.assumed}
          </th>
          <th scope="col">{`${words.hotColumns.change}, ${amountUnit(units)}`}</th>
        </tr>
      </thead>
      <tbody>
        <tr data-hot="stack">
          <th scope="row">{words.stack}</th>
          <td className={styles.words}>
            {stack.map(({ material, lengthMm, riseK }) => (
              <span key={`${material} ${lengthMm}`} className={styles.assumed}>
                {`${words.materials[material]}: ${assumedText(units, lengthMm, riseK, expansionPerK[material])}`}
              </span>
            ))}
          </td>
          <td>{signedAmount(units, byStackMm)}</td>
        </tr>
        <tr data-hot="pushrod">
          <th scope="row">{words.pieces.pushrod}</th>
          <td className={styles.words}>
            {`${words.materials[pushrod.material]}: ${assumedText(units, pushrod.lengthMm, pushrod.riseK, expansionPerK[pushrod.material])}`}
          </td>
          <td>{signedAmount(units, byPushrodMm)}</td>
        </tr>
        {stem !== undefined && (
          <tr data-hot="stem">
            <th scope="row">{words.stem}</th>
            <td className={styles.words}>
              {assumedText(units, stem.lengthMm, stem.riseK, stem.expansionPerK)}
            </td>
            <td>{signedAmount(units, byStemMm)}</td>
          </tr>
        )}
      </tbody>
      <tfoot>
        <tr data-hot="in all">
          <th scope="row">{words.hotSum}</th>
          <td />
          <td>
            <strong>{signedAmount(units, estimate.preloadChangeMm)}</strong>
          </td>
        </tr>
      </tfoot>
    </table>
  );
}

function assumedText(units: Units, lengthMm: number, riseK: number, perK: number): string {
  const millionths = String(Math.round(perK * 1e7) / 10);
  return words.assumed(pushrodText(units, lengthMm), String(riseK), millionths);
}
