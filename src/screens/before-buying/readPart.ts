import type { PartsChange, PlannedChange } from '#valvetrain';
import { longUnit, type Read, readLength, shortUnit } from '../set-up/draftText';
import { type FormProblem, oddField, refusedField } from '../set-up/formProblem';
import { bareGive } from './bareGive';
import { isSized, type PartId, type PlanDraft } from './planDraft';
import { planProblemWords as words } from './planProblemWords';

/** A plausible change: more than a sheet of foil, less than a quarter of an inch. */
const LEAST_MM = 0.02;
const MOST_MM = 6.35;
/** No part of a valve train changes by more. */
const IMPOSSIBLE_MM = 50;

export interface PartRead {
  /** Null while it can't be told. */
  readonly planned: PlannedChange | null;
  readonly problems: readonly FormProblem[];
}

/** One part's change as typed. Fields are named 'part.base circle.was'. */
export function readPart(draft: PlanDraft, part: PartId): PartRead {
  const figure = readFigure(draft, part);
  const give = readGive(draft, part);
  const problems = [...figure.problems, ...give.problems];
  if (figure.mm === null || give.mm === null) return { planned: null, problems };
  return { planned: { change: changeOf(draft, part, figure.mm), giveMm: give.mm }, problems };
}

function changeOf(draft: PlanDraft, part: PartId, mm: number): PartsChange {
  switch (part) {
    case 'base circle':
      return { kind: 'base circle smaller', diameterMm: -mm };
    case 'lifter cup':
      return { kind: 'lifter cup higher', higherMm: mm };
    case 'deck milled':
    case 'head milled':
      return { kind: 'head or deck milled', milledMm: mm };
    case 'gasket':
      return { kind: 'gasket thicker', thickerMm: mm };
    case 'rocker cup':
      return { kind: 'rocker cup higher', higherMm: mm };
    case 'pivot shim':
      return { kind: 'pivot shim', shimMm: mm };
    case 'valve tip':
      return draft.pivot === 'fixed'
        ? { kind: 'valve tip higher, pivot fixed', higherMm: mm }
        : { kind: 'valve tip higher, pivot raised to match', higherMm: mm };
    default: {
      const never: never = part;
      return never;
    }
  }
}

interface FigureRead {
  readonly mm: number | null;
  readonly problems: readonly FormProblem[];
}

/** The change's figure, mm: the new size less the old, or the one amount. */
function readFigure(draft: PlanDraft, part: PartId): FigureRead {
  const typed = draft.parts[part];
  if (!isSized(part)) {
    const field = `part.${part}.amount`;
    const read = readLength(typed.amount, shortUnit(draft.units), draft.remembered);
    if (read.kind === 'value' && part === 'deck milled' && read.value < 0)
      return { mm: null, problems: [refusedField(field, words.milledBelow)] };
    const { mm, problems } = plain(field, typed.amount, read, words.amountMissing);
    return mm === null ? { mm, problems } : judged(draft, field, mm);
  }
  const [was, willBe] = (['was', 'willBe'] as const).map((name) => {
    const field = `part.${part}.${name}`;
    const read = readLength(typed[name], longUnit(draft.units), draft.remembered);
    if (read.kind === 'value' && read.value < 0)
      return { mm: null, problems: [refusedField(field, words.sizeBelow)] };
    return plain(field, typed[name], read, words.sizeMissing);
  });
  const problems = [...(was?.problems ?? []), ...(willBe?.problems ?? [])];
  if (was?.mm == null || willBe?.mm == null) return { mm: null, problems };
  return judged(draft, `part.${part}.willBe`, willBe.mm - was.mm);
}

function judged(draft: PlanDraft, field: string, mm: number): FigureRead {
  if (Math.abs(mm) > IMPOSSIBLE_MM)
    return { mm: null, problems: [refusedField(field, words.impossible(draft.units))] };
  return { mm, problems: oddAmount(draft, field, mm) };
}

function plain(field: string, text: string, read: Read, missing: string): FigureRead {
  switch (read.kind) {
    case 'value':
      return { mm: read.value, problems: [] };
    case 'empty':
      return { mm: null, problems: [refusedField(field, missing)] };
    case 'not a number':
      return { mm: null, problems: [refusedField(field, words.notANumber(text))] };
    default: {
      const never: never = read;
      return never;
    }
  }
}

/** Most wrong figures are right ones in another unit. */
function oddAmount(draft: PlanDraft, field: string, mm: number): readonly FormProblem[] {
  const size = Math.abs(mm);
  if (size > MOST_MM) return [oddField(field, words.tooMuch(draft.units))];
  if (size < LEAST_MM && size > 1e-9) return [oddField(field, words.tooLittle(draft.units))];
  return [];
}

function readGive(draft: PlanDraft, part: PartId): FigureRead {
  return readGiveText(draft, `part.${part}.give`, draft.parts[part].give);
}

/** A ± as typed, mm; nothing typed is 0. */
export function readGiveText(draft: PlanDraft, field: string, text: string): FigureRead {
  const read = readLength(bareGive(text), shortUnit(draft.units), draft.remembered);
  if (read.kind === 'empty') return { mm: 0, problems: [] };
  if (read.kind === 'not a number')
    return { mm: null, problems: [refusedField(field, words.notANumber(text))] };
  if (read.value < 0) return { mm: null, problems: [refusedField(field, words.giveBelow)] };
  if (read.value > MOST_MM)
    return { mm: null, problems: [refusedField(field, words.giveImpossible(draft.units))] };
  return { mm: read.value, problems: oddGive(draft, field, read.value) };
}

const MOST_GIVE_MM = 1;

function oddGive(draft: PlanDraft, field: string, mm: number): readonly FormProblem[] {
  return mm > MOST_GIVE_MM ? [oddField(field, words.giveMuch(draft.units))] : [];
}
