import { plainFigure } from '../figures';
import type { ValveId } from '../valves';

/** A valve, and how far it is off its ramps where the crank stands. */
export interface ValveMargin {
  readonly valve: ValveId;
  /** Crank degrees to the nearer ramp; nought or less when it is off its base circle. */
  readonly marginDeg: number;
}

/** A valve that a plan does not keep far enough off its ramps. */
export interface Shortfall extends ValveMargin {
  readonly shortByDeg: number;
  /** Which valve, by how many degrees, and of how many wanted. */
  readonly sentence: string;
}

/** Under this a want of margin is dust, crank degrees: no degree wheel shows it. */
const DUST_DEG = 1e-3;

/** Every valve with less margin than is wanted, as sentences too. */
export function shortfallsOf(
  margins: readonly ValveMargin[],
  wantedDeg: number,
): readonly Shortfall[] {
  return margins
    .filter(({ marginDeg }) => wantedDeg - marginDeg > DUST_DEG)
    .map(({ valve, marginDeg }) => ({
      valve,
      marginDeg,
      shortByDeg: wantedDeg - marginDeg,
      sentence: sentenceOf(valve, marginDeg, wantedDeg),
    }));
}

function sentenceOf({ cylinder, valve }: ValveId, marginDeg: number, wantedDeg: number): string {
  const name = `Cylinder ${cylinder}’s ${valve}`;
  const short = `${plainFigure(wantedDeg - marginDeg)}° short of the ${plainFigure(wantedDeg)}° wanted`;
  return marginDeg > 0
    ? `${name} is only ${plainFigure(marginDeg)}° off its ramp where this plan counts it, ${short}.`
    : `${name} is not shut where this plan counts it: it is ${plainFigure(-marginDeg)}° off its base circle, ${short}.`;
}
