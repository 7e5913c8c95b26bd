import { cylinderSummaries, type JobState, type ValveLine } from '#counting';
import { guardMm, type Remedy, type Settling, valveKey } from '#valvetrain';
import type { Units } from '#words';
import { Fold } from '../shell/Fold';
import { amountText } from './orderText';
import styles from './results.module.css';
import { resultsWords } from './resultsWords';
import { sureWords as words } from './sureWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** For every valve that can't be told, all that would settle it, in order. */
export function SettlingPanel({ job, units }: Props) {
  const lines = cylinderSummaries(job)
    .flatMap((cylinder) => cylinder.lines)
    .filter(({ figures }) => figures?.sure?.settling != null);
  if (lines.length === 0) return null;
  return (
    <Fold
      title={words.settle}
      now={lines.map(({ valve }) => resultsWords.valveName(valve)).join(', ')}
    >
      <p className={styles.quiet}>{words.settleHow}</p>
      {lines.map((line) => (
        <One key={valveKey(line.valve)} line={line} units={units} />
      ))}
    </Fold>
  );
}

function One({ line, units }: { readonly line: ValveLine; readonly units: Units }) {
  const { valve, figures, standing } = line;
  const settling = figures?.sure?.settling ?? null;
  const against = figures?.sure?.against ?? null;
  if (settling === null || against === null || standing?.preload == null) return null;
  const guard = amountText(units, guardMm(standing.preload));
  return (
    <div data-settling={resultsWords.valveName(valve)}>
      <p>
        <strong>{resultsWords.valveName(valve)}</strong>{' '}
        {words.margin(against.word, amountText(units, settling.marginMm), guard)}.
      </p>
      <Remedies settling={settling} units={units} />
    </div>
  );
}

function Remedies({ settling, units }: { readonly settling: Settling; readonly units: Units }) {
  if (settling.first === null) return <p>{words.onLimit}</p>;
  return (
    <ol className={styles.reasons}>
      {settling.remedies.map((remedy) => (
        <li key={remedy.kind}>
          {words.remedies[remedy.kind]}: {outcome(remedy, units)}.
        </li>
      ))}
    </ol>
  );
}

function outcome(remedy: Remedy, units: Units): string {
  if (remedy.kind === 'recount') {
    const { counts } = remedy;
    return counts.enough
      ? words.counts(counts.more)
      : words.noCount(amountText(units, counts.floorMm));
  }
  if (remedy.settles) return words.settles;
  return remedy.kind === 'measure the travel' && remedy.recounts?.enough
    ? words.thenCounts(remedy.recounts.more)
    : words.notEnough;
}
