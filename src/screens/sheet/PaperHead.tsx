import type { JobSheet } from '#counting';
import { languageTag } from '#words';
import styles from './paper.module.css';
import { sheetWords as words } from './sheetWords';

/** The job's name, who and when. What is not known is a line to write on. */
export function PaperHead({ sheet }: { readonly sheet: JobSheet }) {
  const { setUp, notes, counted } = sheet;
  return (
    <header className={styles.head}>
      <h2>
        <span className={styles.kind}>{words.title}</span> {setUp.name}
      </h2>
      <dl>
        <div>
          <dt>{words.builder}</dt>
          <dd>{notes.builder || words.blank}</dd>
        </div>
        <div>
          <dt>{words.customer}</dt>
          <dd>{notes.customer || words.blank}</dd>
        </div>
        <div>
          <dt>{words.counted}</dt>
          <dd>{counted === null ? words.notCounted : during(counted.from, counted.to)}</dd>
        </div>
        {notes.remark !== '' && (
          <div>
            <dt>{words.remark}</dt>
            <dd>{notes.remark}</dd>
          </div>
        )}
      </dl>
    </header>
  );
}

function during(from: number, to: number): string {
  const [first, last] = [from, to].map((at) =>
    new Date(at).toLocaleDateString(languageTag, { dateStyle: 'medium' }),
  );
  return words.during(first ?? '', last ?? '');
}
