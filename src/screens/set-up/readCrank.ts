import {
  type CrankPlan,
  crankPlanOf,
  crankProblems,
  type SetUp,
  usualWalk,
  type WalkChoice,
} from '#counting';
import {
  type CamCard,
  camProblems,
  hasRefusal,
  type LobeFigures,
  type Problem,
  type SeatTiming,
  seatTiming,
} from '#valvetrain';
import { camWords } from './camWords';
import type { CamDraft, CrankDraft, WalkDraft } from './crankDraft';
import { degreesIn, degreesOf, isNoFigure } from './degreesText';
import { asFormProblems, type FormProblem, refusedField } from './formProblem';
import { problemWords } from './problemWords';
import { walkWords } from './walkWords';

/** What a set-up takes from the form: left out, the cam is not known and the walk the usual one. */
export function crankChoices({ cam, walk }: CrankDraft): Pick<SetUp, 'cam' | 'walk'> {
  return {
    ...(cam.form === 'not known' ? {} : { cam: camOf(cam) }),
    ...(isUsual(walk) ? {} : { walk: walkOf(walk) }),
  };
}

/**
 * What is wrong or odd with cam and walk, beside the form's own fields, and where the crank would
 * stop; no plan while something is refused.
 */
export function readCrank(
  draft: CrankDraft,
  setUp: SetUp,
): { readonly problems: readonly FormProblem[]; readonly plan: CrankPlan | null } {
  const typed = [...camText(draft.cam), ...walkText(draft.walk)];
  const found = asFormProblems(crankProblems(setUp), (field) => crankField(field, draft.cam));
  const problems = [
    ...typed,
    ...found.filter(({ field }) => !typed.some((other) => other.field === field)),
  ];
  const refused = problems.some(({ severity }) => severity === 'refused');
  return { problems, plan: refused || setUp.engine === null ? null : crankPlanOf(setUp) };
}

/** The card of a form with the seat timing it gives; null while it can't be. */
export function cardRead(
  cam: CamDraft,
): { readonly card: CamCard; readonly timing: SeatTiming } | null {
  if (camText(cam).length > 0) return null;
  const card = camOf(cam);
  return hasRefusal(camProblems(card)) ? null : { card, timing: seatTiming(card) };
}

/** The form's field for one of the trade's; one that is not asked in this form stands in for it. */
function crankField(field: Problem['field'], cam: CamDraft): string {
  if (field === 'marginDeg') return 'walk.margin';
  const isEvent = Object.hasOwn(cam.events, field);
  const isLobe = Object.hasOwn(cam.lobes, field);
  if (!isEvent && !isLobe && field !== 'statedAt') return 'walk.method';
  const ofIntake = field.startsWith('intake');
  if (cam.form === 'durations') {
    if (isEvent) return ofIntake ? 'cam.intakeDurationDeg' : 'cam.exhaustDurationDeg';
    return field === 'intakeCentrelineDeg' ? `cam.${placing(cam)}` : `cam.${field}`;
  }
  const printed = Object.entries(cam.lobes).some(
    ([name, text]) => name === field && text.trim() !== '',
  );
  if (!isLobe || printed) return `cam.${field}`;
  return ofIntake ? 'cam.intakeOpensBeforeTdcDeg' : 'cam.exhaustOpensBeforeBdcDeg';
}

function placing({ placedBy }: CamDraft): string {
  return placedBy === 'advance' ? 'advance' : 'intakeCentrelineDeg';
}

/** Texts that are no figures, of the fields this form asks. */
function camText(cam: CamDraft): readonly FormProblem[] {
  if (cam.form === 'not known') return [];
  const byAdvance = cam.form === 'durations' && cam.placedBy === 'advance';
  const asked = {
    ...(cam.form === 'events' ? cam.events : {}),
    ...cam.lobes,
    ...(byAdvance ? { intakeCentrelineDeg: '', advance: cam.advance } : {}),
  };
  const slips = Object.entries(asked)
    .filter(([, text]) => isNoFigure(text))
    .map(([name, text]) => refusedField(`cam.${name}`, problemWords.notANumber(text)));
  const noAdvance = byAdvance && cam.advance.trim() === '';
  return noAdvance ? [...slips, refusedField('cam.advance', camWords.advanceMissing)] : slips;
}

function walkText({ method, margin, at, marks }: WalkDraft): readonly FormProblem[] {
  const slips = isNoFigure(margin)
    ? [refusedField('walk.margin', problemWords.notANumber(margin))]
    : [];
  if (method !== 'fewest stops' || at !== 'marked') return slips;
  const angles = degreesIn(marks);
  const fit = angles.length > 0 && angles.every((angle) => angle >= 0 && angle < 720);
  return fit ? slips : [...slips, refusedField('walk.marks', walkWords.marksMissing)];
}

function camOf(cam: CamDraft): CamCard {
  const { form, statedAt, events, lobes } = cam;
  switch (form) {
    case 'not known':
      return { form };
    case 'events': {
      const printed = Object.entries(lobes).filter(([, text]) => text.trim() !== '');
      const alsoPrinted: Partial<LobeFigures> = Object.fromEntries(
        printed.map(([name, text]) => [name, degreesOf(text)]),
      );
      return {
        form,
        events: figures(events),
        statedAt,
        ...(printed.length === 0 ? {} : { alsoPrinted }),
      };
    }
    case 'durations':
      return { form, lobes: lobesOf(cam), statedAt };
    default: {
      const never: never = form;
      return never;
    }
  }
}

/** A cam advanced by so much has its intake centreline so much under the separation. */
function lobesOf({ lobes, placedBy, advance }: CamDraft): LobeFigures {
  const read = figures(lobes);
  return placedBy === 'centreline'
    ? read
    : { ...read, intakeCentrelineDeg: read.lobeSeparationDeg - degreesOf(advance) };
}

function walkOf({ method, margin, at, marks, prefer }: WalkDraft): WalkChoice {
  return {
    method,
    marginDeg: degreesOf(margin),
    at: at === 'marked' ? degreesIn(marks) : at,
    prefer,
  };
}

function isUsual({ method, margin, at, prefer }: WalkDraft): boolean {
  return (
    method === usualWalk.method &&
    degreesOf(margin) === usualWalk.marginDeg &&
    at === usualWalk.at &&
    prefer === usualWalk.prefer
  );
}

function figures<K extends string>(texts: Readonly<Record<K, string>>): Record<K, number>;
function figures(texts: Readonly<Record<string, string>>): Record<string, number> {
  return Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, degreesOf(text)]));
}
