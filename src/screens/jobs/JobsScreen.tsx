import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { JobCard } from '#shelf';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { Fold } from '../shell/Fold';
import { Page } from '../shell/Page';
import { BackupPart } from './BackupPart';
import { ComparePart } from './ComparePart';
import { countNowSetUp } from './countNow';
import { FileAction } from './FileAction';
import { JobLine } from './JobLine';
import styles from './jobs.module.css';
import { jobsWords as words } from './jobsWords';
import { SearchPart } from './SearchPart';
import { found, tagsOf } from './search';

/** The jobs on this device, newest first, and the ways to a new one. */
export function JobsScreen() {
  const { shelf, go } = useServices();
  const { jobs, loaded, trouble } = useStore(shelf.store);
  const { practised } = useSettings();
  const [problem, setProblem] = useState<string | null>(null);
  const [text, setText] = useState('');
  const [tag, setTag] = useState<string | null>(null);
  const [compared, setCompared] = useState<readonly string[]>([]);
  useEffect(() => void shelf.list(), [shelf]);
  const here = jobs.filter(({ status }) => status !== 'discarded');
  const discarded = jobs.filter(({ status }) => status === 'discarded');

  const shown = found(here, text, tag);
  const [first, second] = compared;

  /** The two chosen last. */
  function compare(id: string): void {
    setCompared(
      compared.includes(id) ? compared.filter((one) => one !== id) : [...compared, id].slice(-2),
    );
  }

  async function countNow(): Promise<void> {
    const last = await shelf.lastSetUp();
    const jobId = await shelf.create(countNowSetUp(last, words.quick(nextQuick(jobs))));
    if (jobId !== null) go({ screen: 'bench', jobId });
  }

  const list = (jobs: readonly JobCard[]) => (
    <ul className={styles.jobs}>
      {jobs.map((card) => (
        <JobLine
          key={card.id}
          card={card}
          onProblem={setProblem}
          compared={compared.includes(card.id)}
          onCompare={() => compare(card.id)}
        />
      ))}
    </ul>
  );

  return (
    <Page title={words.title}>
      <div className={styles.ways}>
        <Action main onPress={() => go({ screen: 'set-up', jobId: null })}>
          {words.setUp}
        </Action>
        <Action onPress={() => void countNow()}>{words.countNow}</Action>
        <Action onPress={() => go({ screen: 'before' })}>{words.before}</Action>
        <Action onPress={() => go({ screen: 'practice' })}>{words.practise}</Action>
        <ImportJob onProblem={setProblem} />
      </div>
      <p className={styles.quiet}>{words.countNowHint}</p>
      {!practised && <p className={styles.quiet}>{words.practiseHint}</p>}
      {[trouble, problem].map(
        (sentence) =>
          sentence !== null && (
            <p key={sentence} role="alert" className={styles.trouble}>
              {sentence}
            </p>
          ),
      )}
      {!loaded && <p role="status">{words.loading}</p>}
      {loaded && here.length === 0 && <p role="status">{words.empty}</p>}
      {here.length > 1 && (
        <SearchPart
          text={text}
          tag={tag}
          tags={tagsOf(here)}
          found={shown.length}
          of={here.length}
          onText={setText}
          onTag={setTag}
        />
      )}
      {first !== undefined && second === undefined && <p role="status">{words.compareWith}</p>}
      {first !== undefined && second !== undefined && (
        <ComparePart firstId={first} secondId={second} onDone={() => setCompared([])} />
      )}
      {here.length > 0 && shown.length === 0 && <p>{words.nothingFound}</p>}
      {list(shown)}
      {discarded.length > 0 && (
        <Fold title={words.discarded(discarded.length)}>{list(discarded)}</Fold>
      )}
      <BackupPart onProblem={setProblem} />
    </Page>
  );
}

/** The largest job file that is read, bytes: 8 million characters, none longer than four. */
const MOST_FILE_BYTES = 32_000_000;

function ImportJob({ onProblem }: { readonly onProblem: (sentence: string | null) => void }) {
  const { shelf } = useServices();
  return (
    <FileAction
      label={words.importJob}
      most={MOST_FILE_BYTES}
      onText={async (text) => {
        onProblem(null);
        await shelf.importJob(text);
      }}
      onUnreadable={(why) => onProblem(words.file[why])}
    />
  );
}

/** The first number no quick count has yet. */
function nextQuick(jobs: readonly JobCard[]): number {
  const names = new Set(jobs.map(({ name }) => name));
  let number = 1;
  while (names.has(words.quick(number))) number += 1;
  return number;
}
