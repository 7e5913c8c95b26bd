import { useMemo } from 'react';
import { type DraftForm, useDraftForm } from '../shell/useDraftForm';
import type { PlanDraft } from './planDraft';
import { planWords as words } from './planWords';
import { type HotRead, readHot } from './readHot';
import { type PlanRead, readPlan } from './readPlan';
import { readTipGap, type TipGapRead } from './readTipGap';

/** The form as its parts see it. */
export interface PlanForm extends DraftForm<PlanDraft> {
  readonly read: PlanRead;
  readonly hot: HotRead;
  readonly gap: TipGapRead;
}

/** Holds a plan while it is filled in; `onDraft` is told of every change, not of the start. */
export function usePlanForm(start: PlanDraft, onDraft: (draft: PlanDraft) => void): PlanForm {
  const { notesOf, askFor, ...form } = useDraftForm(start, onDraft);
  const { draft } = form;
  const read = useMemo(() => readPlan(draft), [draft]);
  const hot = useMemo(() => readHot(draft, read), [draft, read]);
  const gap = useMemo(() => readTipGap(draft), [draft]);
  // The ratio is asked for by three, once is enough.
  const problems = [...read.problems, ...hot.problems, ...gap.problems].filter(
    ({ field, sentence }, at, all) =>
      all.findIndex((one) => one.field === field && one.sentence === sentence) === at,
  );
  return {
    ...form,
    read,
    hot,
    gap,
    notes: (field) => notesOf(problems, field, words.keep),
    ask: () => askFor(read.problems),
  };
}
