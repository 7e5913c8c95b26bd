import { dialProblems, lengthProblems } from '#counting';
import {
  adjusterProblems,
  type GiveOrTake,
  inConvention,
  type PartsPlan,
  type PushrodEnds,
  type PushrodLength,
  startingSets,
} from '#valvetrain';
import { longUnit, readLength, readNumber, shortUnit } from '../set-up/draftText';
import { readEnds as readEndFields } from '../set-up/endsDraft';
import { asFormProblems, type FormProblem, oddField, refusedField } from '../set-up/formProblem';
import { bareGive } from './bareGive';
import { type PartId, type PlanDraft, partIds } from './planDraft';
import { planProblemWords as words } from './planProblemWords';
import { readGiveText, readPart } from './readPart';

export interface PlanRead {
  /** What reads already, in the order of the form; a part not yet complete is left out. */
  readonly plan: PartsPlan;
  /** Which part each of the plan's changes is. */
  readonly parts: readonly PartId[];
  /** Null where it was not given. */
  readonly present: PushrodLength | null;
  readonly ends: PushrodEnds | null;
  /** The rocker ratio as given; null where it was not. */
  readonly ratio: number | null;
  /** In the order of the form. Odd figures already kept are left out. */
  readonly problems: readonly FormProblem[];
}

/** Where no change goes by the lever, its ratio changes nothing. */
const ANY_RATIO = 1.6;

const MOST_BALL_MM = 25;

const byLever: ReadonlySet<string> = new Set(['pivot shim', 'valve tip higher, pivot fixed']);

/** Reads a plan as far as it can be read, and what stands in its way, field by field. */
export function readPlan(draft: PlanDraft): PlanRead {
  const ticked = partIds.filter((part) => draft.parts[part].changes);
  const reads = ticked.map((part) => ({ part, ...readPart(draft, part) }));
  const whole = reads.flatMap(({ part, planned }) => (planned === null ? [] : [{ part, planned }]));
  const needsRatio = whole.some(({ planned }) => byLever.has(planned.change.kind));
  const ratio = readRatio(draft, needsRatio);
  const told = whole.filter(
    ({ planned }) => ratio.value !== null || !byLever.has(planned.change.kind),
  );
  const present = readPresent(draft);
  const preload = readPreload(draft);
  const target = readTarget(draft);
  const ends = readEnds(draft);
  const found = [
    ...(ticked.length === 0 ? [refusedField('parts', words.nothing)] : []),
    ...reads.flatMap(({ problems }) => problems),
    ...ratio.problems,
    ...present.problems,
    ...ends.problems,
    ...preload.problems,
    ...target.problems,
  ];
  return {
    plan: {
      changes: told.map(({ planned }) => planned),
      rockerRatio: ratio.value ?? ANY_RATIO,
      ratioGive: ratio.give,
      presentPreload: preload.value,
      targetMm: target.value,
    },
    parts: told.map(({ part }) => part),
    present: present.value,
    ends: ends.value,
    ratio: ratio.value,
    problems: unkept(draft, found),
  };
}

/** Problems but for the odd figures the builder has kept. */
export function unkept(draft: PlanDraft, found: readonly FormProblem[]): readonly FormProblem[] {
  return found.filter(
    ({ severity, sentence }) => severity === 'refused' || !draft.kept.includes(sentence),
  );
}

interface ValueRead<T> {
  readonly value: T | null;
  readonly problems: readonly FormProblem[];
}

const none = { value: null, problems: [] } as const;

function bad(field: string, text: string): ValueRead<never> {
  return { value: null, problems: [refusedField(field, words.notANumber(text))] };
}

/** The ratio as typed; it may be left out where nothing goes by the lever. */
export function readRatio(
  draft: PlanDraft,
  needed: boolean,
): ValueRead<number> & { readonly give: number } {
  const read = readNumber(draft.ratio.replace(/\s*:\s*1$/, ''));
  if (read.kind === 'not a number') return { ...bad('ratio', draft.ratio), give: 0 };
  if (read.kind === 'empty' && !needed) return { ...none, give: 0 };
  const ratio = read.kind === 'value' ? read.value : Number.NaN;
  const adjuster = { kind: 'pivot', pitchMm: 1.25, leanDeg: 0, rockerRatio: ratio } as const;
  const found = asFormProblems(adjusterProblems(adjuster), () => 'ratio');
  const refused = found.some(({ severity }) => severity === 'refused');
  const give = readNumber(bareGive(draft.ratioGive));
  const wide = give.kind === 'value' && (give.value < 0 || give.value > 0.5);
  const ofGive =
    give.kind === 'not a number' || wide ? [refusedField('ratioGive', words.ratioGive)] : [];
  return {
    value: refused ? null : ratio,
    give: give.kind === 'value' && !wide ? give.value : 0,
    problems: [...found, ...ofGive],
  };
}

function readPresent(draft: PlanDraft): ValueRead<PushrodLength> {
  const read = readLength(draft.present, longUnit(draft.units), draft.remembered);
  if (read.kind === 'not a number') return bad('present', draft.present);
  if (read.kind === 'empty') return none;
  const length: PushrodLength = { mm: read.value, convention: draft.convention };
  const problems = asFormProblems(lengthProblems(length), () => 'present');
  return { value: problems.length === 0 ? length : null, problems };
}

function readEnds(draft: PlanDraft): ValueRead<PushrodEnds> {
  const read = readEndFields(draft.ends, longUnit(draft.units), draft.remembered);
  if (read.kind === 'empty') return none;
  if (read.kind === 'unclear')
    return { value: null, problems: [refusedField('ends', words.endsMissing)] };
  const { ends } = read;
  const real = ends.every(
    ({ ballMm, holeMm }) => ballMm > 0 && ballMm <= MOST_BALL_MM && holeMm >= 0 && holeMm < ballMm,
  );
  return real
    ? { value: ends, problems: [] }
    : { value: null, problems: [refusedField('ends', words.endsWrong)] };
}

function readPreload(draft: PlanDraft): ValueRead<GiveOrTake> {
  const read = readLength(draft.preload, shortUnit(draft.units), draft.remembered);
  if (read.kind === 'not a number') return bad('preload', draft.preload);
  if (read.kind === 'empty') return none;
  const problems = asFormProblems(dialProblems(read.value), () => 'preload');
  const give = readGiveText(draft, 'preloadGive', draft.preloadGive);
  const whole = problems.length === 0 && give.mm !== null;
  return {
    value: whole ? { mm: read.value, giveMm: give.mm } : null,
    problems: [...problems, ...give.problems],
  };
}

function readTarget(draft: PlanDraft): ValueRead<number> {
  const read = readLength(draft.target, shortUnit(draft.units), draft.remembered);
  if (read.kind === 'not a number') return bad('target', draft.target);
  if (read.kind === 'empty') return none;
  if (read.value <= 0)
    return { value: null, problems: [refusedField('target', words.targetBelow)] };
  const problems = asFormProblems(dialProblems(read.value), () => 'target');
  if (problems.length > 0) return { value: null, problems };
  const window = startingSets.find(({ id }) => id === draft.lifter)?.window;
  const outside =
    window !== undefined && (read.value < window.usableMinMm || read.value > window.usableMaxMm);
  return {
    value: read.value,
    problems: outside ? [oddField('target', words.targetOdd)] : [],
  };
}

/** A length stated the other way; null without ball and hole of both ends. */
export function otherWay(length: PushrodLength, ends: PushrodEnds | null): PushrodLength | null {
  if (ends === null) return null;
  const other = length.convention === 'tip to tip' ? 'full ball' : 'tip to tip';
  return inConvention(length, other, ends);
}
