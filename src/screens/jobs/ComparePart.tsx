import { useEffect, useState } from 'react';
import {
  type ComparedJobs,
  compareJobs,
  type JobState,
  jobSheet,
  type KindLengths,
} from '#counting';
import { valveKey } from '#valvetrain';
import type { Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import { amountText, lengthText } from '../results/orderText';
import { useServices, useSettings } from '../services';
import { factsOf } from '../sheet/factsText';
import { Action } from '../shell/Action';
import { Fold } from '../shell/Fold';
import { compareWords as words } from './compareWords';
import styles from './jobs.module.css';

interface Props {
  readonly firstId: string;
  readonly secondId: string;
  readonly onDone: () => void;
}

/** Two jobs beside each other: what lengths they need, and where their parts differ. */
export function ComparePart({ firstId, secondId, onDone }: Props) {
  const { shelf } = useServices();
  const { units } = useSettings();
  const [jobs, setJobs] = useState<readonly [JobState, JobState] | 'gone' | null>(null);
  useEffect(() => {
    let here = true;
    setJobs(null);
    void Promise.all([shelf.look(firstId), shelf.look(secondId)]).then(([first, second]) => {
      if (here) setJobs(first && second ? [first, second] : 'gone');
    });
    return () => {
      here = false;
    };
  }, [shelf, firstId, secondId]);
  return (
    <section className={styles.compare} aria-labelledby="compared">
      <h2 id="compared">{words.title}</h2>
      {jobs === null && <p role="status">{words.loading}</p>}
      {jobs === 'gone' && <p role="alert">{words.gone}</p>}
      {jobs !== null && jobs !== 'gone' && (
        <Compared first={jobs[0]} second={jobs[1]} units={units} />
      )}
      <Action onPress={onDone}>{words.done}</Action>
    </section>
  );
}

interface ComparedProps {
  readonly first: JobState;
  readonly second: JobState;
  readonly units: Units;
}

function Compared({ first, second, units }: ComparedProps) {
  const compared = compareJobs(first, second);
  const [a, b] = [jobSheet(first), jobSheet(second)];
  if (a === null || b === null) return <p role="alert">{words.gone}</p>;
  const names = [a.setUp.name, b.setUp.name] as const;
  const [facts, others] = [factsOf(a, units), factsOf(b, units)];
  return (
    <>
      <p>{compared.sameRecipe ? words.same : words.other}</p>
      <Table
        title={words.title}
        columns={['', ...names, words.difference]}
        rows={[
          ...lengthRows(compared, units),
          ...facts.map(({ name, lines }, at) => {
            const [text, other] = [lines, others[at]?.lines ?? []].map((some) => some.join('. '));
            return [name, text ?? '', other ?? '', text === other ? words.alike : words.differs];
          }),
        ]}
      />
      <Fold title={words.valves}>
        <Table
          title={words.valves}
          columns={[words.valve, ...names, words.difference]}
          rows={compared.valves.map(({ valve, firstMm, secondMm, differenceMm }) => [
            valveKey(valve),
            firstMm === null ? words.none : lengthText(units, firstMm),
            secondMm === null ? words.none : lengthText(units, secondMm),
            differenceMm === null ? words.none : amountText(units, differenceMm),
          ])}
        />
      </Fold>
    </>
  );
}

/** Means of intakes and exhausts by the length they need, and the lengths each job took. */
function lengthRows({ first, second }: ComparedJobs, units: Units): readonly string[][] {
  const kinds = (['intake', 'exhaust'] as const).map((valve) => {
    const of = (kinds: readonly KindLengths[] | undefined) => {
      const found = kinds?.find((kind) => kind.valve === valve);
      return found === undefined ? null : found.zeroLashMm + found.targetMm;
    };
    const [a, b] = [of(first?.kinds), of(second?.kinds)];
    return [
      words.needs[valve],
      a === null ? words.none : lengthText(units, a),
      b === null ? words.none : lengthText(units, b),
      a === null || b === null ? words.none : `${figureIn(units, b - a)} ${words.unit[units]}`,
    ];
  });
  const took = [first, second].map((job) =>
    job === null || job.lengthsMm.length === 0
      ? words.none
      : `${job.lengthsMm.map((mm) => lengthText(units, mm)).join(', ')} ${words.taken(job.fitted)}`,
  );
  const [a = '', b = ''] = took;
  return [...kinds, [words.took, a, b, a === b ? words.alike : words.differs]];
}

interface TableProps {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

function Table({ title, columns, rows }: TableProps) {
  const [corner, ...others] = columns;
  return (
    <table className={styles.table}>
      <caption>{title}</caption>
      <thead>
        <tr>
          {corner === '' ? <td /> : <th scope="col">{corner}</th>}
          {others.map((column, at) => (
            <th key={`${at === 0 ? 'first' : 'then'} ${column}`} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, first, second, difference]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td data-label={others[0]}>{first}</td>
            <td data-label={others[1]}>{second}</td>
            <td data-label={others[2]}>{difference}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
