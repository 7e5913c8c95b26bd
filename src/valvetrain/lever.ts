/** What turns: the nut or bolt that carries the rocker's pivot, or a screw in one of its ends. */
export type AdjusterKind = 'pivot' | 'pushrod-end screw' | 'valve-end screw';

export const adjusterKinds: readonly AdjusterKind[] = [
  'pivot',
  'pushrod-end screw',
  'valve-end screw',
];

/** The fastener that is counted and the rocker it works on. Check with `adjusterProblems` first. */
export interface Adjuster {
  readonly kind: AdjusterKind;
  /** Advance per turn, single-start thread. */
  readonly pitchMm: number;
  /** Rated lift ratio R: valve lift over lifter lift. */
  readonly rockerRatio: number;
  /** Lean of the pushrod from the axis of the thread that turns; 0 if unknown. */
  readonly leanDeg: number;
  /** Pushrod-side travel per quarter turn by dial indicator; takes the place of the geometry. */
  readonly measuredTravelPerQuarterMm?: number;
}

/**
 * Pushrod-side travel for one turn of the fastener, in mm: four measured quarters where the
 * travel was measured, else by geometry.
 */
export function travelPerTurnMm(a: Adjuster): number {
  return a.measuredTravelPerQuarterMm === undefined
    ? travelByGeometryMm(a)
    : a.measuredTravelPerQuarterMm * QUARTERS_PER_TURN;
}

/** Pushrod-side travel for a quarter turn, in mm: measured, else by geometry. */
export function travelPerQuarterMm(a: Adjuster): number {
  return travelPerTurnMm(a) / QUARTERS_PER_TURN;
}

/**
 * Pushrod-side travel for one turn by thread and lever alone, in mm, whatever was measured.
 *
 * The valve is seated, so its tip stands still and the rocker is a lever about it. Lowering the
 * pivot by the pitch p carries the pushrod's cup down by p, of which p·cos φ lies along a pushrod
 * leaning φ, and turns the rocker about the valve tip, which adds p/R by the rated ratio:
 * p·(cos φ + 1/R). A screw at the pushrod end gives the first part alone, a screw at the valve end
 * the second alone. Derived; with φ = 0 these are p·(1 + 1/R), p and p/R.
 */
export function travelByGeometryMm(a: Adjuster): number {
  const alongPushrodMm = a.pitchMm * Math.cos((a.leanDeg * Math.PI) / 180);
  const byLeverMm = a.pitchMm / a.rockerRatio;
  switch (a.kind) {
    case 'pivot':
      return alongPushrodMm + byLeverMm;
    case 'pushrod-end screw':
      return alongPushrodMm;
    case 'valve-end screw':
      return byLeverMm;
    default:
      return unknownKind(a.kind);
  }
}

/**
 * Fastener advance for a quarter turn, in mm: what much trade text takes for the preload. Shown
 * beside the lever's figure under 'why this figure', never used for a verdict.
 */
export function travelByPitchAloneMm(a: Adjuster): number {
  return a.pitchMm / QUARTERS_PER_TURN;
}

const QUARTERS_PER_TURN = 4;

function unknownKind(kind: never): never {
  throw new RangeError(`Unknown adjuster: ${String(kind)}.`);
}
