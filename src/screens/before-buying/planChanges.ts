import { startingSets, targetPreloadMm } from '#valvetrain';
import type { Units } from '#words';
import {
  lengthText,
  longUnit,
  memoryKey,
  readLength,
  shortUnit,
  type TextUnit,
} from '../set-up/draftText';
import { bareGive } from './bareGive';
import { type PartDraft, type PartId, type PieceDraft, type PlanDraft, partIds } from './planDraft';

/** The plan with one part's change written anew. */
export function withPart(draft: PlanDraft, part: PartId, change: Partial<PartDraft>): PlanDraft {
  return { ...draft, parts: { ...draft.parts, [part]: { ...draft.parts[part], ...change } } };
}

/** The plan with one warm piece written anew. */
export function withPiece(
  draft: PlanDraft,
  piece: 'block' | 'head' | 'pushrod',
  change: Partial<PieceDraft>,
): PlanDraft {
  return { ...draft, hot: { ...draft.hot, [piece]: { ...draft.hot[piece], ...change } } };
}

/** Chooses the lifter kind; the middle of its preferred band becomes the preload wanted. */
export function withLifterKind(draft: PlanDraft, lifter: string): PlanDraft {
  const set = startingSets.find(({ id }) => id === lifter);
  return set === undefined
    ? { ...draft, lifter }
    : withLength({ ...draft, lifter }, 'target', targetPreloadMm(set.window));
}

/** Writes a short length into a field and remembers the exact figure behind it. */
export function withLength(
  draft: PlanDraft,
  field: 'target' | 'preload' | 'preloadGive',
  mm: number,
): PlanDraft {
  const unit = shortUnit(draft.units);
  const text = lengthText(mm, unit);
  const remembered = { ...draft.remembered, [memoryKey(text, unit)]: mm };
  return { ...draft, [field]: text, remembered };
}

/** The plan with every length written in other units; a text that is no length stays as typed. */
export function planInUnits(draft: PlanDraft, units: Units): PlanDraft {
  if (draft.units === units) return draft;
  const remembered: Record<string, number> = {};
  const rewrite = (from: TextUnit, to: TextUnit) => (text: string) => {
    const read = readLength(text, from, draft.remembered);
    if (read.kind !== 'value') return text;
    const shown = lengthText(read.value, to);
    remembered[memoryKey(shown, to)] = read.value;
    return shown;
  };
  const short = rewrite(shortUnit(draft.units), shortUnit(units));
  const long = rewrite(longUnit(draft.units), longUnit(units));
  const { hot } = draft;
  const [ballBelow, holeBelow, ballAbove, holeAbove] = draft.ends;
  const piece = (one: PieceDraft): PieceDraft => ({ ...one, length: long(one.length) });
  const rewritten: PlanDraft = {
    ...draft,
    present: long(draft.present),
    ends: [long(ballBelow), long(holeBelow), long(ballAbove), long(holeAbove)],
    preload: short(draft.preload),
    preloadGive: short(bareGive(draft.preloadGive)),
    target: short(draft.target),
    hot: {
      ...hot,
      block: piece(hot.block),
      head: piece(hot.head),
      pushrod: piece(hot.pushrod),
      stemLength: long(hot.stemLength),
    },
    tipGap: short(draft.tipGap),
    tipTravel: short(draft.tipTravel),
  };
  const parts = partIds.reduce((now, part) => {
    const { was, willBe, amount, give } = now.parts[part];
    return withPart(now, part, {
      was: long(was),
      willBe: long(willBe),
      amount: short(amount),
      give: short(bareGive(give)),
    });
  }, rewritten);
  return { ...parts, remembered, units };
}
