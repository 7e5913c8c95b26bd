import { useStore } from 'zustand';
import { engineSummary, setUpOf, stageOf } from '#counting';
import { shown } from '#words';
import { StateTag } from '../pieces/StateTag';
import { useBench, useServices } from '../services';
import { shellWords } from '../shell/shellWords';
import { useArrival } from '../shell/useArrival';
import { benchTitle, placeInWalk } from './benchFigures';
import { benchWords } from './benchWords';
import { EarTag } from './EarTag';
import styles from './header.module.css';

/** Which valve, how far along, and the states that must never be guessed at. */
export function BenchHeader() {
  const job = useBench((state) => state.job);
  const stage = stageOf(job);
  const place = placeInWalk(job);
  const { read, wanted } = engineSummary(job);
  const title = benchTitle(job, stage);
  const heading = useArrival(shellWords.bench);
  return (
    <header className={styles.header}>
      <h1 className={styles.title} tabIndex={-1} ref={heading}>
        {title === '' ? shown.stages[stage] : title}
      </h1>
      <p className={styles.place}>
        <span className={styles.jobName}>{setUpOf(job)?.name}</span>
        <span className={styles.along}>
          {place === null ? null : <span>{benchWords.position(place.n, place.of)}</span>}
          {wanted === 0 ? null : <span>{benchWords.readOf(read, wanted)}</span>}
        </span>
      </p>
      <div className={styles.tags}>
        <KeptTag />
        <AccessTag />
        <EarTag />
        <SilentTag />
      </div>
    </header>
  );
}

function KeptTag() {
  const alarm = useBench((state) => state.alarm);
  const kept = useBench(({ keptThrough, job }) => keptThrough >= job.seq);
  if (alarm !== null) {
    return (
      <span role="alert">
        <StateTag shape="broken" strong>
          {benchWords.notKept[alarm]}
        </StateTag>
      </span>
    );
  }
  return (
    <StateTag shape={kept ? 'ring full' : 'ring open'}>
      {kept ? benchWords.kept : benchWords.writing}
    </StateTag>
  );
}

function AccessTag() {
  const access = useBench((state) => state.access);
  const looksOn = access === 'other window' || access === 'newer log' || access === 'newer app';
  if (!looksOn) return null;
  return (
    <StateTag shape="barred" strong>
      {benchWords.readOnly}
    </StateTag>
  );
}

function SilentTag() {
  const silent = useStore(useServices().mouth, (mouth) => mouth.silent);
  if (silent === null) return null;
  return <StateTag shape="barred">{benchWords.silent[silent]}</StateTag>;
}
