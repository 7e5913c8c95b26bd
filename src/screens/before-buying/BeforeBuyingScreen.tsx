import { useCallback, useState } from 'react';
import { useSettings } from '../services';
import { Action } from '../shell/Action';
import { Page } from '../shell/Page';
import { UnitsChoice } from '../shell/UnitsChoice';
import styles from './before.module.css';
import { EnginePart } from './EnginePart';
import { HotPart } from './HotPart';
import { dropPlan, keepPlan, keptPlan } from './keptPlan';
import { Outcome } from './Outcome';
import { PartsPart } from './PartsPart';
import { planInUnits } from './planChanges';
import { emptyPlan, type PlanDraft } from './planDraft';
import { planWords as words } from './planWords';
import { TipGapPart } from './TipGapPart';
import { usePlanForm } from './usePlanForm';

/** What other parts do to the pushrod's length, before anything is bought. Needs no job. */
export function BeforeBuyingScreen() {
  const { units } = useSettings();
  const [start, setStart] = useState(() => {
    const kept = keptPlan(localStorage);
    return {
      plan: kept === null ? emptyPlan(units) : planInUnits(kept, units),
      kept: kept !== null,
    };
  });
  const [fresh, setFresh] = useState(0);
  return (
    <Page title={words.title} wide>
      <Plan
        key={fresh}
        start={start.plan}
        restored={start.kept}
        onStartAfresh={() => {
          dropPlan(localStorage);
          setStart({ plan: emptyPlan(units), kept: false });
          setFresh(fresh + 1);
        }}
      />
    </Page>
  );
}

interface Props {
  readonly start: PlanDraft;
  readonly restored: boolean;
  readonly onStartAfresh: () => void;
}

function Plan({ start, restored, onStartAfresh }: Props) {
  const keep = useCallback((draft: PlanDraft) => keepPlan(localStorage, draft), []);
  const form = usePlanForm(start, keep);
  return (
    <div ref={form.place}>
      <p>{words.intro}</p>
      {restored && (
        <div className={styles.note} role="status">
          <p>{words.restored}</p>
          <Action onPress={onStartAfresh}>{words.startAfresh}</Action>
        </div>
      )}
      <div className={styles.columns}>
        <div className={styles.form}>
          <UnitsChoice
            value={form.draft.units}
            onChange={(chosen) => form.update((before) => planInUnits(before, chosen))}
          />
          <PartsPart form={form} />
          <EnginePart form={form} />
        </div>
        <Outcome form={form} />
        <div className={styles.extras}>
          <TipGapPart form={form} />
          <HotPart form={form} />
        </div>
      </div>
    </div>
  );
}
