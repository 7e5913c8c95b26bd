/** What a valve may be given: the places of the first and last candidate; first above last, none. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * The most valves that can be served at once from quantities, and which: those listed first have
 * the right of way. For each valve whether it is served.
 *
 * Augmenting paths (Kuhn). A valve once served stays served while later ones are fitted in, at
 * another place perhaps. Which valves can be served together is a matroid (a transversal one), so
 * taking them in turn gives the most of the first class and, with those, the most of all.
 */
export function mostServed(
  spans: readonly Span[],
  quantities: readonly number[],
): readonly boolean[] {
  const heldBy: number[][] = quantities.map(() => []);
  const find = (valve: number, tried: Set<number>): boolean => {
    const span = spans[valve];
    if (span === undefined) return false;
    for (let place = span.from; place <= span.to; place += 1) {
      const holders = heldBy[place];
      if (holders === undefined || tried.has(place)) continue;
      tried.add(place);
      if (holders.length < (quantities[place] ?? 0)) {
        holders.push(valve);
        return true;
      }
      const gives = holders.findIndex((holder) => find(holder, tried));
      if (gives >= 0) {
        holders[gives] = valve;
        return true;
      }
    }
    return false;
  };
  return spans.map((_, valve) => find(valve, new Set()));
}
