import { useState } from 'react';
import { engineSummary, setUpOf } from '#counting';
import { MeasureForms } from '../measuring/MeasureForms';
import { Pictures } from '../pictures/Pictures';
import { useBench, useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { exportJob } from '../shell/exportFile';
import { Page } from '../shell/Page';
import { DistrustPanel } from './DistrustPanel';
import { FinalCheckPanel } from './FinalCheckPanel';
import { HistoryPart } from './HistoryPart';
import { OrderPanel } from './OrderPanel';
import { RepeatsPanel } from './RepeatsPanel';
import { ResultsPlan } from './ResultsPlan';
import { ResultsTable } from './ResultsTable';
import { cylinderRows } from './resultRows';
import styles from './results.module.css';
import { resultsWords as words } from './resultsWords';
import { SettlingPanel } from './SettlingPanel';
import { sureWords } from './sureWords';
import { ToSheet } from './ToSheet';
import { TravelPanel } from './TravelPanel';
import { UnnamedReadings } from './UnnamedReadings';

/** All readings of the open job, and what they come to. */
export function ResultsScreen() {
  const services = useServices();
  const { units } = useSettings();
  const job = useBench((state) => state.job);
  const [failed, setFailed] = useState(false);
  const setUp = setUpOf(job);
  const rows = cylinderRows(job);
  const { read, wanted } = engineSummary(job);
  const name = setUp?.name ?? words.title;
  return (
    <Page title={setUp === null ? words.title : words.of(name)} wide>
      <p className={styles.lead}>
        {job.round.purpose === 'final check' && <strong>{words.finalCheck}</strong>}
        {job.round.number > 1 && <span>{words.round(job.round.number)}</span>}
        {wanted > 0 && <span>{words.read(read, wanted)}</span>}
      </p>
      {job.readings.length === 0 && (
        <div className={styles.empty}>
          <p>{words.nothingYet}</p>
          <Action main onPress={() => services.go({ screen: 'bench', jobId: job.jobId })}>
            {words.toBench}
          </Action>
        </div>
      )}
      <UnnamedReadings job={job} units={units} />
      <div className={styles.columns}>
        {rows.length > 0 && (
          <div>
            <ResultsTable job={job} rows={rows} units={units} />
            <p className={styles.quiet}>
              {words.band} {sureWords.bias}
            </p>
            <RepeatsPanel job={job} units={units} />
            <SettlingPanel job={job} units={units} />
            <TravelPanel job={job} units={units} />
            <MeasureForms job={job} units={units} />
          </div>
        )}
        <div className={styles.side}>
          <FinalCheckPanel job={job} units={units} />
          <DistrustPanel job={job} units={units} />
          <OrderPanel job={job} units={units} />
          <HistoryPart job={job} units={units} />
          {setUp?.engine != null && (
            <ResultsPlan job={job} engine={setUp.engine} rows={rows} units={units} />
          )}
          <ToSheet jobId={job.jobId} />
          <Action
            onPress={() => {
              void exportJob(services, job.jobId, name).then((done) => setFailed(!done));
            }}
          >
            {words.exportJob}
          </Action>
          {failed && <p role="alert">{words.exportFailed}</p>}
        </div>
      </div>
      <Pictures job={job} units={units} />
    </Page>
  );
}
