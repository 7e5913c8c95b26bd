import { companion, type Engine } from '../engine';
import { plainFigure } from '../figures';
import { nearestTdc, type Tdc, tdcAt } from './tdcs';

/** What shows that the crank has come to the right place. */
export type Proof =
  /** One cylinder's valves rock, or with its rockers off its lifters cross; the other is to fire. */
  | { readonly kind: 'crossing'; readonly crossing: number; readonly firing: number | null }
  /** Its intake opens and shuts; the next time its piston is up it is to fire. */
  | { readonly kind: 'watching'; readonly firing: number }
  /** So far past the nearest TDC, by a degree wheel; below 0 before it. */
  | {
      readonly kind: 'degree wheel';
      readonly pastDeg: number;
      readonly firing: number | null;
      readonly crossing: number | null;
    }
  | { readonly kind: 'exhaust starts to open'; readonly cylinder: number }
  | { readonly kind: 'intake nearly shut'; readonly cylinder: number }
  /** The dots on crank and cam wheel face each other: the first cylinder's companion is to fire. */
  | {
      readonly kind: 'timing dots together';
      readonly crossing: number;
      readonly firing: number | null;
    }
  /** Dot of the cam wheel at twelve o'clock, one turn of the crank on from the dots together. */
  | { readonly kind: 'cam dot at twelve'; readonly firing: number };

/** Proof of a cylinder's firing TDC: its companion crossing, or where it has none its own valves. */
export function proofOfFiring(engine: Engine, cylinder: number): Proof {
  const crossing = companion(engine, cylinder);
  return crossing === undefined
    ? { kind: 'watching', firing: cylinder }
    : { kind: 'crossing', crossing, firing: cylinder };
}

/** Proof of any crank angle: that of the TDC there, or the degrees from the nearest. */
export function proofOfAngle(engine: Engine, angleDeg: number): Proof {
  const tdc = tdcAt(engine, angleDeg);
  if (tdc !== undefined) return proofOfTdc(tdc);
  const nearest = nearestTdc(engine, angleDeg);
  if (nearest === undefined) throw new RangeError('There is no TDC without a firing order.');
  const { firing, crossing } = nearest.tdc;
  return { kind: 'degree wheel', pastDeg: nearest.pastDeg, firing, crossing };
}

function proofOfTdc({ firing, crossing }: Tdc): Proof {
  if (crossing !== null) return { kind: 'crossing', crossing, firing };
  if (firing !== null) return { kind: 'watching', firing };
  throw new RangeError('A TDC without a piston.');
}

/** The proof as a sentence, plain enough to be shown or spoken. */
export function describeProof(proof: Proof): string {
  switch (proof.kind) {
    case 'crossing':
      return proof.firing === null
        ? `${proof.crossing}’s valves rock, or its lifters cross.`
        : `${proof.crossing}’s valves rock, or its lifters cross: ${proof.firing} is at its firing TDC.`;
    case 'watching':
      return `${proof.firing}’s intake opens, then shuts; its piston’s next time up is its firing TDC.`;
    case 'degree wheel':
      return `${plainFigure(Math.round(Math.abs(proof.pastDeg) * 10) / 10)}° ${proof.pastDeg < 0 ? 'before' : 'past'} ${tdcName(proof)}, by a degree wheel.`;
    case 'exhaust starts to open':
      return `${proof.cylinder}’s exhaust just starts to open.`;
    case 'intake nearly shut':
      return `${proof.cylinder}’s intake is nearly shut.`;
    case 'timing dots together':
      return proof.firing === null
        ? `The timing dots face each other: ${proof.crossing} is between its exhaust and intake strokes.`
        : `The timing dots face each other: ${proof.firing} is at its firing TDC. Check the engine’s own manual.`;
    case 'cam dot at twelve':
      return `The cam’s dot stands at twelve: ${proof.firing} is at its firing TDC. Check the engine’s own manual.`;
    default:
      return unknownProof(proof);
  }
}

function tdcName(tdc: {
  readonly firing: number | null;
  readonly crossing: number | null;
}): string {
  return tdc.firing === null
    ? `the TDC where ${tdc.crossing ?? 'one cylinder'}’s valves rock`
    : `${tdc.firing}’s firing TDC`;
}

function unknownProof(proof: never): never {
  throw new RangeError(`Unknown proof: ${JSON.stringify(proof)}.`);
}
