import { shown } from '#words';
import styles from './before.module.css';
import { amountUnit, preloadText, signedAmount } from './planFigures';
import { termsShown } from './planTerms';
import { planWords as words } from './planWords';
import { StartPanel } from './StartPanel';
import { outcomeOf } from './startLength';
import { TermsTable } from './TermsTable';
import type { PlanForm } from './usePlanForm';
import { ValveTrainDrawing } from './ValveTrainDrawing';

/** What a plan comes to: the drawing, its terms beside it, and the start length. */
export function Outcome({ form }: { readonly form: PlanForm }) {
  const { draft, read } = form;
  const { units } = draft;
  const outcome = outcomeOf(draft, read);
  const { planned, keptVerdict } = outcome;
  const { keptPreload, byParts, longer } = planned;
  const terms = termsShown(planned, read.parts, units);
  const ticked = Object.values(draft.parts).filter(({ changes }) => changes).length;
  const left = ticked - read.parts.length;
  return (
    <section className={styles.outcome} aria-labelledby="plan-outcome">
      <h2 id="plan-outcome">{words.comesTo}</h2>
      <div className={styles.beside}>
        <ValveTrainDrawing
          marks={terms.map(({ mark }) => mark)}
          sum={signedAmount(units, longer.mm)}
          unit={amountUnit(units)}
        />
        <div aria-live="polite">
          {terms.length === 0 ? (
            <p>{words.nothingYet}</p>
          ) : (
            <>
              <TermsTable terms={terms} planned={planned} units={units} />
              <p className={styles.quiet}>{words.basis}</p>
            </>
          )}
          {left > 0 && <p className={styles.note}>{words.partly(left)}</p>}
          {terms.length > 0 && (
            <p>
              {keptPreload === null
                ? words.keptUnknown(`${signedAmount(units, -byParts.mm)} ${amountUnit(units)}`)
                : words.kept(
                    preloadText(units, keptPreload),
                    keptVerdict === null ? null : shown.verdicts[keptVerdict],
                  )}
            </p>
          )}
        </div>
      </div>
      <StartPanel form={form} outcome={outcome} />
    </section>
  );
}
