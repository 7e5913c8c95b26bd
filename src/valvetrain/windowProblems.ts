import { lengthFigure, mmFromThou, plainFigure } from './figures';
import { hasRefusal, odd, type Problem, refused } from './problems';
import { EDGE_TOLERANCE_MM, type Window } from './windows';

/** Longer than any lifter plunger travels, mm (0.500 in): a figure in the wrong unit. */
const LONGEST_TRAVEL_MM = 12.7;
/** Plunger travels met in the trade, from memory: 0.040 to 0.250 in. */
const USUAL_TRAVEL_MM = { min: 1, max: 6.35 };

/**
 * What is wrong with a window: figures missing, the window upside down, or outside the travel its
 * keep-outs leave. Empty when it can be used. Missing figures, an impossible travel and an upside-down
 * usable window each stop there, since what rests on them can't be judged.
 */
export function windowProblems(w: Window): readonly Problem[] {
  const missing = missingFigures(w);
  if (missing.length > 0) return missing;
  const travel = travelProblems(w);
  if (hasRefusal(travel)) return travel;
  const usable = usableProblems(w);
  const isUpsideDown = usable.some((problem) => problem.code === 'upside down');
  return [...travel, ...usable, ...(isUpsideDown ? [] : preferredProblems(w))];
}

type Length = Exclude<keyof Window, 'lifter'>;

const names: Readonly<Record<Length, string>> = {
  plungerTravelMm: 'plunger travel',
  keepOutTopMm: 'keep-out at the top',
  keepOutBottomMm: 'keep-out at the bottom',
  usableMinMm: 'usable minimum',
  usableMaxMm: 'usable maximum',
  preferredMinMm: 'preferred minimum',
  preferredMaxMm: 'preferred maximum',
};

const lengths: readonly Length[] = [
  'plungerTravelMm',
  'keepOutTopMm',
  'keepOutBottomMm',
  'usableMinMm',
  'usableMaxMm',
  'preferredMinMm',
  'preferredMaxMm',
];

function missingFigures(w: Window): readonly Problem[] {
  return lengths
    .filter((field) => !Number.isFinite(w[field]))
    .map((field) =>
      refused(
        field,
        'missing',
        `The ${names[field]} is missing: take it from the lifter maker’s own figures.`,
      ),
    );
}

function travelProblems(w: Window): readonly Problem[] {
  const found: Problem[] = [];
  const travelMm = w.plungerTravelMm;
  if (travelMm <= 0) {
    found.push(
      refused(
        'plungerTravelMm',
        'not above 0',
        `A plunger travel of ${lengthFigure(travelMm)} is impossible: it must be above 0; most are ${usualTravel()}.`,
      ),
    );
  } else if (travelMm > LONGEST_TRAVEL_MM) {
    found.push(
      refused(
        'plungerTravelMm',
        'too long',
        `A plunger travel of ${lengthFigure(travelMm)} is longer than a lifter has: most are ${usualTravel()}.${asThouHint(travelMm)}`,
      ),
    );
  } else if (travelMm < USUAL_TRAVEL_MM.min || travelMm > USUAL_TRAVEL_MM.max) {
    found.push(
      odd(
        'plungerTravelMm',
        'unusual',
        `A plunger travel of ${lengthFigure(travelMm)} is unusual: most are ${usualTravel()}. Confirm it if it is right.`,
      ),
    );
  }
  for (const field of ['keepOutTopMm', 'keepOutBottomMm'] as const) {
    if (w[field] < 0) {
      found.push(
        refused(
          field,
          'below 0',
          `The ${names[field]} can’t be ${lengthFigure(w[field])}: give 0 or more, measured from that end of the travel.`,
        ),
      );
    }
  }
  if (!hasRefusal(found) && w.keepOutTopMm + w.keepOutBottomMm >= travelMm) {
    found.push(
      refused(
        'keepOutBottomMm',
        'keep-outs fill the travel',
        `Keep-outs of ${lengthFigure(w.keepOutTopMm)} and ${lengthFigure(w.keepOutBottomMm)} leave nothing of a plunger travel of ${lengthFigure(travelMm)}: together they must be less.`,
      ),
    );
  }
  return found;
}

function usableProblems(w: Window): readonly Problem[] {
  if (w.usableMinMm >= w.usableMaxMm) {
    return [
      refused(
        'usableMinMm',
        'upside down',
        `The usable window is upside down or has no width: its minimum of ${lengthFigure(w.usableMinMm)} must be below its maximum of ${lengthFigure(w.usableMaxMm)}.`,
      ),
    ];
  }
  const found: Problem[] = [];
  const highestMm = w.plungerTravelMm - w.keepOutBottomMm;
  if (w.usableMinMm < w.keepOutTopMm - EDGE_TOLERANCE_MM || w.usableMinMm < 0) {
    found.push(
      refused(
        'usableMinMm',
        'outside the travel',
        `The usable minimum of ${lengthFigure(w.usableMinMm)} is too near the top: with its keep-out it must be ${lengthFigure(Math.max(0, w.keepOutTopMm))} or more.`,
      ),
    );
  }
  if (w.usableMaxMm > highestMm + EDGE_TOLERANCE_MM) {
    found.push(
      refused(
        'usableMaxMm',
        'outside the travel',
        `The usable maximum of ${lengthFigure(w.usableMaxMm)} is too near the bottom: a plunger travel of ${lengthFigure(w.plungerTravelMm)} less a keep-out of ${lengthFigure(w.keepOutBottomMm)} allows at most ${lengthFigure(highestMm)}.`,
      ),
    );
  }
  return found;
}

function preferredProblems(w: Window): readonly Problem[] {
  if (w.preferredMinMm > w.preferredMaxMm + EDGE_TOLERANCE_MM) {
    return [
      refused(
        'preferredMinMm',
        'upside down',
        `The preferred band is upside down: its minimum of ${lengthFigure(w.preferredMinMm)} must not be above its maximum of ${lengthFigure(w.preferredMaxMm)}.`,
      ),
    ];
  }
  const found: Problem[] = [];
  if (w.preferredMinMm < w.usableMinMm - EDGE_TOLERANCE_MM) {
    found.push(
      refused(
        'preferredMinMm',
        'outside the usable window',
        `The preferred minimum of ${lengthFigure(w.preferredMinMm)} is outside the usable window: it must be ${lengthFigure(w.usableMinMm)} or more.`,
      ),
    );
  }
  if (w.preferredMaxMm > w.usableMaxMm + EDGE_TOLERANCE_MM) {
    found.push(
      refused(
        'preferredMaxMm',
        'outside the usable window',
        `The preferred maximum of ${lengthFigure(w.preferredMaxMm)} is outside the usable window: it must be ${lengthFigure(w.usableMaxMm)} or less.`,
      ),
    );
  }
  return found;
}

function usualTravel(): string {
  return `${lengthFigure(USUAL_TRAVEL_MM.min)} to ${lengthFigure(USUAL_TRAVEL_MM.max)}`;
}

/** '200' typed as millimetres is most often 200 thou. */
function asThouHint(travelMm: number): string {
  const asThouMm = mmFromThou(travelMm);
  if (asThouMm < USUAL_TRAVEL_MM.min || asThouMm > USUAL_TRAVEL_MM.max) return '';
  return ` If ${plainFigure(travelMm)} is thousandths of an inch, the travel is ${lengthFigure(asThouMm)}.`;
}
