import { useServices } from '../services';
import { inUnits } from '../set-up/draftChanges';
import { keepDraft, keptDraft } from '../set-up/keptDraft';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import styles from './before.module.css';
import type { StepChoice } from './planDraft';
import { lengthWithGive, preloadText, pushrodText } from './planFigures';
import { planWords as words } from './planWords';
import { otherWay } from './readPlan';
import { jobDraft } from './startJob';
import type { Outcome } from './startLength';
import type { PlanForm } from './usePlanForm';

const steps: readonly StepChoice[] = ['25', '50', 'half mm', 'any'];

interface Props {
  readonly form: PlanForm;
  readonly outcome: Outcome;
}

/** The start length of the test pushrod, what to expect of it, and the way into a job. */
export function StartPanel({ form, outcome: { start } }: Props) {
  const { go } = useServices();
  const { draft, read, change } = form;
  const { units } = draft;
  const other = start && otherWay(start.nearest, read.ends);

  function startJob(): void {
    if (!form.ask() || start === null) return;
    const begun = keptDraft(sessionStorage, null);
    const base = begun === null ? null : inUnits(begun, units);
    const job = jobDraft(draft, read, start.nearest, base);
    keepDraft(sessionStorage, null, job, 'before buying');
    go({ screen: 'set-up', jobId: null });
  }

  return (
    <div className={styles.start}>
      <h3>{words.start}</h3>
      {start === null ? (
        <p>{words.noStart}</p>
      ) : (
        <>
          <p>{words.exact(lengthWithGive(units, start.exact.mm, start.giveMm))}</p>
          <p className={styles.answer}>
            <strong>{pushrodText(units, start.nearest.mm)}</strong> {start.nearest.convention}
          </p>
          {other !== null && (
            <p>{words.otherConvention(pushrodText(units, other.mm), other.convention)}</p>
          )}
          <p>
            {start.preload === null
              ? words.startUnknown
              : words.startPreload(preloadText(units, start.preload))}
          </p>
          <Choice
            field="step"
            label={words.step}
            value={draft.step}
            options={steps.map((value) => ({ value, label: words.steps[value] }))}
            onChange={(step) => change({ step })}
          />
        </>
      )}
      <Missing form={form} />
      <Action main disabled={start === null} onPress={startJob}>
        {words.startJob}
      </Action>
      <p className={styles.quiet}>{words.startJobHint}</p>
      <div className={styles.caution}>
        {words.cautions.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </div>
  );
}

function Missing({ form }: { readonly form: PlanForm }) {
  const { read, asked, goTo } = form;
  if (!asked || read.problems.length === 0) return null;
  return (
    <div role="status">
      <p>{words.missing(read.problems.length)}</p>
      {read.problems.map(({ field, sentence }) => (
        <button
          key={`${field} ${sentence}`}
          type="button"
          className={styles.toField}
          onClick={() => goTo(field)}
        >
          {sentence}
        </button>
      ))}
    </div>
  );
}
