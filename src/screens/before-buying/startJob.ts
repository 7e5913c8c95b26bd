import type { PushrodLength } from '#valvetrain';
import { type Draft, emptyDraft } from '../set-up/draft';
import { lengthText, longUnit, memoryKey } from '../set-up/draftText';
import { withLifter } from '../set-up/groupChanges';
import type { PlanDraft } from './planDraft';
import type { PlanRead } from './readPlan';

/**
 * A new job's set-up with what the plan knows: the start length as its test pushrod, the ratio, the
 * lifter kind. What was already typed for a new job stays where the plan knows nothing.
 */
export function jobDraft(
  plan: PlanDraft,
  read: PlanRead,
  start: PushrodLength,
  begun: Draft | null,
): Draft {
  const { units } = plan;
  const base = begun ?? emptyDraft(units);
  const unit = longUnit(units);
  const pushrod = lengthText(start.mm, unit);
  const draft: Draft = {
    ...base,
    rockers: 'bolt-down',
    counts: 'fastener',
    pushrod,
    convention: start.convention,
    ratio: read.ratio === null ? base.ratio : plan.ratio,
    ends: read.ends === null ? base.ends : plan.ends,
    remembered: { ...base.remembered, ...plan.remembered, [memoryKey(pushrod, unit)]: start.mm },
  };
  const known = plan.lifter !== '' && plan.lifter !== 'other';
  return known ? withLifter(draft, 0, plan.lifter) : draft;
}
