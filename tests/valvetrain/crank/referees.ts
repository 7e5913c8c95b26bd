import { solve } from 'yalps';
import type { Engine, ValveEvents } from '#valvetrain';

/** Where one valve is off its base circle, worked out here and not taken from the code under test. */
interface Open {
  readonly opensDeg: number;
  readonly closesDeg: number;
}

/** Every valve's open span on the 720° circle. */
export function openSpans(engine: Engine, events: ValveEvents): readonly Open[] {
  return engine.firingOrder.flatMap((_, place) => {
    const tdc = engine.firingAnglesDeg?.[place] ?? (place * 720) / engine.firingOrder.length;
    return [
      {
        opensDeg: tdc + 360 - events.intakeOpensBeforeTdcDeg,
        closesDeg: tdc + 540 + events.intakeClosesAfterBdcDeg,
      },
      {
        opensDeg: tdc + 180 - events.exhaustOpensBeforeBdcDeg,
        closesDeg: tdc + 360 + events.exhaustClosesAfterTdcDeg,
      },
    ];
  });
}

/** Crank degrees from an angle to the nearer edge of the open span, 0 or less within it. */
export function marginOf({ opensDeg, closesDeg }: Open, angleDeg: number): number {
  const middle = (opensDeg + closesDeg) / 2;
  const apart = Math.abs(((((angleDeg - middle) % 720) + 1080) % 720) - 360);
  return apart - (closesDeg - opensDeg) / 2;
}

/** The spans that are at least `marginDeg` away at an angle, one bit each. */
function coverage(spans: readonly Open[], angleDeg: number, marginDeg: number): number {
  return spans.reduce(
    (bits, span, place) =>
      marginOf(span, angleDeg) >= marginDeg - 1e-5 ? bits | (1 << place) : bits,
    0,
  );
}

/** The fewest of the angles that serve every span, by a general integer-program solver. */
export function fewestBySolver(
  spans: readonly Open[],
  anglesDeg: readonly number[],
  marginDeg: number,
): number | undefined {
  const served = new Map(
    [...new Set(anglesDeg.map((angle) => coverage(spans, angle, marginDeg)))].map((bits) => [
      `stop ${bits}`,
      new Map([
        ['stops', 1],
        ...spans.flatMap((_, place): [string, number][] =>
          (bits & (1 << place)) === 0 ? [] : [[`valve ${place}`, 1]],
        ),
      ] as [string, number][]),
    ]),
  );
  const solution = solve<string, string>({
    direction: 'minimize',
    objective: 'stops',
    constraints: new Map(spans.map((_, place) => [`valve ${place}`, { min: 1 }])),
    variables: served,
    binaries: true,
  });
  return solution.status === 'optimal' ? Math.round(solution.result) : undefined;
}

/**
 * Whether so many of the angles serve every span: every set of them is tried, a span not yet served
 * at a time. Angles that serve the
 * same spans are tried once, and one that serves no more than another not at all.
 */
export function servedByBruteForce(
  spans: readonly Open[],
  anglesDeg: readonly number[],
  marginDeg: number,
  stops: number,
): boolean {
  const found = [...new Set(anglesDeg.map((angle) => coverage(spans, angle, marginDeg)))];
  const sets = found.filter(
    (bits) => !found.some((other) => other !== bits && (other & bits) === bits),
  );
  const all = 2 ** spans.length - 1;
  const tryMore = (served: number, left: number): boolean => {
    if (served === all) return true;
    if (left === 0) return false;
    const next = spans.findIndex((_, place) => (served & (1 << place)) === 0);
    return sets.some((bits) => (bits & (1 << next)) !== 0 && tryMore(served | bits, left - 1));
  };
  return tryMore(0, stops);
}

/** The fewest angles by trying one, two, three … of them; undefined when all of them do not do. */
export function fewestByBruteForce(
  spans: readonly Open[],
  anglesDeg: readonly number[],
  marginDeg: number,
): number | undefined {
  for (let stops = 1; stops <= spans.length; stops += 1) {
    if (servedByBruteForce(spans, anglesDeg, marginDeg, stops)) return stops;
  }
  return undefined;
}
