import { travelLeftMm } from '#valvetrain';
import { readLength, shortUnit } from '../set-up/draftText';
import { type FormProblem, refusedField } from '../set-up/formProblem';
import type { PlanDraft } from './planDraft';
import { planProblemWords as words } from './planProblemWords';
import { readRatio } from './readPlan';

export interface TipGapRead {
  /** Plunger travel left below the plunger, mm; null while it can't be told. */
  readonly leftMm: number | null;
  /** Travel less what is left, mm; null without the travel. */
  readonly preloadMm: number | null;
  readonly problems: readonly FormProblem[];
}

const MOST_MM = 25;

/** The gap found at the valve's tip with the lifter collapsed, as typed. */
export function readTipGap(draft: PlanDraft): TipGapRead {
  const nothing = { leftMm: null, preloadMm: null };
  if (draft.tipGap.trim() === '') return { ...nothing, problems: [] };
  const unit = shortUnit(draft.units);
  const gap = readLength(draft.tipGap, unit, draft.remembered);
  const ratio = readRatio(draft, true);
  if (gap.kind !== 'value' || gap.value < 0 || gap.value > MOST_MM)
    return { ...nothing, problems: [refusedField('tipGap', words.gap)] };
  if (ratio.value === null) return { ...nothing, problems: ratio.problems };
  const leftMm = travelLeftMm(gap.value, ratio.value);
  if (draft.tipTravel.trim() === '') return { leftMm, preloadMm: null, problems: [] };
  const travel = readLength(draft.tipTravel, unit, draft.remembered);
  if (travel.kind !== 'value' || travel.value <= 0 || travel.value > MOST_MM)
    return { leftMm, preloadMm: null, problems: [refusedField('tipTravel', words.gapTravel)] };
  if (leftMm > travel.value)
    return { leftMm, preloadMm: null, problems: [refusedField('tipGap', words.gapOver)] };
  return { leftMm, preloadMm: travel.value - leftMm, problems: [] };
}
