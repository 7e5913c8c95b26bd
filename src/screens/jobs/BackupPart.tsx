import { useState } from 'react';
import { useServices } from '../services';
import { Action } from '../shell/Action';
import { Fold } from '../shell/Fold';
import { FileAction } from './FileAction';
import styles from './jobs.module.css';
import { jobsWords as words } from './jobsWords';
import { restoredWords } from './restoredWords';

/** The largest backup that is read, bytes: 64 million characters, none longer than four. */
const MOST_BACKUP_BYTES = 256_000_000;

interface Props {
  readonly onProblem: (sentence: string | null) => void;
}

/** Everything on this device out into one file, and in again. */
export function BackupPart({ onProblem }: Props) {
  const { shelf, save } = useServices();
  const [done, setDone] = useState<string | null>(null);

  async function backUp(): Promise<void> {
    onProblem(null);
    const text = await shelf.backUp();
    if (text !== null) save(words.backupFile, text);
    setDone(text === null ? null : words.backedUp);
  }

  async function restore(text: string): Promise<void> {
    onProblem(null);
    const report = await shelf.restoreBackup(text);
    setDone(report === null ? null : restoredWords(report));
  }

  return (
    <Fold title={words.backup}>
      <p className={styles.quiet}>{words.backupHint}</p>
      <div className={styles.ways}>
        <Action onPress={() => void backUp()}>{words.backUp}</Action>
        <FileAction
          label={words.restoreBackup}
          most={MOST_BACKUP_BYTES}
          onText={restore}
          onUnreadable={(why) => onProblem(words.file[why])}
        />
      </div>
      <p role="status">{done}</p>
    </Fold>
  );
}
