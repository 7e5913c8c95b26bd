import { useMemo, useState } from 'react';
import { jobSheet } from '#counting';
import type { Scheme } from '#valvetrain';
import { useBench, useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { exportName } from '../shell/exportFile';
import { Page } from '../shell/Page';
import { useArrival } from '../shell/useArrival';
import { NotesForm } from './NotesForm';
import { Paper } from './Paper';
import { SchemeChoice } from './SchemeChoice';
import styles from './sheet.module.css';
import { sheetCsv, sheetJson } from './sheetFiles';
import { sheetWords as words } from './sheetWords';

/** The open job on one page to hand over, and its figures as files. */
export function SheetScreen() {
  const { go, save, build } = useServices();
  const { units } = useSettings();
  const job = useBench((state) => state.job);
  const [scheme, setScheme] = useState<Scheme | null>(null);
  const heading = useArrival(words.title);
  const sheet = useMemo(() => jobSheet(job, scheme ?? undefined), [job, scheme]);
  if (sheet === null) {
    return (
      <Page title={words.title}>
        <p role="status">{words.noJob}</p>
      </Page>
    );
  }
  const { name } = sheet.setUp;
  return (
    <main className={styles.page}>
      <div className={styles.desk}>
        <h1 className={styles.title} tabIndex={-1} ref={heading}>
          {words.of(name)}
        </h1>
        <div className={styles.actions}>
          <Action main onPress={() => window.print()}>
            {words.print}
          </Action>
          <Action onPress={() => save(exportName(name, 'csv'), sheetCsv(sheet, units))}>
            {words.csv}
          </Action>
          <Action onPress={() => save(exportName(`${name} sheet`), sheetJson(sheet, units, build))}>
            {words.json}
          </Action>
          <Action onPress={() => go({ screen: 'results', jobId: job.jobId })}>
            {words.toResults}
          </Action>
        </div>
        <p className={styles.quiet}>{words.papers}</p>
        <NotesForm key={job.jobId} notes={sheet.notes} />
        {sheet.order !== null && (
          <SchemeChoice order={sheet.order} units={units} choose={setScheme} />
        )}
      </div>
      <Paper sheet={sheet} units={units} version={build.version} />
    </main>
  );
}
