import type { Engine } from '../engine';
import { type Answer, answerOf, type Given } from './answer';
import { assignGroups, type GroupToAssign } from './assignGroups';
import type { Candidate } from './offer';
import { ownReach, type Pool, pools } from './pools';
import { distanceNm, isPossible, isProven, millimetresOf, type Reach } from './reach';
import { type Factor, type FixedScheme, factorsOf, grouped } from './schemes';
import type { ChoosableValve } from './valve';

/**
 * The best answer with fixed groups: one length each. A group is judged on pooled means, since what
 * scatters about the mean of like valves is mostly the counting. Valves are pooled only as far as
 * they are alike: by window, and by the factors found to differ really. A valve counts as usable when its
 * pool's mean is proven usable and its own reading is not proven out. A group is only
 * given the best kind of length there is for it: one that makes some of it usable, else one that
 * does not prove all of it unusable, else any. Where the stock of those runs out it goes without.
 */
export function fixedGroupsAnswer(
  scheme: FixedScheme,
  valves: readonly ChoosableValve[],
  engine: Pick<Engine, 'banks'>,
  real: readonly Factor[],
  offered: readonly Candidate[],
): Answer {
  const groups = grouped(valves, factorsOf(scheme), engine).map(({ label, valves: members }) => ({
    label,
    pools: pools(members, real, engine),
  }));
  const places = assignGroups(
    groups.map((group) => toAssign(group.pools, offered)),
    offered,
  );
  const answers = groups.map((group, index) => ({
    ...group,
    lengthNm: offered[places[index] ?? -1]?.lengthNm ?? null,
  }));
  const given = answers.flatMap(({ pools: judged, lengthNm }) =>
    judged.flatMap(({ valves: members, reach }) =>
      members.map((valve): Given => ({ valve, judgedBy: reach, isPooled: true, lengthNm })),
    ),
  );
  return answerOf(
    scheme,
    given,
    answers.map(({ label, pools: judged, lengthNm }) => ({
      label,
      pools: judged,
      lengthMm: lengthNm === null ? null : millimetresOf(lengthNm),
    })),
    offered,
  );
}

/** Everything a choice of length may have to reach, in fixed groups by these factors. */
export function poolReaches(
  scheme: FixedScheme,
  valves: readonly ChoosableValve[],
  engine: Pick<Engine, 'banks'>,
  real: readonly Factor[],
): readonly Reach[] {
  return grouped(valves, factorsOf(scheme), engine).flatMap((group) =>
    pools(group.valves, real, engine).map(({ reach }) => reach),
  );
}

function toAssign(judged: readonly Pool[], offered: readonly Candidate[]): GroupToAssign {
  const size = judged.reduce((sum, { valves }) => sum + valves.length, 0);
  const withOwn = judged.map(({ valves, reach }) => ({ reach, own: valves.map(ownReach) }));
  const counting = (counts: (reach: Reach, lengthNm: number) => boolean) =>
    offered.map(({ lengthNm }) =>
      withOwn
        .filter(({ reach }) => counts(reach, lengthNm))
        .reduce((sum, { own }) => sum + own.filter((each) => isPossible(each, lengthNm)).length, 0),
    );
  const usable = counting(isProven);
  const best = [usable, counting(isPossible)].find((counts) => counts.some((count) => count > 0));
  return {
    size,
    usable,
    may: offered.map((_, place) => best === undefined || (best[place] ?? 0) > 0),
    distanceNm: offered.map(({ lengthNm }) =>
      Math.max(...judged.map(({ reach }) => distanceNm(reach, lengthNm))),
    ),
  };
}
