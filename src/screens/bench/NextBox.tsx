import { useStore } from 'zustand';
import { allowed, type JobState, nextStage, nextStop, reminders, stageOf } from '#counting';
import { shown } from '#words';
import { useBench, useServices } from '../services';
import { benchWords, todo, todoOff } from './benchWords';
import { crankLine, turnLine } from './crankWords';
import styles from './next.module.css';
import { stopNamed, toCount } from './stopNamed';

/** What the builder does now, what a hold will do, what a tap adds, and what must not be forgotten. */
export function NextBox({ turnShown }: { readonly turnShown: boolean }) {
  const job = useBench((state) => state.job);
  const holding = useStore(useServices().keys, (keys) => keys.holding);
  const next = nextStage(job);
  const direction = job.open?.direction ?? 'on';
  const does = shown.holdWillDo(next, direction);
  const stage = stageOf(job);
  const taps = allowed(job).includes('step') && (stage === 'counting' || stage === 'landing');
  return (
    <section className={styles.next} aria-label={benchWords.next}>
      <p className={styles.todo}>{todoLine(job, turnShown)}</p>
      {next === null ? null : (
        <p className={holding === null ? styles.hold : styles.holding} data-next={next}>
          {holding === null ? (
            <>
              <span className={styles.press}>{benchWords.hold}</span>
              {does}
            </>
          ) : holding === 'next stage' ? (
            benchWords.letGo(does)
          ) : (
            shown.letGo[holding]
          )}
        </p>
      )}
      {taps ? (
        <p className={styles.tap}>
          <span className={styles.press}>{benchWords.tap}</span>
          {benchWords.tapDoes[stage]}
        </p>
      ) : null}
      <Reminders job={job} />
    </section>
  );
}

function todoLine(job: JobState, turnShown: boolean): string {
  const stage = stageOf(job);
  if (stage === 'turning') {
    const stop = nextStop(job);
    if (stop === null) return crankLine(null);
    const place = stopNamed(job, stop.position);
    return turnShown ? turnLine(place, stop, toCount(stop.position)) : crankLine(place);
  }
  const off = job.open?.direction === 'off';
  return off && (stage === 'to start' || stage === 'counting') ? todoOff[stage] : todo[stage];
}

function Reminders({ job }: { readonly job: JobState }) {
  const told = stageOf(job) === 'pushrods loose' ? 'lifters pressed in' : null;
  const open = reminders(job).filter(({ kind }) => kind !== 'question open' && kind !== told);
  if (open.length === 0) return null;
  return (
    <ul className={styles.reminders}>
      {open.slice(0, 2).map((what) => (
        <li key={what.kind}>{shown.reminder(what)}</li>
      ))}
    </ul>
  );
}
