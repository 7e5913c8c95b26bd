import { type HotEstimate, hotEstimate, type WarmPiece, type WarmStem } from '#valvetrain';
import { lengthText, longUnit, readLength, readNumber } from '../set-up/draftText';
import { type FormProblem, refusedField } from '../set-up/formProblem';
import type { PieceDraft, PlanDraft } from './planDraft';
import { planProblemWords as words } from './planProblemWords';
import { type PlanRead, readRatio } from './readPlan';

export interface HotRead {
  /** Null while nothing is typed, and while it can't be told. */
  readonly estimate: HotEstimate | null;
  readonly problems: readonly FormProblem[];
}

type PieceName = 'block' | 'head' | 'pushrod';

const MOST_LENGTH_MM = 500;
const LEAST_RISE_K = -100;
const MOST_RISE_K = 900;

/** The warm estimate as typed: pieces without a length are left out of the stack. */
export function readHot(draft: PlanDraft, plan: PlanRead): HotRead {
  const { hot } = draft;
  const texts = [hot.block, hot.head, hot.pushrod].flatMap(({ length, rise }) => [length, rise]);
  if ([...texts, hot.stemLength].every((text) => text.trim() === ''))
    return { estimate: null, problems: [] };
  const inStack = (['block', 'head'] as const).filter(
    (name) => hot[name].length.trim() !== '' || hot[name].rise.trim() !== '',
  );
  const stack = inStack.map((name) => readPiece(draft, name, hot[name]));
  const pushrod = readPiece(draft, 'pushrod', withPresentLength(draft, plan));
  const stem = readStem(draft);
  const ratio = readRatio(draft, hot.stemLength.trim() !== '');
  const problems = [
    ...stack.flatMap((piece) => piece.problems),
    ...pushrod.problems,
    ...stem.problems,
    ...(stem.stem !== null && ratio.value === null ? ratio.problems : []),
  ];
  if (problems.length > 0 || pushrod.piece === null) return { estimate: null, problems };
  const pieces = stack.flatMap(({ piece }) => piece ?? []);
  const estimate = hotEstimate({
    stack: pieces,
    pushrod: pushrod.piece,
    ...(stem.stem === null ? {} : { stem: stem.stem }),
    // Only a stem's growth goes by the ratio, and with a stem it is asked for.
    rockerRatio: ratio.value ?? 1,
  });
  return { estimate, problems };
}

/** The pushrod's length need not be typed again where it is known above. */
function withPresentLength(draft: PlanDraft, { present }: PlanRead): PieceDraft {
  const { pushrod } = draft.hot;
  if (present === null || pushrod.length.trim() !== '') return pushrod;
  return { ...pushrod, length: lengthText(present.mm, longUnit(draft.units)) };
}

function readPiece(
  draft: PlanDraft,
  name: PieceName,
  { material, length, rise }: PieceDraft,
): { readonly piece: WarmPiece | null; readonly problems: readonly FormProblem[] } {
  const lengthMm = readSpan(draft, length);
  const riseK = readRise(rise);
  const missing = name === 'pushrod' && length.trim() === '';
  const problems = [
    ...(lengthMm === null
      ? [refusedField(`hot.${name}.length`, missing ? words.hotPushrod : words.pieceLength)]
      : []),
    ...(riseK === null ? [refusedField(`hot.${name}.rise`, words.rise)] : []),
  ];
  const piece = lengthMm === null || riseK === null ? null : { material, lengthMm, riseK };
  return { piece, problems };
}

function readStem(draft: PlanDraft): {
  readonly stem: WarmStem | null;
  readonly problems: readonly FormProblem[];
} {
  const { stemLength, stemRise, stemExpansion } = draft.hot;
  if (stemLength.trim() === '') return { stem: null, problems: [] };
  const lengthMm = readSpan(draft, stemLength);
  const riseK = readRise(stemRise);
  const expansion = readNumber(stemExpansion);
  const millionths =
    expansion.kind === 'value' && expansion.value >= 1 && expansion.value <= 40
      ? expansion.value
      : null;
  const problems = [
    ...(lengthMm === null ? [refusedField('hot.stem.length', words.pieceLength)] : []),
    ...(riseK === null ? [refusedField('hot.stem.rise', words.rise)] : []),
    ...(millionths === null ? [refusedField('hot.stem.expansion', words.expansion)] : []),
  ];
  if (lengthMm === null || riseK === null || millionths === null) return { stem: null, problems };
  return { stem: { lengthMm, riseK, expansionPerK: millionths / 1e6 }, problems };
}

function readSpan(draft: PlanDraft, text: string): number | null {
  const read = readLength(text, longUnit(draft.units), draft.remembered);
  return read.kind === 'value' && read.value > 0 && read.value <= MOST_LENGTH_MM
    ? read.value
    : null;
}

function readRise(text: string): number | null {
  const read = readNumber(text.replace(/\s*(K|°C)$/i, ''));
  return read.kind === 'value' && read.value >= LEAST_RISE_K && read.value <= MOST_RISE_K
    ? read.value
    : null;
}
