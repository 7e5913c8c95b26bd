import { useState } from 'react';
import { figuresForReading, type JobState, type Reading, setUpOf } from '#counting';
import type { ValveKind } from '#valvetrain';
import { caption, shown, type Units } from '#words';
import { VerdictMark } from '../pieces/VerdictMark';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { submitFromScreen } from '../shell/submit';
import { TextField } from '../shell/TextField';
import { countText, preloadText, unnamedReadings } from './resultRows';
import styles from './results.module.css';
import { resultsWords as words } from './resultsWords';

/** The most cylinders a name may be given for while no engine is described. */
const MOST_WITHOUT_ENGINE = 12;

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** Readings counted before their valve had a name, each with a way to name it. */
export function UnnamedReadings({ job, units }: Props) {
  const unnamed = unnamedReadings(job);
  if (unnamed.length === 0) return null;
  return (
    <section className={styles.unnamed} aria-labelledby="unnamed">
      <h2 id="unnamed">{words.unnamed}</h2>
      {unnamed.map((reading, at) => (
        <Unnamed key={reading.id} job={job} reading={reading} place={at + 1} units={units} />
      ))}
    </section>
  );
}

interface OneProps extends Props {
  readonly reading: Reading;
  readonly place: number;
}

function Unnamed({ job, reading, place, units }: OneProps) {
  const { bench } = useServices();
  const settings = useSettings();
  const [cylinder, setCylinder] = useState('');
  const [kind, setKind] = useState<ValveKind>('exhaust');
  const [trouble, setTrouble] = useState('');
  const figures = figuresForReading(job, reading);
  const most = setUpOf(job)?.engine?.cylinders ?? MOST_WITHOUT_ENGINE;
  const title = words.unnamedAt(countText(reading), place);

  function name(): void {
    const number = Number(cylinder);
    if (!Number.isInteger(number) || number < 1 || number > most) {
      setTrouble(words.nameMissing(most));
      return;
    }
    const told = submitFromScreen(bench, {
      type: 'nameReading',
      reading: reading.id,
      valve: { cylinder: number, valve: kind },
    });
    if (told === null) return;
    const context = { ...settings, hands: 'alone' as const, unkept: false };
    setTrouble(`${words.notNamed} ${told.map((one) => caption(one, context)).join(' ')}`);
  }

  return (
    <section className={styles.unnamedOne} aria-label={title}>
      <p>
        <strong>{title}</strong>, {preloadText(units, figures)}{' '}
        {figures.verdict !== null && (
          <span className={styles.verdict}>
            <VerdictMark verdict={figures.verdict} />
            {shown.verdicts[figures.verdict]}
          </span>
        )}
      </p>
      <div className={styles.nameRow}>
        <TextField
          field={`name-${reading.id}`}
          label={words.nameCylinder}
          figures
          value={cylinder}
          onChange={setCylinder}
          notes={trouble === '' ? [] : [{ sentence: trouble }]}
        />
        <Choice
          field={`kind-${reading.id}`}
          label={words.nameValve}
          value={kind}
          options={[
            { value: 'exhaust', label: words.valve.exhaust },
            { value: 'intake', label: words.valve.intake },
          ]}
          onChange={setKind}
        />
        <Action onPress={name}>{words.nameIt}</Action>
      </div>
    </section>
  );
}
