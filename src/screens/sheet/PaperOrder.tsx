import { type JobSheet, lengthConvention } from '#counting';
import { type Units, writeCount } from '#words';
import { amountText, lengthText } from '../results/orderText';
import { orderWords } from '../results/orderWords';
import styles from './paper.module.css';
import { sheetWords as words } from './sheetWords';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
}

/** Pushrods to order, those fitted for the final check, or where to stop. */
export function PaperOrder({ sheet, units }: Props) {
  const { order, stops, setUp } = sheet;
  if (setUp.rockers === 'adjustable') {
    return (
      <section>
        <h3>{words.stops}</h3>
        {stops.map(({ group, stop }) => (
          <p key={group}>
            {words.stop(group, writeCount(stop.count48), amountText(units, stop.preload.preloadMm))}
          </p>
        ))}
      </section>
    );
  }
  const fitted = fittedLines(sheet, units);
  const groups = order?.taken.groups ?? [];
  const how = words.conventions[lengthConvention(setUp)];
  return (
    <section className={styles.order}>
      <div>
        <h3>{words.order}</h3>
        {order === null && <p>{words.noOrder}</p>}
        {order?.order.map(({ lengthMm, quantity, spares }) => (
          <p key={lengthMm}>
            <strong>{words.orderLine(lengthText(units, lengthMm), how, quantity, spares)}</strong>
          </p>
        ))}
        {order && <p>{words.fits(order.taken.usable, order.taken.of)}</p>}
      </div>
      {fitted.length > 0 ? (
        <div>
          <h3>{words.fitted}</h3>
          {fitted.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      ) : (
        groups.length > 1 && (
          <div>
            <h3>{words.goesTo}</h3>
            {groups.map(({ label, lengthMm }) => (
              <p key={orderWords.group(label)}>
                {orderWords.group(label)}{' '}
                {lengthMm === null ? orderWords.noneLeft : lengthText(units, lengthMm)}
              </p>
            ))}
          </div>
        )
      )}
    </section>
  );
}

function fittedLines({ valves }: JobSheet, units: Units): readonly string[] {
  const counts = new Map<string, number>();
  for (const { final } of valves) {
    if (final?.fitted == null) continue;
    const text = `${lengthText(units, final.fitted.mm)} ${words.conventions[final.fitted.convention]}`;
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts].map(([text, count]) => `${text}: ${count}`);
}
