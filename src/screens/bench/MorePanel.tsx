import { useStore } from 'zustand';
import { allowed, cylindersOf, setUpOf } from '#counting';
import { MeasureForms } from '../measuring/MeasureForms';
import { TouchBar } from '../pieces/TouchBar';
import { useBench, useServices, useSettings } from '../services';
import { moreCommands } from './benchTouch';
import { benchWords } from './benchWords';
import styles from './more.module.css';
import { SaidSoFar } from './SaidSoFar';

interface Props {
  readonly open: boolean;
  readonly shut: () => void;
  /** Whether this window may command the bench now. */
  readonly commands: boolean;
}

/** What is seldom wanted: questions, corrections, another cylinder, and the other screens. */
export function MorePanel({ open, shut, commands }: Props) {
  const { touch, go, ear, toggleEar } = useServices();
  const listening = useStore(ear, ({ state }) => state === 'open' || state === 'opening');
  const { whichEar, units } = useSettings();
  const job = useBench((state) => state.job);
  if (!open) return null;
  const setUp = setUpOf(job);
  const cylinders =
    commands && setUp !== null && allowed(job).includes('chooseValve')
      ? cylindersOf(setUp).map(({ cylinder }) => cylinder)
      : [];
  const and = (act: () => void) => () => {
    shut();
    act();
  };
  const { jobId } = job;
  return (
    <section className={styles.more} aria-label={benchWords.more}>
      {commands ? (
        <TouchBar
          label={benchWords.more}
          targets={moreCommands(job).map(({ id, label, command }) => ({
            id,
            label,
            act: and(() => touch(command)),
          }))}
        />
      ) : null}
      {cylinders.length === 0 ? null : (
        <>
          <h2>{benchWords.goTo}</h2>
          <TouchBar
            label={benchWords.goTo}
            targets={[...cylinders]
              .sort((a, b) => a - b)
              .map((cylinder) => ({
                id: String(cylinder),
                label: String(cylinder),
                act: and(() => touch({ type: 'chooseValve', cylinder })),
              }))}
          />
        </>
      )}
      {commands ? <MeasureForms job={job} units={units} /> : null}
      {whichEar === 'none' ? null : (
        <TouchBar
          label={benchWords.ear.listen}
          targets={[
            {
              id: 'ear',
              label: listening ? benchWords.ear.shutIt : benchWords.ear.listen,
              act: and(toggleEar),
            },
          ]}
        />
      )}
      <TouchBar
        label={benchWords.toJobs}
        targets={[
          {
            id: 'results',
            label: benchWords.toResults,
            act: and(() => go({ screen: 'results', jobId })),
          },
          {
            id: 'set-up',
            label: benchWords.toSetUp,
            act: and(() => go({ screen: 'set-up', jobId })),
          },
          ...(setUp?.engine == null
            ? []
            : [
                {
                  id: 'crank',
                  label: benchWords.toCrank,
                  act: and(() => go({ screen: 'crank', jobId })),
                },
              ]),
          { id: 'jobs', label: benchWords.toJobs, act: and(() => go({ screen: 'jobs' })) },
          {
            id: 'settings',
            label: benchWords.toSettings,
            act: and(() => go({ screen: 'settings' })),
          },
          {
            id: 'practice',
            label: benchWords.practise,
            act: and(() => go({ screen: 'practice' })),
          },
          { id: 'about', label: benchWords.toAbout, act: and(() => go({ screen: 'about' })) },
        ]}
      />
      <SaidSoFar />
    </section>
  );
}
