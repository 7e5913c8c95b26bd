import {
  type GiveOrTake,
  nearestLengthMm,
  type PlannedLength,
  type PushrodLength,
  plannedLength,
  preloadAtLengthMm,
  startingSets,
  type Verdict,
  verdict,
} from '#valvetrain';
import type { Units } from '#words';
import type { PlanDraft, StepChoice } from './planDraft';
import type { PlanRead } from './readPlan';

/** What a plan comes to. */
export interface Outcome {
  readonly planned: PlannedLength;
  /** Null without the present pushrod's length. */
  readonly start: {
    /** As worked out, stated as the present length is. */
    readonly exact: PushrodLength;
    readonly giveMm: number;
    /** The nearest that can be had. */
    readonly nearest: PushrodLength;
    /** Preload to be expected on the nearest; null without the present preload. */
    readonly preload: GiveOrTake | null;
  } | null;
  /** The present pushrod kept, judged by the lifter kind chosen; null where either is not known. */
  readonly keptVerdict: Verdict | null;
}

/** To order a length is stated to the thou, or to the hundredth of a millimetre. */
const ANY_STEP_MM: Readonly<Record<Units, number>> = { inch: 0.0254, mm: 0.01 };

function stepMm(step: StepChoice, units: Units): number {
  switch (step) {
    case '25':
      return 0.635;
    case '50':
      return 1.27;
    case 'half mm':
      return 0.5;
    case 'any':
      return ANY_STEP_MM[units];
    default: {
      const never: never = step;
      return never;
    }
  }
}

/** Works out a plan as far as it is read. */
export function outcomeOf(draft: PlanDraft, { plan, present }: PlanRead): Outcome {
  const planned = plannedLength(plan);
  const { keptPreload, longer } = planned;
  const window = startingSets.find(({ id }) => id === draft.lifter)?.window;
  const keptVerdict =
    keptPreload === null || window === undefined ? null : verdict(keptPreload.mm, window).word;
  if (present === null) return { planned, start: null, keptVerdict };
  const { convention } = present;
  const exact = { mm: present.mm + longer.mm, convention };
  const nearest = { mm: nearestLengthMm(exact.mm, stepMm(draft.step, draft.units)), convention };
  const preload = keptPreload && {
    mm: preloadAtLengthMm(keptPreload.mm, present.mm, nearest.mm),
    giveMm: keptPreload.giveMm,
  };
  return {
    planned,
    start: { exact, giveMm: longer.giveMm, nearest, preload },
    keptVerdict,
  };
}
