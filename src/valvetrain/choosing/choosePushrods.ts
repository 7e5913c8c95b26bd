import type { Engine } from '../engine';
import { type Answer, answerOf, type Given } from './answer';
import { type GroupDifference, groupDifferences, realFactors } from './differences';
import { fewestLengths } from './fewestLengths';
import { fixedGroupsAnswer, poolReaches } from './fixedGroups';
import { candidates, type Offer, offerProblems } from './offer';
import { ownReach } from './pools';
import { fixedSchemes, grouped } from './schemes';
import { type Suggestion, suggest } from './suggest';
import type { ChoosableValve } from './valve';

export interface Choice {
  /** Every scheme the engine has groups for, plainest first; 'fewest lengths' last. */
  readonly answers: readonly Answer[];
  readonly differences: readonly GroupDifference[];
  readonly suggestion: Suggestion;
}

/**
 * Which pushrods to buy, or to take from stock, for bolt-down rockers. Each answer is the best of its scheme
 * in this order: most valves usable, most valves served where stock runs out, fewest lengths,
 * smallest worst distance from target, shorter pushrods. Exact: see `assignGroups`, `fewestLengths`.
 *
 * Null for no valves. Lengths on offer and test lengths are by one convention.
 *
 * @throws RangeError for an offer that `offerProblems` refuses.
 */
export function choosePushrods(
  valves: readonly ChoosableValve[],
  offer: Offer,
  engine: Pick<Engine, 'banks'>,
): Choice | null {
  const [problem] = offerProblems(offer);
  if (problem !== undefined) throw new RangeError(problem.sentence);
  if (valves.length === 0) return null;
  const differences = groupDifferences(valves, engine);
  const real = realFactors(differences);
  const own = valves.map(ownReach);
  const fixed = fixedSchemes
    .filter((scheme) => tellsApart(scheme, valves, engine))
    .map((scheme) => {
      const reaches = poolReaches(scheme, valves, engine, real);
      return fixedGroupsAnswer(scheme, valves, engine, real, candidates(offer, reaches));
    });
  const offered = candidates(offer, own);
  const places = fewestLengths(own, offered);
  const given = valves.map((valve, index): Given => {
    const lengthNm = offered[places[index] ?? -1]?.lengthNm ?? null;
    return { valve, judgedBy: ownReach(valve), isPooled: false, lengthNm };
  });
  const fewest = answerOf('fewest lengths', given, [], offered);
  return {
    answers: [...fixed, fewest],
    differences,
    suggestion: suggest(fixed, fewest, differences),
  };
}

/** 'By bank' has nothing to tell apart in a single row, nor 'by bank and valve'. */
function tellsApart(
  scheme: (typeof fixedSchemes)[number],
  valves: readonly ChoosableValve[],
  engine: Pick<Engine, 'banks'>,
): boolean {
  switch (scheme) {
    case 'one for all':
      return true;
    case 'by valve':
      return grouped(valves, ['valve'], engine).length > 1;
    case 'by bank':
      return grouped(valves, ['bank'], engine).length > 1;
    case 'by bank and valve':
      return (
        grouped(valves, ['bank'], engine).length > 1 &&
        grouped(valves, ['valve'], engine).length > 1
      );
    default:
      return unknownScheme(scheme);
  }
}

function unknownScheme(scheme: never): never {
  throw new RangeError(`Unknown scheme: ${String(scheme)}.`);
}
