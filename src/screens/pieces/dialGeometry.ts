/** Geometry of a clock dial about 0,0: angles in turns, 0 at twelve, clockwise; y runs down. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The point at an angle (turns) on a circle of this radius. */
export function onDial(turns: number, radius: number): Point {
  const angle = 2 * Math.PI * turns;
  return { x: round(radius * Math.sin(angle)), y: round(-radius * Math.cos(angle)) };
}

/** A piece of a ring between two angles (turns, at most a whole turn apart) as an SVG path. */
export function ringPiece(from: number, to: number, inner: number, outer: number): string {
  const [start, end] = from <= to ? [from, to] : [to, from];
  if (end - start >= 1) {
    const middle = start + 0.5;
    return `${ringPiece(start, middle, inner, outer)} ${ringPiece(middle, start + 0.9999, inner, outer)}`;
  }
  const large = end - start > 0.5 ? 1 : 0;
  const a = onDial(start, outer);
  const b = onDial(end, outer);
  const c = onDial(end, inner);
  const d = onDial(start, inner);
  return `M${a.x} ${a.y}A${outer} ${outer} 0 ${large} 1 ${b.x} ${b.y}L${c.x} ${c.y}A${inner} ${inner} 0 ${large} 0 ${d.x} ${d.y}Z`;
}

/** A bare arc along a circle, drawn from the first angle towards the second (turns). */
export function arc(from: number, to: number, radius: number): string {
  const a = onDial(from, radius);
  const b = onDial(to, radius);
  const large = Math.abs(to - from) > 0.5 ? 1 : 0;
  const sweep = to >= from ? 1 : 0;
  return `M${a.x} ${a.y}A${radius} ${radius} 0 ${large} ${sweep} ${b.x} ${b.y}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
