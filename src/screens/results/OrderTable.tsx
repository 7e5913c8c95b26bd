import type { PushrodAnswer } from '#counting';
import type { Units } from '#words';
import { lengthText } from './orderText';
import { orderWords as words } from './orderWords';
import styles from './results.module.css';

/** The order as a list, spares included. */
export function OrderTable({
  answer,
  units,
}: {
  readonly answer: PushrodAnswer;
  readonly units: Units;
}) {
  const { order } = answer;
  const stock = order.some(({ left }) => left !== null);
  return (
    <table className={styles.table} data-order="">
      <caption>{words.order}</caption>
      <thead>
        <tr>
          <th scope="col">{words.orderColumns.length}</th>
          <th scope="col">{words.orderColumns.quantity}</th>
          <th scope="col">{words.orderColumns.spares}</th>
          <th scope="col">{words.orderColumns.total}</th>
          {stock && <th scope="col">{words.orderColumns.left}</th>}
        </tr>
      </thead>
      <tbody>
        {order.map(({ lengthMm, quantity, spares, sparesShort, left }) => (
          <tr key={lengthMm}>
            <th scope="row">{lengthText(units, lengthMm)}</th>
            <td>{quantity}</td>
            <td>
              {spares}
              {sparesShort > 0 && (
                <span className={styles.under}>{words.sparesShort(sparesShort)}</span>
              )}
            </td>
            <td>{quantity + spares}</td>
            {stock && <td>{left}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
