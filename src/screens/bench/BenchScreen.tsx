import { useStore } from 'zustand';
import { stageOf } from '#counting';
import { shown } from '#words';
import { KeyStrip } from '../pieces/KeyStrip';
import { SaidLine } from '../pieces/SaidLine';
import { type StripItem, useBench, useServices, useSettings } from '../services';
import { BenchDial } from './BenchDial';
import { BenchGauge } from './BenchGauge';
import { BenchHeader } from './BenchHeader';
import { BenchPlan } from './BenchPlan';
import { BenchTouch } from './BenchTouch';
import styles from './bench.module.css';
import { benchWords } from './benchWords';
import { Cautions } from './Cautions';
import { EarNoticeBox, useEarNotice } from './EarNoticeBox';
import { HeardLine } from './HeardLine';
import { NextBox } from './NextBox';
import { QuestionBox, useOpenQuestion } from './QuestionBox';
import { ReadOnlyPanel } from './ReadOnlyPanel';
import { RestingPanel } from './RestingPanel';
import { useFreshCaptions } from './useFreshCaptions';
import { useTurnShown } from './useTurnShown';

/** The bench of the open job, readable at three metres and worked without hands on the screen. */
export function BenchScreen() {
  const stage = useBench((state) => stageOf(state.job));
  const turnShown = useTurnShown();
  return (
    <main className={styles.bench} data-stage={stage}>
      <BenchHeader />
      {stage === 'cautions' ? (
        <Cautions />
      ) : (
        <>
          <div className={styles.dialPanel}>
            <BenchDial turnShown={turnShown} />
          </div>
          <BenchGauge />
          <BenchPlan turnShown={turnShown} />
        </>
      )}
      <Talk turnShown={turnShown} />
      <div className={styles.touch}>
        <BenchTouch />
      </div>
      <div className={styles.keys}>
        <Keys />
      </div>
    </main>
  );
}

/** What was said and what is next; the rest, a question or a lost claim stands in their place. */
function Talk({ turnShown }: { readonly turnShown: boolean }) {
  const resting = useBench((state) => state.resting);
  const access = useBench((state) => state.access);
  const captions = useFreshCaptions();
  const open = useOpenQuestion();
  const notice = useEarNotice();
  if (resting && access === 'writer' && !notice) return <RestingPanel />;
  const box =
    access === 'other window' || access === 'newer log' || access === 'newer app' ? (
      <ReadOnlyPanel why={access} />
    ) : notice ? (
      <EarNoticeBox />
    ) : open === null ? (
      <NextBox turnShown={turnShown} />
    ) : (
      <QuestionBox key={open.seq} question={open.question} onLapse={open.lapse} />
    );
  return (
    <>
      <div className={styles.saidPanel}>
        <HeardLine />
        <SaidLine label={benchWords.said} lines={captions} silent={benchWords.notSaid} />
      </div>
      {box}
    </>
  );
}

function Keys() {
  const strip = useStore(useServices().keys, (keys) => keys.strip);
  const { keysOn } = useSettings();
  return (
    <KeyStrip
      label={benchWords.keys}
      items={strip.map(({ meaning, label }) => ({ meaning: meaningWords(meaning), keys: label }))}
      off={keysOn ? null : benchWords.keysOff}
    />
  );
}

const keyWords: Readonly<Record<string, string>> = shown.keys;

function meaningWords(meaning: StripItem['meaning']): string {
  return keyWords[meaning] ?? meaning;
}
