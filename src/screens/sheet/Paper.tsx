import type { JobSheet } from '#counting';
import type { Units } from '#words';
import { KindsPicture } from '../pictures/KindsPicture';
import { factsOf } from './factsText';
import { PaperHead } from './PaperHead';
import { PaperOrder } from './PaperOrder';
import { PaperPlan } from './PaperPlan';
import styles from './paper.module.css';
import { ReadingsTable } from './ReadingsTable';
import { sheetWords as words } from './sheetWords';
import { watchLines } from './watchText';

interface Props {
  readonly sheet: JobSheet;
  readonly units: Units;
  readonly version: string;
}

/** The sheet as it is printed: black on white whatever the shop's light, and told by shape and word. */
export function Paper({ sheet, units, version }: Props) {
  return (
    <article className={styles.paper} data-paper="" aria-label={words.title}>
      <PaperHead sheet={sheet} />
      <section className={styles.facts}>
        {factsOf(sheet, units).map(({ name, lines }) => (
          <div key={name}>
            <h3>{name}</h3>
            {lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
        ))}
      </section>
      <ReadingsTable sheet={sheet} units={units} />
      <div className={styles.lower}>
        <div className={styles.side}>
          <PaperPlan sheet={sheet} units={units} />
        </div>
        <div className={styles.side}>
          <PaperOrder sheet={sheet} units={units} />
          <section>
            <h3>{words.watch}</h3>
            {watchLines(sheet, units).map((line) => (
              <p key={line}>{line}</p>
            ))}
          </section>
          <KindsPicture sheet={sheet} units={units} tabled={false} />
        </div>
      </div>
      <section className={styles.cautions}>
        <div className={styles.ends}>
          <h3>{words.cautions}</h3>
          <p className={styles.quiet}>{words.made(version)}</p>
        </div>
        <ul>
          {words.cautionLines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </article>
  );
}
