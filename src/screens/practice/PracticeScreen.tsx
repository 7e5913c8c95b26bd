import { useStore } from 'zustand';
import { shown } from '#words';
import { countLine } from '../bench/benchFigures';
import { barCommands } from '../bench/benchTouch';
import { benchWords } from '../bench/benchWords';
import { EarNoticeBox, useEarNotice } from '../bench/EarNoticeBox';
import { EarTag } from '../bench/EarTag';
import { HeardLine } from '../bench/HeardLine';
import { QuestionBox, useOpenQuestion } from '../bench/QuestionBox';
import { useFreshCaptions } from '../bench/useFreshCaptions';
import { KeyStrip } from '../pieces/KeyStrip';
import { SaidLine } from '../pieces/SaidLine';
import { TouchBar, type TouchTarget } from '../pieces/TouchBar';
import { useBench, useServices, useSettings } from '../services';
import { Page } from '../shell/Page';
import { boltNow, bolts } from './bolts';
import { LessonPanel } from './LessonPanel';
import { type LessonStep, lessonStep } from './lesson';
import { PracticeDone } from './PracticeDone';
import styles from './practice.module.css';
import { isPractice } from './practiceJob';
import { practiceWords as words } from './practiceWords';
import { SimulatedBolt } from './SimulatedBolt';

/** The practice run: the app plays the engine, the builder counts on the real bench. */
export function PracticeScreen() {
  const here = useBench(({ jobId, access }) => isPractice(jobId) && access === 'writer');
  return (
    <Page title={words.title} wide>
      {here ? <Run /> : <p role="status">{words.opening}</p>}
    </Page>
  );
}

function Run() {
  const job = useBench((state) => state.job);
  const resting = useBench((state) => state.resting);
  const fresh = useFreshCaptions();
  // At rest nothing said in another job stands here, least of all where to turn its crank.
  const captions = resting ? [] : fresh;
  const question = useOpenQuestion();
  const notice = useEarNotice();
  const step = lessonStep(job, resting);
  const bolt = boltNow(job);
  const started = job.open !== null && job.open.phase !== 'to start';
  const count48 = started ? (job.open?.count48 ?? 0) : null;
  if (step === 'done') return <PracticeDone />;
  return (
    <div className={styles.run}>
      {step === 'wake' && <p className={styles.lead}>{words.lead}</p>}
      <section className={styles.engine} aria-label={words.bolt}>
        <h2>
          {words.stepOf(bolt === null ? bolts.length : bolts.indexOf(bolt) + 1, bolts.length)}
        </h2>
        {bolt !== null && <SimulatedBolt bolt={bolt} count48={count48} />}
      </section>
      <LessonPanel step={step} bolt={bolt} />
      <section className={styles.talk} aria-label={words.counted}>
        <p className={styles.count} data-count="">
          {count48 === null ? (
            words.noCount
          ) : (
            <>
              <strong>{countLine(job, count48)}</strong> {words.quarters}
            </>
          )}
        </p>
        <EarTag />
        <HeardLine />
        <SaidLine label={words.said} lines={captions} silent={words.notSaid} />
        {notice ? (
          <EarNoticeBox />
        ) : (
          question !== null && (
            <QuestionBox key={question.seq} question={question.question} onLapse={question.lapse} />
          )
        )}
      </section>
      <div className={styles.touch}>
        <Touch step={step} />
      </div>
      <div className={styles.keys}>
        <Keys />
      </div>
    </div>
  );
}

/** The bench's own touches, and the ear's. */
function Touch({ step }: { readonly step: LessonStep }) {
  const { touch, ear, toggleEar } = useServices();
  const job = useBench((state) => state.job);
  const { whichEar } = useSettings();
  const listening = useStore(ear, ({ state }) => state === 'open' || state === 'opening');
  const wake: TouchTarget = {
    id: 'wake',
    label: benchWords.goOn,
    leads: true,
    act: () => touch({ type: 'advance' }),
  };
  const earTarget: TouchTarget = {
    id: 'ear',
    label: listening ? words.shutEar : words.listen,
    act: toggleEar,
  };
  const targets: readonly TouchTarget[] =
    step === 'wake'
      ? [wake]
      : barCommands(job).map(({ command, ...target }) => ({
          ...target,
          act: () => touch(command),
        }));
  return (
    <TouchBar
      label={words.touch}
      targets={whichEar === 'none' ? targets : [...targets, earTarget]}
    />
  );
}

const keyWords: Readonly<Record<string, string>> = shown.keys;

function Keys() {
  const strip = useStore(useServices().keys, (keys) => keys.strip);
  const { keysOn } = useSettings();
  return (
    <KeyStrip
      label={words.keys}
      items={strip.map(({ meaning, label }) => ({
        meaning: keyWords[meaning] ?? meaning,
        keys: label,
      }))}
      off={keysOn ? null : words.keysOff}
    />
  );
}
