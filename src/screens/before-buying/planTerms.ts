import type { PartsChange, PlannedLength } from '#valvetrain';
import type { Units } from '#words';
import type { PartId } from './planDraft';
import { amount, signedAmount } from './planFigures';
import { planWords as words } from './planWords';
import type { TrainMark } from './ValveTrainDrawing';

/** One term as table and drawing show it. */
export interface TermShown {
  readonly mark: TrainMark;
  readonly name: string;
  readonly formula: string;
  readonly basis: string;
  /** The change as it was given, with its sign. */
  readonly entered: string;
  /** Empty where no ± was given. */
  readonly give: string;
}

/** The terms of a plan in order, the preload's own last. */
export function termsShown(
  planned: PlannedLength,
  parts: readonly PartId[],
  units: Units,
): readonly TermShown[] {
  const shown = planned.terms.flatMap(({ change, figureMm, longerMm, giveMm }, at) => {
    const place = parts[at];
    if (place === undefined) return [];
    const term: TermShown = {
      mark: {
        place,
        number: at + 1,
        amount: signedAmount(units, longerMm),
        moves: figureMm === 0 ? 'stays' : movesUp(change.kind) === figureMm > 0 ? 'up' : 'down',
      },
      name: words.parts[place].name,
      formula: words.formulas[change.kind],
      basis: words.bases[change.kind],
      entered: signedAmount(units, figureMm),
      give: giveMm === 0 ? '' : words.giveOrTake(amount(units, giveMm)),
    };
    return [term];
  });
  const { byPreload } = planned;
  if (byPreload === null) return shown;
  const preload: TermShown = {
    mark: {
      place: 'plunger',
      number: shown.length + 1,
      amount: signedAmount(units, byPreload.mm),
      moves: byPreload.mm === 0 ? 'stays' : byPreload.mm > 0 ? 'down' : 'up',
    },
    name: words.morePreload,
    formula: words.morePreloadFormula,
    basis: words.morePreloadBasis,
    entered: signedAmount(units, byPreload.mm),
    give: byPreload.giveMm === 0 ? '' : words.giveOrTake(amount(units, byPreload.giveMm)),
  };
  return [...shown, preload];
}

/** Whether the part goes up where the change's figure is above 0. */
function movesUp(kind: PartsChange['kind']): boolean {
  return kind !== 'head or deck milled' && kind !== 'base circle smaller';
}
