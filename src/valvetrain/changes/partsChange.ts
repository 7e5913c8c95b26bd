/** A change of parts, mm. A figure below 0 is the change the other way (a thinner gasket). */
export type PartsChange =
  | { readonly kind: 'head or deck milled'; readonly milledMm: number }
  | { readonly kind: 'gasket thicker'; readonly thickerMm: number }
  | { readonly kind: 'base circle smaller'; readonly diameterMm: number }
  | { readonly kind: 'lifter cup higher'; readonly higherMm: number }
  /** Measured: a change of ratio has no rule of its own for where it puts the cup. */
  | { readonly kind: 'rocker cup higher'; readonly higherMm: number }
  | { readonly kind: 'pivot shim'; readonly shimMm: number }
  | { readonly kind: 'valve tip higher, pivot fixed'; readonly higherMm: number }
  | { readonly kind: 'valve tip higher, pivot raised to match'; readonly higherMm: number };

/** Where on the valve train a change acts, for a drawing of it. */
export type ActsAt =
  | 'head face'
  | 'head gasket'
  | 'cam base circle'
  | 'lifter cup'
  | 'rocker cup'
  | 'rocker pivot'
  | 'valve tip';

/** What one change comes to. */
export interface LengthTerm {
  readonly change: PartsChange;
  readonly actsAt: ActsAt;
  /** The figure as entered, mm. */
  readonly figureMm: number;
  /** Length needed per millimetre of it: −1, ½, 1 + 1/R … */
  readonly factor: number;
  /** How much longer the pushrod must be, mm; below 0 shorter. */
  readonly longerMm: number;
}

export interface LengthChange {
  readonly terms: readonly LengthTerm[];
  /** The sum of the terms, mm. */
  readonly longerMm: number;
}

/**
 * What a change of parts does to the pushrod length needed for the same preload, term by term.
 * Derived from the lever with both arms level and the valve seated; rockerRatio is R of the rockers to be
 * used.
 *
 * The pivot and the valve tip hold the rocker: raise the pivot by s and its cup rises s(1 + 1/R);
 * raise the tip by v and the cup sinks v/R. Everything else moves one end of the pushrod straight.
 *
 * @throws RangeError unless the ratio is finite and above 0 and every figure finite.
 */
export function lengthChange(changes: readonly PartsChange[], rockerRatio: number): LengthChange {
  if (!Number.isFinite(rockerRatio) || rockerRatio <= 0) {
    throw new RangeError(`A rocker ratio must be above 0; got ${rockerRatio}.`);
  }
  const terms = changes.map((change) => termOf(change, rockerRatio));
  return { terms, longerMm: terms.reduce((sum, { longerMm }) => sum + longerMm, 0) };
}

function termOf(change: PartsChange, rockerRatio: number): LengthTerm {
  const term = (actsAt: ActsAt, figureMm: number, factor: number): LengthTerm => {
    if (!Number.isFinite(figureMm)) throw new RangeError(`${change.kind}: ${figureMm} mm.`);
    return { change, actsAt, figureMm, factor, longerMm: figureMm * factor };
  };
  switch (change.kind) {
    case 'head or deck milled':
      return term('head face', change.milledMm, -1);
    case 'gasket thicker':
      return term('head gasket', change.thickerMm, 1);
    case 'base circle smaller':
      return term('cam base circle', change.diameterMm, 1 / 2);
    case 'lifter cup higher':
      return term('lifter cup', change.higherMm, -1);
    case 'rocker cup higher':
      return term('rocker cup', change.higherMm, 1);
    case 'pivot shim':
      return term('rocker pivot', change.shimMm, 1 + 1 / rockerRatio);
    case 'valve tip higher, pivot fixed':
      return term('valve tip', change.higherMm, -1 / rockerRatio);
    case 'valve tip higher, pivot raised to match':
      return term('valve tip', change.higherMm, 1);
    default:
      return unknownChange(change);
  }
}

function unknownChange(change: never): never {
  throw new RangeError(`Unknown change: ${JSON.stringify(change)}.`);
}
