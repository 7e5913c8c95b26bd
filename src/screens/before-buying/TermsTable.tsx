import type { PlannedLength } from '#valvetrain';
import type { Units } from '#words';
import styles from './before.module.css';
import { amountUnit, giveText, signedAmount } from './planFigures';
import type { TermShown } from './planTerms';
import { planWords as words } from './planWords';

interface Props {
  readonly terms: readonly TermShown[];
  readonly planned: PlannedLength;
  readonly units: Units;
}

/** Every term with its sign, its amount, what it rests on and how far it may be off, and their sum. */
export function TermsTable({ terms, planned, units }: Props) {
  const unit = amountUnit(units);
  return (
    <table className={styles.terms}>
      <caption>{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{words.columns.term}</th>
          <th scope="col">{`${words.columns.entered}, ${unit}`}</th>
          <th scope="col">{`${words.columns.longer}, ${unit}`}</th>
        </tr>
      </thead>
      <tbody>
        {terms.map(({ mark, name, formula, basis, entered, give }) => (
          <tr key={mark.place} data-term={mark.place}>
            <th scope="row">
              <span className={styles.termName}>
                <span className={styles.badge} aria-hidden="true">
                  {mark.number}
                </span>
                {name}
              </span>
              <span className={styles.under}>{basis}</span>
            </th>
            <td>
              {entered}
              <span className={styles.under}>{formula}</span>
            </td>
            <td>
              <strong>{mark.amount}</strong>
              <span className={styles.under}>{give === '' ? words.noGive : give}</span>
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr data-term="in all">
          <th scope="row">{words.inAll}</th>
          <td />
          <td>
            <strong>{signedAmount(units, planned.longer.mm)}</strong>
            <span className={styles.under}>{giveText(units, planned.longer).trim()}</span>
          </td>
        </tr>
      </tfoot>
    </table>
  );
}
