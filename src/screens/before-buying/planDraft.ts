import { exhaustStemStart, type LengthConvention, type MaterialId } from '#valvetrain';
import type { Units } from '#words';

/** What may be changed, from the cam up to the valve's tip. */
export const partIds = [
  'base circle',
  'lifter cup',
  'deck milled',
  'gasket',
  'head milled',
  'rocker cup',
  'pivot shim',
  'valve tip',
] as const;

export type PartId = (typeof partIds)[number];

/** Parts with a size of their own, measured as it was and as it will be. */
const sized: readonly PartId[] = ['base circle', 'lifter cup', 'gasket', 'valve tip'];

export function isSized(part: PartId): boolean {
  return sized.includes(part);
}

/** One change as typed. Parts with a size use `was` and `willBe`, the others `amount`. */
export interface PartDraft {
  readonly changes: boolean;
  readonly was: string;
  readonly willBe: string;
  readonly amount: string;
  /** How far the figure may be off either way. */
  readonly give: string;
}

/** A piece that grows when warm, as typed. */
export interface PieceDraft {
  readonly material: MaterialId;
  readonly length: string;
  readonly rise: string;
}

export interface HotDraft {
  readonly block: PieceDraft;
  readonly head: PieceDraft;
  readonly pushrod: PieceDraft;
  readonly stemLength: string;
  readonly stemRise: string;
  /** Millionths per kelvin. */
  readonly stemExpansion: string;
}

/** The lengths a test pushrod can be had in: every so many thou, every half millimetre, or any. */
export type StepChoice = '25' | '50' | 'half mm' | 'any';

/** A plan while it is filled in: text as typed, read into figures at the edge. */
export interface PlanDraft {
  readonly units: Units;
  readonly parts: Readonly<Record<PartId, PartDraft>>;
  /** Whether the rocker's pivot stays when the valve's tip comes higher. */
  readonly pivot: 'fixed' | 'raised to match';
  readonly ratio: string;
  readonly ratioGive: string;
  readonly present: string;
  readonly convention: LengthConvention;
  /** Ball and oil hole at the lifter, then at the rocker. */
  readonly ends: readonly [string, string, string, string];
  readonly preload: string;
  readonly preloadGive: string;
  /** '' until chosen, a starting set's id, or 'other'. */
  readonly lifter: string;
  readonly target: string;
  readonly step: StepChoice;
  readonly hot: HotDraft;
  readonly tipGap: string;
  readonly tipTravel: string;
  /** Sentences about odd figures that the builder has answered with 'keep it'. */
  readonly kept: readonly string[];
  /** Exact millimetres behind a rounded text, by text and unit. */
  readonly remembered: Readonly<Record<string, number>>;
}

const noPart: PartDraft = { changes: false, was: '', willBe: '', amount: '', give: '' };

/** Nothing planned yet. */
export function emptyPlan(units: Units): PlanDraft {
  const piece = (material: MaterialId): PieceDraft => ({ material, length: '', rise: '' });
  return {
    units,
    parts: {
      'base circle': noPart,
      'lifter cup': noPart,
      'deck milled': noPart,
      gasket: noPart,
      'head milled': noPart,
      'rocker cup': noPart,
      'pivot shim': noPart,
      'valve tip': noPart,
    },
    pivot: 'fixed',
    ratio: '',
    ratioGive: '',
    present: '',
    convention: 'tip to tip',
    ends: ['', '', '', ''],
    preload: '',
    preloadGive: '',
    lifter: '',
    target: '',
    step: '25',
    hot: {
      block: piece('grey iron'),
      head: piece('aluminium 356'),
      pushrod: piece('steel 4140'),
      stemLength: '',
      stemRise: String(exhaustStemStart.riseK),
      stemExpansion: String(exhaustStemStart.expansionPerK * 1e6),
    },
    tipGap: '',
    tipTravel: '',
    kept: [],
    remembered: {},
  };
}
